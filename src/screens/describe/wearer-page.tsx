import type { PageProps } from './describe.tsx';

/** A wearer and their measures. */
export function WearerPage(_props: PageProps & { readonly wearer: string | undefined }) {
  return <main class="page" data-part="wearer-page" />;
}
