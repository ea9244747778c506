import { practice, published } from '../../cloth/source.ts';
import { crossings, edgeName, piecesOf } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Chain, Join } from '../../outfit/outfit.ts';
import { bundles } from '../bundles.ts';
import { type Made, stepOf } from '../expand/made.ts';
import { kindOf } from '../kinds.ts';
import type { StepId } from '../step.ts';
import { closingJoins } from '../tubes.ts';
import type { Found, Rule } from './rule.ts';

/** A chain that something is sewn along, the step that first needs it whole, and the step that crosses its seams. */
interface Run {
  readonly name: string;
  readonly chain: Chain;
  readonly ring: boolean;
  readonly carrying: string;
  readonly needs: StepId;
  readonly crosses: StepId;
}

/** Every chain of a garment with the steps that run along it. */
function* runs(made: Made): Iterable<Run> {
  for (const join of made.garment.joins) {
    const subject = made.subjects.get(join.id);
    if (!subject) continue;
    const pin = subject.steps.find((step) => !step.action.startsWith('baste-trim'))?.id ?? subject.first;
    for (const [side, chain] of [
      ['this', join.this],
      ['to', join.to],
    ] as const) {
      const caught = join.catches.findIndex((c) => c.basteTo === side);
      const basted = caught < 0 ? undefined : stepOf(subject, 'baste-trim', `baste-trim-${caught + 1}`);
      const run = { name: subject.name, chain, ring: join.ring, carrying: join.id };
      yield { ...run, needs: basted ?? pin, crosses: basted ?? pin };
    }
  }
  for (const work of made.garment.works) {
    if (work.kind !== 'hem' && work.kind !== 'casing') continue;
    const subject = made.subjects.get(work.id);
    if (!subject) continue;
    const run = { name: `the ${subject.name}`, chain: work.along, ring: work.ring, carrying: work.id };
    yield { ...run, needs: subject.first, crosses: subject.first };
  }
}

/** The step that holds a seam together for good. */
const sewn = (made: Made, join: Join): StepId | undefined => {
  const subject = made.subjects.get(join.id);
  return subject && (stepOf(subject, 'stitch', 'bind') ?? subject.last);
};

/** What is sewn along a chain comes after the joins that make the chain one run. */
export const chainIsWhole: Rule = {
  id: 'chain is whole',
  source: practice,
  *find(made) {
    for (const run of runs(made)) {
      for (const crossing of crossings(made.looked, run.chain, run.ring, run.carrying)) {
        for (const under of crossing.over) {
          const before = sewn(made, under);
          if (!before) continue;
          yield {
            before,
            after: run.needs,
            because: `${run.name} runs over the ${lower(under.name)}, so that seam is sewn first to make one run`,
          };
        }
      }
    }
  },
};

/** A seam is pressed before another seam crosses it. */
export const pressBeforeCrossing: Rule = {
  id: 'press before crossing',
  source: published('Fitting Dresses', '1946', 'US Dept of Agriculture, part 2'),
  *find(made) {
    for (const run of runs(made)) {
      for (const crossing of crossings(made.looked, run.chain, run.ring, run.carrying)) {
        for (const under of crossing.over) {
          const subject = made.subjects.get(under.id);
          const press = subject && stepOf(subject, 'press', 'flip');
          if (!press) continue;
          yield {
            before: press,
            after: run.crosses,
            because: `the ${lower(under.name)} is pressed before ${run.name} crosses it; one pressing at the end is not the same`,
          };
        }
      }
    }
  },
};

/** A trim is basted to its own side while only that side is made up: there is less cloth to handle. */
export const trimOnOneSide: Rule = {
  id: 'baste the trim to one side',
  source: practice,
  *find(made) {
    for (const join of made.garment.joins) {
      const subject = made.subjects.get(join.id);
      if (!subject) continue;
      for (const [i, caught] of join.catches.entries()) {
        const basted = stepOf(subject, 'baste-trim', `baste-trim-${i + 1}`);
        const [own, opposite] = caught.basteTo === 'this' ? [join.this, join.to] : [join.to, join.this];
        if (!basted) continue;
        // A seam that its own side runs over as well has to be sewn before the basting.
        const carried = new Set(
          crossings(made.looked, own, join.ring, join.id).flatMap((crossing) => crossing.over),
        );
        for (const crossing of crossings(made.looked, opposite, join.ring, join.id)) {
          for (const under of crossing.over) {
            const other = made.subjects.get(under.id);
            if (!other || carried.has(under)) continue;
            yield {
              before: basted,
              after: other.first,
              because: `the trim is basted while only its own side is made up, before ${other.name}`,
            };
          }
        }
      }
    }
  },
};

/** What is laid flat over a seam comes after that seam. */
export const seamThenOver: Rule = {
  id: 'the seam, then what lies over it',
  source: practice,
  *find(made) {
    for (const over of made.garment.joins) {
      const laid = made.subjects.get(over.id);
      if (!laid || over.seam !== 'laid-on') continue;
      const edges = new Set([...over.this, ...over.to].map(edgeName));
      for (const under of made.garment.joins) {
        const subject = made.subjects.get(under.id);
        if (!subject || under.id === over.id || under.seam === 'laid-on') continue;
        if (![...under.this, ...under.to].some((ref) => edges.has(edgeName(ref)))) continue;
        yield {
          before: subject.last,
          after: laid.first,
          because: `${laid.name} lies over ${subject.name}, so that seam is sewn and pressed first`,
        };
      }
    }
  },
};

/**
 * What is easier flat comes before the join that closes the part into a tube. Joins that the maker wants in the round,
 * and rings, come after it instead.
 */
export const flatBeforeTube: Rule = {
  id: 'flat before tube',
  source: published('A Complete Course in Dressmaking', '1921', 'Isabel DeNyse Conover, vol. 4, p. 36'),
  *find(made): Iterable<Found> {
    const closing = closingJoins(made.looked);
    const part = partsOf(made);
    for (const id of closing) {
      const closer = made.looked.joins.get(id);
      const closed = made.subjects.get(id);
      if (!closer || !closed) continue;
      for (const join of made.garment.joins) {
        const subject = made.subjects.get(join.id);
        if (!subject || closing.has(join.id) || join.ring) continue;
        // Either side of a join in the round may be the tube, whichever was described first.
        const there =
          join.worked === 'round' ? piecesOf(join) : join.this.slice(0, 1).map(({ piece }) => piece);
        if (!there.some((piece) => part(piece) === part(closer.this[0]?.piece ?? ''))) continue;
        if (join.worked === 'round') {
          yield {
            before: closed.last,
            after: subject.first,
            because: `${subject.name} is sewn in the round, after ${closed.name}`,
          };
          continue;
        }
        yield {
          before: subject.last,
          after: closed.first,
          because: `${subject.name} is easier while the garment lies flat, before ${closed.name} closes it`,
          gives: true,
        };
      }
      for (const work of made.garment.works) {
        const subject = made.subjects.get(work.id);
        if (!subject || kindOf(work).when !== 'flat' || !piecesOf(closer).includes(work.on)) continue;
        yield {
          before: subject.last,
          after: closed.first,
          because: `${lower(work.name)} needs the ${lower(made.looked.pieces.get(work.on)?.name ?? work.on)} flat, before ${closed.name} closes it`,
        };
      }
    }
  },
};

/**
 * Which part each piece belongs to: joins hang together through shared pieces, as far as the part can lie flat. Rings
 * and joins wanted in the round do not tie parts together, since they are sewn between tubes that are closed.
 */
function partsOf(made: Made): (piece: string) => string {
  const { root, tie } = bundles();
  for (const join of made.garment.joins) {
    if (!join.ring && join.worked !== 'round') tie(piecesOf(join));
  }
  return root;
}
