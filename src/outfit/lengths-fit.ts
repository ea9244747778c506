import type { Sourced } from '../cloth/advice.ts';
import { practice, published, type Source } from '../cloth/source.ts';
import { inches, type Length, longest, mm, nm, size, subtract } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { edgeLengths } from '../shape/measure.ts';
import { edgeName, lookUp, standsForBoth } from './chains.ts';
import { namesOf } from './lengths-fit-words.ts';
import type { Chain, Garment, Join, Outfit } from './outfit.ts';

/** How the lengths of two edges that are to be sewn together agree. */
export interface Fit {
  /** Id of the join. */
  readonly join: string;
  readonly kind: 'edges' | 'trim' | 'gather';
  /** Which side is the longer one, as it is sewn; for a trim, `this` is the trim. */
  readonly longer: 'this' | 'to' | 'none';
  /** By how much. */
  readonly by: Length;
  /** True where it goes together as it is, or with the ease that is usual there. */
  readonly within: boolean;
  /** Both lengths and by how much, and what to do. */
  readonly say: string;
  readonly source: Source;
}

/** Two edges whose lengths differ by no more than this lie together under the fingers. */
export const LENGTHS_ALIKE: Sourced<Length> = { value: mm(3), source: practice };

/**
 * On a long seam the two sides may differ by this part of its length.
 * @unit parts of a thousand
 */
export const LONG_SEAMS_ALIKE: Sourced<number> = { value: 5, source: practice };

/** A sleeve cap may be this much longer than its armhole and still be eased in without gathers or pleats; in firm cloth less. */
export const MOST_CAP_EASE: Sourced<Length> = { value: inches(1.5), source: practice };

/** A back shoulder may be this much longer than the front one and is eased to it. */
export const SHOULDER_EASE: Sourced<Length> = {
  value: inches(1, 4),
  source: published(
    'Clothing for Women, Baldt',
    '1916',
    'Construction of outer garments, tailored waist, part 2',
  ),
};

/**
 * Gathers may be drawn up this much tighter or looser than planned without its showing.
 * @unit parts of a hundred
 */
export const GATHERS_GIVE: Sourced<number> = { value: 5, source: practice };

/**
 * The shorter edge may be stretched on by this part of what its cloth gives.
 * @unit parts of a hundred
 */
export const STRETCHED_ON: Sourced<number> = { value: 50, source: practice };

/** One side of a seam: its edges, how long they are drawn and how long they are once gathered. */
interface Side {
  readonly chain: Chain;
  readonly drawn: Length;
  readonly sewn: Length;
}

const isGathered = (side: Side): boolean => side.sewn !== side.drawn;

/** Whether the edges that are sewn together are as long as each other, join by join. */
export function lengthsFit(outfit: Outfit, garment: Garment, marking: Marking): readonly Fit[] {
  const lengths = new Map<string, Length>(
    garment.pieces.flatMap((piece) =>
      [...edgeLengths(piece.outline)].map(([edge, long]) => [`${piece.id}.${edge}`, long] as const),
    ),
  );
  const fullness = new Map<string, number>(
    garment.works.flatMap((work) =>
      work.kind === 'gather' ? [[`${work.on}.${work.edge}`, work.fullness] as const] : [],
    ),
  );
  const looked = lookUp(garment);
  const sideOf = (chain: Chain): Side => {
    let [drawn, sewn] = [0, 0];
    for (const ref of chain) {
      const half = lengths.get(edgeName(ref)) ?? 0;
      const long = standsForBoth(looked, chain, ref) ? half * 2 : half;
      drawn += long;
      sewn += long / (fullness.get(edgeName(ref)) ?? 1);
    }
    return { chain, drawn: nm(drawn), sewn: nm(sewn) };
  };
  const context = { outfit, garment, write: (long: Length) => writeLength(long, marking).text };
  return garment.joins.flatMap((join): readonly Fit[] => {
    const [one, to] = [sideOf(join.this), sideOf(join.to)];
    const plain = isGathered(to) ? one : to;
    return [
      compare(context, join, one, to, isGathered(one) || isGathered(to) ? 'gather' : 'edges'),
      ...(join.cover ? [compare(context, join, sideOf([join.cover]), plain, 'edges')] : []),
      ...join.catches.map((caught) =>
        compare(context, join, sideOf([caught.trim]), caught.basteTo === 'this' ? one : to, 'trim'),
      ),
    ];
  });
}

interface Context {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly write: (long: Length) => string;
}

function compare(context: Context, join: Join, one: Side, to: Side, kind: Fit['kind']): Fit {
  const { write } = context;
  const off = subtract(one.sewn, to.sewn);
  const by = size(off);
  const [long, short] = off >= 0 ? [one, to] : [to, one];
  const [oneName, toName] = namesOf(context.garment, join, one.chain, to.chain);
  const [longName, shortName] = off >= 0 ? [oneName, toName] : [toName, oneName];
  const allowed = allowedFor(context, long, short);
  const within = by <= allowed.ease;
  const base = {
    join: join.id,
    kind,
    longer: by <= LENGTHS_ALIKE.value ? ('none' as const) : off > 0 ? ('this' as const) : ('to' as const),
    by,
    within,
    source: allowed.source,
  };
  const drawn = (side: Side): string =>
    isGathered(side) ? `${write(side.drawn)}, gathered to ${write(side.sewn)}` : write(side.sewn);
  if (by <= LENGTHS_ALIKE.value) {
    return {
      ...base,
      say: sentence(`${oneName} (${drawn(one)}) and ${toName} (${drawn(to)}) go together as they are`),
    };
  }
  const how = `${longName} (${drawn(long)}) is ${write(by)} longer than ${shortName} (${drawn(short)})`;
  return { ...base, say: sentence(`${how}: ${cure(kind, one, to, within, [longName, shortName], allowed)}`) };
}

const sentence = (said: string): string => `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;

const twoPlaces = (figure: number): string => String(Math.round(figure * 100) / 100);

function cure(
  kind: Fit['kind'],
  one: Side,
  to: Side,
  within: boolean,
  [longName, shortName]: readonly [string, string],
  allowed: Allowed,
): string {
  const gathered = isGathered(one) ? one : isGathered(to) ? to : undefined;
  if (gathered && kind !== 'trim') {
    const place = gathered === one ? to : one;
    if (gathered.drawn <= place.sewn) return `there is nothing to gather; cut ${shortName} longer`;
    const full = twoPlaces(gathered.drawn / place.sewn);
    return within
      ? `draw the gathers up to fit, ${full} to 1`
      : `gather it ${full} to 1 instead, or make the two agree`;
  }
  if (within) return allowed.how;
  if (kind === 'trim') {
    return one.sewn < to.sewn
      ? `let ${shortName} end before the seam does, or cut it longer`
      : `gather ${longName} more, or cut it shorter`;
  }
  return allowed.eased
    ? `that is more than can be eased in; take the rest out of ${longName}, or gather it`
    : `lengthen ${shortName}, or take the difference in at ${longName}`;
}

/** How much longer one side may be, why, and what is then done. */
interface Allowed {
  readonly ease: Length;
  readonly source: Source;
  readonly how: string;
  /** True where one side is meant to be the longer one. */
  readonly eased: boolean;
}

const all = (chain: Chain, name: string): boolean =>
  chain.every(({ edge }) => edge === name || edge.startsWith(`${name}-`) || edge.endsWith(`-${name}`));

function allowedFor({ outfit, garment }: Context, long: Side, short: Side): Allowed {
  const alike = longest(LENGTHS_ALIKE.value, nm((short.sewn * LONG_SEAMS_ALIKE.value) / 1000));
  if (isGathered(long) || isGathered(short)) {
    const ease = longest(alike, nm((short.sewn * GATHERS_GIVE.value) / 100));
    return { ease, source: GATHERS_GIVE.source, how: 'draw the gathers up to fit', eased: false };
  }
  if (all(long.chain, 'cap')) {
    const ease = longest(alike, MOST_CAP_EASE.value);
    return { ease, source: MOST_CAP_EASE.source, how: 'ease it in', eased: true };
  }
  const pieces = new Map(garment.pieces.map((piece) => [piece.id, piece]));
  const backs = long.chain.every(({ piece }) => /(^|-)back(-|$)/.test(piece));
  if (all(long.chain, 'shoulder') && backs) {
    const ease = longest(alike, SHOULDER_EASE.value);
    return { ease, source: SHOULDER_EASE.source, how: 'ease it to the front', eased: true };
  }
  const gives = short.chain.map(({ piece }) => {
    const cloth = outfit.cloths.find(({ id }) => id === pieces.get(piece)?.cloth);
    return Math.max(cloth?.stretch.across ?? 0, cloth?.stretch.along ?? 0);
  });
  const give = gives.length > 0 ? Math.min(...gives) : 0;
  if (give > 0) {
    const ease = longest(alike, nm((short.sewn * give * STRETCHED_ON.value) / 10_000));
    return { ease, source: STRETCHED_ON.source, how: 'stretch the shorter one on evenly', eased: false };
  }
  return { ease: alike, source: LENGTHS_ALIKE.source, how: 'ease it in along the whole seam', eased: false };
}
