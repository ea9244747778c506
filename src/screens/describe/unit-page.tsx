import type { PartProps } from './describe.tsx';

/** A unit being put on, or changed. */
export function UnitPage(_props: PartProps & { readonly unit: string | undefined }) {
  return <main class="page" data-part="unit-page" />;
}
