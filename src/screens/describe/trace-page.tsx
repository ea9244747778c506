import type { GarmentProps } from './describe.tsx';

/** Outlines from a drawing program. */
export function TracePage(_props: GarmentProps) {
  return <main class="page" data-part="trace-page" />;
}
