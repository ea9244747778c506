import type { PageProps } from './describe.tsx';

/** Cloths and markers. */
export function ClothsPage(_props: PageProps) {
  return <main class="page" data-part="cloths-page" />;
}
