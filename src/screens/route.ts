import { signal } from '@preact/signals';

/** Where the maker is in the app. */
export type Route =
  | { readonly screen: 'outfits' }
  | { readonly screen: 'bench'; readonly outfit: string }
  | { readonly screen: 'order'; readonly outfit: string };

/** The place a hash names; undefined where it names none, as at the first start. */
export function readHash(hash: string): Route | undefined {
  const [, screen, rest] = /^#\/([a-z]*)(?:\/(.+))?$/.exec(hash) ?? [];
  if (screen === '') return { screen: 'outfits' };
  if ((screen !== 'bench' && screen !== 'order') || rest === undefined) return undefined;
  try {
    return { screen, outfit: decodeURIComponent(rest) };
  } catch {
    return undefined;
  }
}

/** The hash of a place. */
export const writeHash = (route: Route): string =>
  route.screen === 'outfits' ? '#/' : `#/${route.screen}/${encodeURIComponent(route.outfit)}`;

/** The place shown. */
export const route = signal<Route>({ screen: 'outfits' });

/** Goes somewhere, as a link would. */
export function go(to: Route): void {
  location.hash = writeHash(to);
}

/** Follows the address from now on; with no place in it, begins at the bench of `last`, where there is one. */
export function followAddress(last: string | undefined): void {
  const follow = (): void => {
    route.value = readHash(location.hash) ?? { screen: 'outfits' };
  };
  if (readHash(location.hash) === undefined && last !== undefined) {
    history.replaceState(null, '', writeHash({ screen: 'bench', outfit: last }));
  }
  follow();
  addEventListener('hashchange', follow);
}
