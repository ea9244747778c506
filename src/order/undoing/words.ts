import { edgeWords, listWords } from '../../outfit/edge-words.ts';
import { lower } from '../../outfit/lower.ts';
import type { Open } from './closure.ts';
import { kindOfOpening, sidesOpened } from './opened.ts';
import type { Room } from './prepared.ts';
import type { Redone, Renewed } from './reckon.ts';
import { and, BOTH, onOneSide, type Sides } from './sides.ts';
import { overlaps } from './spans.ts';

const nameOf = (room: Room, piece: string): string => lower(room.looked.pieces.get(piece)?.name ?? piece);

/** `the centre front and the left back`: pieces along which something is opened. */
function along(open: Open): string {
  const { room, times } = open.sub;
  const sides = new Map<string, Sides>();
  for (const { spots } of open.lines)
    for (const spot of spots) sides.set(spot.ref.piece, and(sides.get(spot.ref.piece) ?? 0, spot.sides));
  return listWords(
    [...sides].map(([piece, on]) => {
      const side =
        times === 2 || room.looked.pieces.get(piece)?.cut !== 'pair' || on === BOTH
          ? ''
          : on === 1
            ? 'left '
            : 'right ';
      return `the ${side}${nameOf(room, piece)}`;
    }),
  );
}

/** `where it crosses the side seam`; empty where it does not, or is open as far as there anyway. */
function crossing(open: Open): string {
  const apart = open.lines.some(({ along: spans, crossed }) =>
    crossed.some((one) => !overlaps(one, spans) && one[1] > one[0]),
  );
  if (!apart) return '';
  const names = [...open.crossing.keys()].map(
    (id) => `the ${lower(open.sub.room.looked.joins.get(id)?.name ?? id)}`,
  );
  return `where it crosses ${listWords(names)}`;
}

/** How much is opened, after the name of it: ` along the centre front`. */
function reach(open: Open): string {
  const side = open.sub.times === 2 ? onOneSide(sidesOpened(open)) : '';
  switch (kindOfOpening(open)) {
    case 'whole':
      return side;
    case 'cover':
      return `, only where the ${nameOf(open.sub.room, open.sub.join?.cover?.piece ?? '')} is sewn over it${side}`;
    case 'crossing':
      return ` ${crossing(open)}${side}`;
    case 'along': {
      const over = crossing(open);
      return ` along ${along(open)}${over === '' ? '' : ` and ${over}`}${side}`;
    }
  }
}

/** What an opening says on its card. */
export function sayOut(open: Open, onlyBasted: boolean): string {
  const { join, work } = open.sub;
  const name = lower(join?.name ?? work?.name ?? open.sub.id);
  const it = `${work?.kind === 'own' ? name : `the ${name}`}${reach(open)}`;
  if (kindOfOpening(open) === 'crossing') return `Open ${it}`;
  if (onlyBasted) return `Take the basting out of ${it}`;
  return work?.kind === 'own' ? `Undo ${it}` : `Unpick ${it}`;
}

/** How much of a step is done again, after its words; nothing where it is all of it. */
export function sayOnly(
  { sub, step, share, open }: Redone,
  room: Room,
  isOpen: (join: string) => boolean,
): string | undefined {
  if (share >= 1) return undefined;
  if (sub.gate) {
    const names = sub.gate.tack
      .filter(isOpen)
      .map((id) => `the ${lower(room.looked.joins.get(id)?.name ?? id)}`);
    return `only ${listWords(names)}`;
  }
  if (!open) return 'only where its seam is opened';
  if (open.lines.length === 0) return `only${onOneSide(sidesOpened(open))}`;
  const far = kindOfOpening(open) === 'cover' ? onOneSide(sidesOpened(open)) : reach(open);
  const trim = /^baste-trim/.test(step.action) && kindOfOpening(open) === 'whole';
  return `only${trim || far === '' ? ` along ${along(open)}${onOneSide(sidesOpened(open))}` : far}`;
}

/** A left and a right in one word, where the name is one that takes an s. */
const several = (name: string): string =>
  /[a-z]$/.test(name) && !/(s|x|z|ch|sh|[^aeiou]y|fe|lf|af)$/.test(name) ? `the ${name}s` : `each ${name}`;

/** What a cutting or marking says on its card; `saying` is what is different about a piece. */
export function sayRenewed({ room, action, pieces }: Renewed, saying: (piece: string) => string): string {
  const named = (id: string, sides: Sides): string => {
    const name = nameOf(room, id);
    if (room.looked.pieces.get(id)?.cut !== 'pair') return `the ${name}`;
    return sides === BOTH ? several(name) : `the ${sides === 1 ? 'left' : 'right'} ${name}`;
  };
  const different = (id: string): string => (saying(id) === '' ? '' : `, ${saying(id)}`);
  if (action === 'cut-anew') {
    const names = pieces.map(([id, { anew }]) => named(id, anew));
    if (pieces.every(([id]) => saying(id) === '')) return `Cut ${listWords(names)} again`;
    const each = pieces.map(([id], i) => `${names[i] ?? ''}${i === 0 ? ' again' : ''}${different(id)}`);
    return `Cut ${each.join('; and ')}`;
  }
  const fresh = pieces.filter(([, { anew }]) => anew > 0);
  const moved = pieces.filter(([, { anew }]) => anew === 0);
  const parts: string[] = [];
  if (fresh.length > 0)
    parts.push(`mark seam lines and notches on ${listWords(fresh.map(([id, { anew }]) => named(id, anew)))}`);
  for (const [id, { edges }] of moved) {
    const sides = [...edges.values()].reduce<Sides>(and, 0);
    parts.push(
      `mark the new seam line of ${named(id, sides)} along the ${listWords([...edges.keys()].map(edgeWords))}${different(id)}`,
    );
  }
  const all = parts.join('; ');
  return all.charAt(0).toUpperCase() + all.slice(1);
}
