import type { PartProps } from './describe.tsx';

/** A piece: its edges, works, joins, cloth and marks. */
export function PiecePage(_props: PartProps) {
  return <main class="page" data-part="piece-page" />;
}
