import { mm } from '../../length/length.ts';
import type { Cloth, Garment, Marker, Outfit } from '../outfit.ts';

/** The cloth that a new outfit begins with, until the maker describes her own. */
const FIRST_CLOTH: Cloth = {
  id: 'cotton',
  name: 'Light cotton',
  width: mm(1400),
  fibre: 'cotton',
  stretch: { across: 0, along: 0 },
  iron: 200,
  oneWay: false,
  thread: 'to match',
  needle: '70/10',
};

const FIRST_MARKERS: readonly Marker[] = [
  { id: 'chalk', name: 'Tailor’s chalk', kind: 'chalk' },
  { id: 'tacks', name: 'Thread tacks', kind: 'thread' },
];

/** An outfit with nothing in it yet but one usual cloth and two markers that are always at hand. */
export const newOutfit = (told: {
  readonly id: string;
  readonly name: string;
  /** `yyyy-mm-dd` */
  readonly date: string;
  /** What it is for: `First night`. */
  readonly event: string;
  readonly units: 'in' | 'mm';
}): Outfit => ({
  id: told.id,
  name: told.name,
  about: '',
  invented: false,
  event: { name: told.event, date: told.date },
  units: told.units,
  cloths: [FIRST_CLOTH],
  markers: FIRST_MARKERS,
  wearers: [],
  garments: [],
});

/** Longest id made of a name, so that a number and the names of parts have room after it. */
const MOST = 48;

/**
 * An id made of a name that nothing else has yet: `Side front` gives `side-front`, or `side-front-2` where that is taken.
 * @param most letters before the number
 */
export function freshId(taken: Iterable<string>, name: string, most = MOST): string {
  const known = new Set(taken);
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f'’]/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, most)
    .replace(/-+$/, '');
  const base = plain === '' ? 'part' : plain;
  let id = base;
  for (let n = 2; known.has(id); n += 1) id = `${base}-${n}`;
  return id;
}

/** Every id that a garment has given: of pieces, works, joins, try-ons and units, and of parts that its units brought once. */
export const idsIn = (garment: Garment): ReadonlySet<string> =>
  new Set([
    ...[...garment.pieces, ...garment.works, ...garment.joins, ...garment.gates].map((part) => part.id),
    ...garment.units.flatMap((use) => [use.id, ...use.brought]),
  ]);
