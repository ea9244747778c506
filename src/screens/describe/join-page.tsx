import type { PartProps } from './describe.tsx';

/** A join between two runs of edges. */
export function JoinPage(_props: PartProps) {
  return <main class="page" data-part="join-page" />;
}
