import { practice, published } from '../../cloth/source.ts';
import { edgeName, piecesOf } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Join } from '../../outfit/outfit.ts';
import { type Made, stepOf } from '../expand/made.ts';
import { kindOf } from '../kinds.ts';
import type { Rule } from './rule.ts';

const unitOf = (made: Made, piece: string): string => made.looked.pieces.get(piece)?.unit ?? '';

/** The unit whose pieces alone a join holds, or nothing. */
function within(made: Made, join: Join): string {
  const units = new Set(piecesOf(join).map((piece) => unitOf(made, piece)));
  const [only = ''] = units;
  return units.size === 1 ? only : '';
}

/** A cuff or a collar is made up by itself before it meets the rest. */
export const unitFirst: Rule = {
  id: 'make up the unit first',
  source: published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Plan for a shirt waist'),
  *find(made) {
    for (const meeting of made.garment.joins) {
      const met = made.subjects.get(meeting.id);
      if (!met || within(made, meeting) !== '') continue;
      for (const unit of new Set(piecesOf(meeting).map((piece) => unitOf(made, piece)))) {
        if (unit === '') continue;
        const because = `the ${unit.replaceAll('-', ' ')} is made up by itself before ${met.name}`;
        for (const join of made.garment.joins) {
          const subject = made.subjects.get(join.id);
          if (subject && within(made, join) === unit)
            yield { before: subject.last, after: met.first, because };
        }
        for (const work of made.garment.works) {
          const subject = made.subjects.get(work.id);
          if (!subject || kindOf(work).when === 'late' || unitOf(made, work.on) !== unit) continue;
          // Only the holes belong to the unit; the buttons may wait for the last try-on.
          yield { before: stepOf(subject, 'slit') ?? subject.last, after: met.first, because };
        }
      }
    }
  },
};

/** The layer that will cover a seam hangs on its neighbour before that seam is sewn, so that it can be held away. */
export const coverHangsFirst: Rule = {
  id: 'the cover hangs first',
  source: practice,
  *find(made) {
    for (const join of made.garment.joins) {
      const cover = join.cover;
      const covered = made.subjects.get(join.id);
      if (!cover || !covered) continue;
      const held = new Set([...join.this, ...join.to].map((ref) => ref.piece));
      for (const hanging of made.garment.joins) {
        if (hanging.seam !== 'ends' && hanging.seam !== 'turned') continue;
        const pieces = piecesOf(hanging);
        const subject = made.subjects.get(hanging.id);
        if (!subject || !pieces.includes(cover.piece) || !pieces.some((piece) => held.has(piece))) continue;
        yield {
          before: subject.last,
          after: covered.first,
          because: `the ${lower(made.looked.pieces.get(cover.piece)?.name ?? cover.piece)} hangs on ${subject.name} before ${covered.name}, which it is sewn over`,
        };
      }
    }
  },
};

/** Buttonholes through several layers come after the joins that bring the layers together. */
export const layersBeforeHoles: Rule = {
  id: 'all layers before holes',
  source: practice,
  *find(made) {
    for (const work of made.garment.works) {
      if (work.kind !== 'buttonholes') continue;
      const subject = made.subjects.get(work.id);
      const mark = subject && stepOf(subject, 'mark');
      if (!mark) continue;
      const layers = new Set([work.on, ...work.through]);
      const unit = unitOf(made, work.on);
      for (const join of made.garment.joins) {
        const held = made.subjects.get(join.id);
        if (!held) continue;
        const brings =
          unit === ''
            ? piecesOf(join).filter((piece) => layers.has(piece)).length > 1
            : within(made, join) === unit;
        if (brings) {
          yield {
            before: held.last,
            after: mark,
            because: `${held.name} brings all layers together before ${lower(work.name)} go through them`,
          };
        }
      }
    }
  },
};

/** Edges that the row of holes runs into are finished before the holes are placed. */
export const endsBeforeHoles: Rule = {
  id: 'finish the ends before holes',
  source: practice,
  *find(made) {
    for (const work of made.garment.works) {
      if (work.kind !== 'buttonholes') continue;
      const subject = made.subjects.get(work.id);
      const mark = subject && stepOf(subject, 'mark');
      if (!mark) continue;
      const ends = made.looked.beside.get(`${work.on}.${work.along}`) ?? [];
      const runsInto = (name: string) => ends.some((end) => `${work.on}.${end}` === name);
      for (const join of made.garment.joins) {
        const held = made.subjects.get(join.id);
        const unit = unitOf(made, work.on);
        // A unit's own seams are known to come first; the seam that carries the unit away comes after.
        if (!held || (unit !== '' && within(made, join) !== unit)) continue;
        if (![...join.this, ...join.to].some((ref) => runsInto(edgeName(ref)))) continue;
        yield {
          before: held.last,
          after: mark,
          because: `${held.name} finishes the end of the row before ${lower(work.name)} are placed`,
        };
      }
      for (const hem of made.garment.works) {
        const held = made.subjects.get(hem.id);
        if (hem.kind !== 'hem' || !held || !hem.along.some((ref) => runsInto(edgeName(ref)))) continue;
        yield {
          before: held.last,
          after: mark,
          because: `the ${held.name} finishes the end of the row before ${lower(work.name)} are placed`,
        };
      }
    }
  },
};

/** A try-on stands after what it needs put together; seams that are basted for it are stitched after it. */
export const puttingTogether: Rule = {
  id: 'put together for the try-on',
  source: published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Plan for a shirt waist'),
  *find(made) {
    for (const gate of made.garment.gates) {
      const subject = made.subjects.get(gate.id);
      if (!subject) continue;
      for (const id of gate.after) {
        const join = made.subjects.get(id);
        if (!join) continue;
        const basted = stepOf(join, 'baste');
        const tacked = made.looked.joins.get(id)?.tacked === true && basted !== undefined;
        yield {
          before: tacked ? basted : join.last,
          after: subject.first,
          because: `${join.name} is ${tacked ? 'basted' : join.kind === 'join' ? 'sewn' : 'done'} for the try-on`,
        };
        const stitch = stepOf(join, 'stitch');
        if (tacked && stitch) {
          yield {
            before: subject.last,
            after: stitch,
            because: `the try-on comes while ${join.name} is only basted and can still be changed`,
          };
        }
      }
    }
  },
};
