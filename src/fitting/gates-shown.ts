import type { Running } from '../order/running-types.ts';
import type { Alteration } from '../order/undoing/undoing-types.ts';
import { piecesOf } from '../outfit/chains.ts';
import type { Garment, Work } from '../outfit/outfit.ts';
import type { Entry } from './entry.ts';

const NEEDED: Readonly<Record<NonNullable<Entry['needs']>, ((work: Work) => boolean) | undefined>> = {
  tucks: ({ kind }) => kind === 'tucks' || kind === 'crossed-tucks',
  gathers: ({ kind }) => kind === 'gather',
  beads: ({ kind }) => kind === 'lattice-beads',
  buttons: ({ kind }) => kind === 'buttonholes',
  trim: undefined,
  stretch: undefined,
};

/** What a try-on of a running order lets the maker see. */
export interface Seeing {
  /** The place of the try-on in the order. */
  readonly place: number;
  /** Can this be seen at it? What has to be in hand for it must be sewn or tacked together by then. */
  sees(alterations: readonly Alteration[], needs: Entry['needs']): boolean;
}

/** What can be seen at a try-on; undefined where the order does not have it. */
export function seeingAt(running: Running, garment: Garment, gate: string): Seeing | undefined {
  const places = new Map(running.sequence.map((id, i) => [id, i]));
  const fit = running.steps.get(`${garment.id}/${gate}/fit`);
  const place = fit && places.get(fit.id);
  if (!fit || place === undefined) return undefined;
  const ends = new Map<string, number>();
  for (const step of running.steps.values()) {
    if (step.garment !== garment.id) continue;
    ends.set(step.of.id, Math.max(ends.get(step.of.id) ?? 0, places.get(step.id) ?? 0));
  }
  const isDone = (id: string): boolean => (ends.get(id) ?? Number.POSITIVE_INFINITY) < place;
  const worn = new Set(fit.pieces);
  // What is sewn on to what is worn is worn too.
  const sewn = garment.joins.filter(({ id }) => isDone(id)).map(piecesOf);
  for (let before = -1; before < worn.size; ) {
    before = worn.size;
    for (const pieces of sewn) {
      if (pieces.some((piece) => worn.has(piece))) for (const piece of pieces) worn.add(piece);
    }
  }
  return {
    place,
    sees(alterations, needs) {
      const pieces = alterations.map(({ piece }) => piece);
      if (!pieces.every((piece) => worn.has(piece))) return false;
      if (needs === undefined) return true;
      if (needs === 'trim')
        return garment.joins.every(({ id, catches }) => catches.length === 0 || isDone(id));
      const wanted = NEEDED[needs];
      return !wanted || garment.works.filter(wanted).every(({ id }) => isDone(id));
    },
  };
}
