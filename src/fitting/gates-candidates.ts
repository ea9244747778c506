import { lower } from '../outfit/lower.ts';
import type { Garment, Gate, Join } from '../outfit/outfit.ts';
import type { Role } from './entry.ts';
import { rolesOf } from './roles.ts';

/** What gives a garment its shape; collars, cuffs and trims can wait. */
const SHAPES = new Set<Role>([
  'centre-front',
  'side-front',
  'side-back',
  'centre-back',
  'sleeve',
  'sleeve-head',
  'arm-band',
  'leg',
  'lower-leg',
  'waistband',
  'skirt',
]);

/** A try-on that could be put in, without its checks. */
export type Candidate = Omit<Gate, 'checks'>;

const held = ({ this: one, to }: Join): readonly string[] => [...one, ...to].map(({ piece }) => piece);

/** The seams that give the garment its shape, in groups that hang together. */
function shapeSeams(garment: Garment): readonly (readonly Join[])[] {
  const roles = rolesOf(garment);
  const seams = garment.joins.filter(
    (join) =>
      (join.seam === 'plain' || join.seam === 'stretch') &&
      held(join).every((piece) => SHAPES.has(roles.get(piece) ?? 'other')),
  );
  const groups: { pieces: Set<string>; seams: Join[] }[] = [];
  for (const seam of seams) {
    const touching = groups.filter(({ pieces }) => held(seam).some((piece) => pieces.has(piece)));
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push({
      pieces: new Set([...touching.flatMap(({ pieces }) => [...pieces]), ...held(seam)]),
      seams: [...touching.flatMap((group) => group.seams), seam],
    });
  }
  return groups.map((group) => group.seams);
}

/**
 * Try-ons that could be put in: the seams that give the shape, some of them sewn first and the others tacked for it alone. `place` says where in the order a seam begins, and `begun` whether it has begun, so that it can no longer be
 * tacked plain; what is not cut yet can be tried in cheap cloth. What the garment already has is left out.
 */
export function candidatesFor(
  garment: Garment,
  place: (join: string) => number,
  begun: (join: string) => boolean,
  isCut: (piece: string) => boolean,
): readonly Candidate[] {
  const taken = new Set(
    [garment.pieces, garment.works, garment.joins, garment.gates].flatMap((list) => list.map(({ id }) => id)),
  );
  const id = ['try-plain', 'try-tacked', 'try-early'].find((one) => !taken.has(one)) ?? freeId(taken);
  return shapeSeams(garment).flatMap((group) => {
    const seams = group.toSorted((a, b) => place(a.id) - place(b.id));
    const least = seams.filter((seam) => begun(seam.id)).length;
    const all: Candidate[] = [];
    // All tacked that can be, about half of it, none: what lies between is hardly worth another order of making.
    for (const sewn of new Set([least, Math.ceil((least + seams.length) / 2), seams.length])) {
      const gate: Candidate = {
        id,
        name: nameOf(garment, sewn, seams.length),
        after: seams.slice(0, sewn).map((seam) => seam.id),
        tack: seams.slice(sewn).map((seam) => seam.id),
      };
      if (!garment.gates.some((one) => !one.trial && isLike(one, gate))) all.push(gate);
    }
    if (seams.every((seam) => held(seam).every((piece) => !isCut(piece)))) {
      const tack = seams.map((seam) => seam.id);
      const trial: Candidate = {
        id,
        name: `The ${lower(garment.name)}, a trial in cheap cloth`,
        after: [],
        tack,
        trial: true,
      };
      if (!garment.gates.some((one) => one.trial && isLike(one, trial))) all.push(trial);
    }
    return all;
  });
}

function freeId(taken: ReadonlySet<string>): string {
  for (let n = 2; ; n += 1) if (!taken.has(`try-plain-${n}`)) return `try-plain-${n}`;
}

const nameOf = (garment: Garment, sewn: number, all: number): string =>
  `The ${lower(garment.name)}, ${sewn === 0 ? 'tacked plain' : sewn === all ? 'sewn plain' : 'part sewn, part tacked'}`;

/** Is the one there already, or as good as? */
const isLike = (there: Gate, gate: Candidate): boolean =>
  gate.tack.length === there.tack.length &&
  gate.tack.every((id) => there.tack.includes(id)) &&
  gate.after.every((id) => there.after.includes(id));
