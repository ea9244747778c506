import type { PartProps } from './describe.tsx';

/** A try-on placed in the order. */
export function TryOnPage(_props: PartProps) {
  return <main class="page" data-part="try-on-page" />;
}
