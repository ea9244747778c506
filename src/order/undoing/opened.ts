import { type Length, nm } from '../../length/length.ts';
import { edgeName } from '../../outfit/chains.ts';
import type { EdgeRef } from '../../outfit/outfit.ts';
import type { Open } from './closure.ts';
import type { Sub } from './prepared.ts';
import type { Out } from './reckon.ts';
import { and, BOTH, type Sides } from './sides.ts';
import { covered, overlaps } from './spans.ts';
import type { Extent, Opened, TrimStays } from './undoing-types.ts';

/** How far something is opened. */
export function kindOfOpening(open: Open): 'whole' | 'along' | 'crossing' | 'cover' {
  const { lines } = open;
  if (lines.length === 0) return 'whole';
  const opened = lines.filter((line) => line.along.length > 0 || line.crossed.length > 0 || line.cover);
  if (opened.every((line) => covered(line.along) === 1)) return 'whole';
  if (opened.some((line) => line.along.length > 0)) return 'along';
  return opened.some((line) => line.crossed.length > 0) ? 'crossing' : 'cover';
}

/** The sides on which something is opened; both where it is sewn once for all. */
export const sidesOpened = (open: Open): Sides => {
  if (open.lines.length === 0) return open.sub.times === 2 ? open.sides : BOTH;
  return open.sub.lines.reduce<Sides>((all, line, n) => {
    const opened = open.lines[n];
    const any =
      opened !== undefined && (opened.along.length > 0 || opened.crossed.length > 0 || opened.cover);
    return any ? and(all, line.sides) : all;
  }, 0);
};

/** What is opened, how far and how long, for whoever asks what an alteration comes to. */
export function openedOf(open: Open): Opened {
  const { sub, lines } = open;
  const long = lines.reduce(
    (most, line) => {
      const part = covered([...line.along, ...line.crossed, ...(line.cover ? [[0, 1] as const] : [])]);
      return Math.max(most, part * sub.length);
    },
    lines.length === 0 ? edgeLength(sub) : 0,
  );
  return {
    kind: sub.join ? 'join' : 'work',
    id: sub.id,
    name: sub.join?.name ?? sub.work?.name ?? sub.id,
    extent: extentOf(open),
    length: nm(long) as Length,
  };
}

const edgeLength = ({ work, room }: Sub): number =>
  work && 'edge' in work ? room.length({ piece: work.on, edge: work.edge }) : 0;

function extentOf(open: Open): Extent {
  const kind = kindOfOpening(open);
  if (kind === 'whole') return { kind };
  if (kind === 'crossing') return { kind, joins: [...open.crossing.keys()] };
  const refs = new Map<string, EdgeRef>();
  const put = (ref: EdgeRef) => refs.set(`${ref.other} ${edgeName(ref)}`, ref);
  open.lines.forEach((line, n) => {
    for (const { ref } of line.spots) put(ref);
    const cover = open.sub.lines[n]?.cover;
    if (line.cover && cover) put(cover.ref);
  });
  return { kind: 'along', edges: [...refs.values()] };
}

/** Trims in opened seams that keep a part of their basting at least. */
export function staysOf(out: readonly Out[]): readonly TrimStays[] {
  return out.flatMap(({ open: { sub, lines } }) =>
    (sub.join?.catches ?? []).flatMap(({ trim, basteTo }, i): readonly TrimStays[] => {
      const gone = (key: string): boolean =>
        sub.lines.every(
          (line, n) =>
            lines[n]?.along.length === 0 ||
            line.spots.every((spot) => spot.key !== key || overlaps(spot.span, lines[n]?.trims.get(i) ?? [])),
        );
      const own = (sub.join?.[basteTo] ?? []).filter((ref) => !gone(edgeName(ref)));
      const on = [...new Set(own.map(({ piece }) => piece))];
      return on.length > 0 ? [{ join: sub.id, trim: trim.piece, on }] : [];
    }),
  );
}
