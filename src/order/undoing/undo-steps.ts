import { edgeName } from '../../outfit/chains.ts';
import { cuttingOf } from '../expand/garment.ts';
import type { UndoStep } from '../running-types.ts';
import type { Open } from './closure.ts';
import { kindOfOpening, sidesOpened } from './opened.ts';
import type { Sub } from './prepared.ts';
import { type Out, type Renewed, sidesOf } from './reckon.ts';
import { BOTH, countOf } from './sides.ts';
import { overlaps } from './spans.ts';
import type { Alteration } from './undoing-types.ts';
import type { Now } from './unpicking.ts';
import { sayOut, sayRenewed } from './words.ts';

/** The card on which something is unpicked or opened. */
export function outStep({ open, minutes }: Out, now: Now): UndoStep {
  const { sub } = open;
  const [step] = sub.steps;
  const kind = kindOfOpening(open);
  const sewn = sub.steps.some(
    (one) =>
      now.sewn(one) &&
      !one.action.startsWith('baste') &&
      ['machine', 'hand', 'overlocker'].includes(one.setUp.station),
  );
  const edges = edgesOf(open);
  return {
    garment: sub.room.garment.id,
    of: step?.of ?? { kind: 'join', id: sub.id },
    action: kind === 'whole' ? 'unpick' : 'open',
    say: sayOut(open, !sewn),
    pieces:
      edges.length > 0
        ? [...new Set([...edges.map((edge) => edge.split('.')[0] ?? ''), ...trimsIn(sub)])]
        : sub.pieces,
    edges,
    times: sub.times === 2 && sidesOpened(open) === BOTH ? 2 : 1,
    minutes,
  };
}

const trimsIn = ({ join }: Sub): readonly string[] => (join?.catches ?? []).map(({ trim }) => trim.piece);

/** The edges that lie where it is opened, on both sides of the seam. */
function edgesOf(open: Open): readonly string[] {
  const keys = new Set<string>();
  open.lines.forEach((line, n) => {
    for (const spot of open.sub.lines[n]?.spots ?? [])
      if (overlaps(spot.span, line.along)) keys.add(spot.key);
    const cover = open.sub.lines[n]?.cover;
    if (line.cover && cover) keys.add(cover.key);
  });
  for (const refs of open.crossing.values()) for (const ref of refs) keys.add(edgeName(ref));
  if (open.lines.length === 0) for (const edge of open.sub.steps[0]?.edges ?? []) keys.add(edge);
  return [...keys];
}

/** The card on which pieces are cut again or their lines marked; the alterations say what is different about them. */
export function renewedStep(one: Renewed, alterations: readonly Alteration[]): UndoStep {
  const garment = one.room.garment.id;
  const pair = one.pieces.some(
    ([id, altered]) => one.room.looked.pieces.get(id)?.cut === 'pair' && countOf(sidesOf(altered)) === 2,
  );
  const saying = (piece: string): string =>
    [
      ...new Set(
        alterations
          .filter((a) => a.garment === garment && a.piece === piece && a.say !== '')
          .map((a) => a.say),
      ),
    ].join(', ');
  return {
    garment,
    of: { kind: 'piece', id: cuttingOf(one.cloth) },
    action: one.action,
    say: sayRenewed(one, saying),
    pieces: one.pieces.map(([id]) => id),
    edges: one.pieces.flatMap(([id, { edges, anew }]) =>
      anew === 0 ? [...edges.keys()].map((edge) => `${id}.${edge}`) : [],
    ),
    times: pair ? 2 : 1,
    minutes: one.minutes,
  };
}
