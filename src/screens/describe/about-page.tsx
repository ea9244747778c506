import type { PageProps } from './describe.tsx';

/** Name, day and measuring system of the outfit. */
export function AboutPage(_props: PageProps) {
  return <main class="page" data-part="about-page" />;
}
