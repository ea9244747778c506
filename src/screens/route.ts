import { signal } from '@preact/signals';

/** Screens of one outfit. */
const OF_AN_OUTFIT = ['bench', 'order', 'paper'] as const;

/** Where the maker is in the app. */
export type Route =
  | { readonly screen: 'outfits' }
  | { readonly screen: (typeof OF_AN_OUTFIT)[number]; readonly outfit: string }
  /** The description of an outfit, or a part of it: `garment`, `shirt`, `piece`, `front`. */
  | { readonly screen: 'outfit'; readonly outfit: string; readonly at: readonly string[] }
  /** A try-on: its garments, one of them, or what cures it: `shirt`, `cure`. */
  | { readonly screen: 'try'; readonly outfit: string; readonly at: readonly string[] }
  /** The list of reckonings, or one of them. */
  | { readonly screen: 'reckoner'; readonly reckoning?: string }
  /** Where figures come from. */
  | { readonly screen: 'sources' };

/** The place a hash names; undefined where it names none, as at the first start. */
export function readHash(hash: string): Route | undefined {
  const [, screen, rest] = /^#\/([a-z]*)(?:\/(.+))?$/.exec(hash) ?? [];
  if (screen === '') return { screen: 'outfits' };
  if (rest === undefined) return screen === 'reckoner' || screen === 'sources' ? { screen } : undefined;
  try {
    if (screen === 'outfit' || screen === 'try') {
      const [outfit = '', ...at] = rest.split('/').map(decodeURIComponent);
      return { screen, outfit, at };
    }
    const name = decodeURIComponent(rest);
    if (screen === 'reckoner') return { screen, reckoning: name };
    const found = OF_AN_OUTFIT.find((one) => one === screen);
    return found && { screen: found, outfit: name };
  } catch {
    return undefined;
  }
}

/** The hash of a place. */
export function writeHash(route: Route): string {
  if (route.screen === 'outfits') return '#/';
  if ('at' in route)
    return `#/${route.screen}/${[route.outfit, ...route.at].map(encodeURIComponent).join('/')}`;
  const name = 'outfit' in route ? route.outfit : route.screen === 'reckoner' ? route.reckoning : undefined;
  return `#/${route.screen}${name === undefined ? '' : `/${encodeURIComponent(name)}`}`;
}

/** The outfit that a place belongs to; undefined where it belongs to none. */
export const outfitOf = (route: Route): string | undefined => ('outfit' in route ? route.outfit : undefined);

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
