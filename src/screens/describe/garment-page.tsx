import type { GarmentProps } from './describe.tsx';

/** A garment: its parts list. */
export function GarmentPage(_props: GarmentProps) {
  return <main class="page" data-part="garment-page" />;
}
