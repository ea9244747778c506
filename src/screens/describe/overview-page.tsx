import type { PageProps } from './describe.tsx';

/** The outfit: its garments, cloths, wearers. */
export function OverviewPage(_props: PageProps) {
  return <main class="page" data-part="overview-page" />;
}
