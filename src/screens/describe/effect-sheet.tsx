import type { PageProps } from './describe.tsx';

/** What a change would touch, shown before it is accepted. */
export function EffectSheet(_props: PageProps) {
  return null;
}
