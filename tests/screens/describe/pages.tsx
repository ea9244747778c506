import { inches } from '../../../src/length/length.ts';
import type { Garment, Outfit, Wearer } from '../../../src/outfit/outfit.ts';
import Describe from '../../../src/screens/describe/describe.tsx';
import { readHash } from '../../../src/screens/route.ts';
import type { Session } from '../../../src/screens/session.ts';
import { empty } from './desk.ts';

/** An invented wearer with a few measures. */
export const edda: Wearer = {
  id: 'edda',
  name: 'Edda',
  measures: { chest: inches(36), neck: inches(15), armhole: inches(16), shoulder: inches(5) },
};

const bare: Garment = {
  id: 'blouse',
  name: 'Blouse',
  units: [],
  pieces: [],
  works: [],
  joins: [],
  gates: [],
};

/** The outfit with one garment that has nothing in it, for nobody in particular. */
export const withBlouse: Outfit = { ...empty, garments: [bare] };
/** The same for Edda. */
export const forEdda: Outfit = { ...empty, wearers: [edda], garments: [{ ...bare, wearer: 'edda' }] };

/** The page of the description at an address below the outfit. */
export const PageAt = ({ session, at }: { readonly session: Session; readonly at: string }) => (
  <Describe session={session} at={at === '' ? [] : at.split('/')} />
);

/** Where the address leads, below the outfit. */
export function whereTo(): string {
  const route = readHash(location.hash);
  return route?.screen === 'outfit' ? route.at.join('/') : `not in an outfit: ${location.hash}`;
}
