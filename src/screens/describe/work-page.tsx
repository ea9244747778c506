import type { PartProps } from './describe.tsx';

/** A work on a piece. */
export function WorkPage(_props: PartProps) {
  return <main class="page" data-part="work-page" />;
}
