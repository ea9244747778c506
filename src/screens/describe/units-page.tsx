import type { GarmentProps } from './describe.tsx';

/** The ready-made units to choose from. */
export function UnitsPage(_props: GarmentProps) {
  return <main class="page" data-part="units-page" />;
}
