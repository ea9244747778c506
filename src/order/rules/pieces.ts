import { memory, practice, published } from '../../cloth/source.ts';
import { piecesOf } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Work } from '../../outfit/outfit.ts';
import { cuttingOf, outlineOf } from '../expand/garment.ts';
import type { Made, Subject } from '../expand/made.ts';
import { kindOf } from '../kinds.ts';
import type { Found, Rule } from './rule.ts';

/**
 * The layer of a work on one piece. A piece that is cut after its work has no edge to stay or to stiffen until then, so
 * what takes up its cloth lies below all else.
 */
const layerOn = (made: Made, piece: string, work: Work): number => {
  const { layer, takesUp } = kindOf(work);
  return made.looked.pieces.get(piece)?.cutAfterWork && takesUp ? layer - 100 : layer;
};

/** Works on each piece, from the lowest layer up; works along several pieces belong to none of them alone. */
function* worksByPiece(made: Made): Iterable<readonly [string, readonly (readonly [Work, Subject])[]]> {
  const on = new Map<string, (readonly [Work, Subject])[]>();
  for (const work of made.garment.works) {
    const subject = made.subjects.get(work.id);
    if (!subject) continue;
    const pieces = work.kind === 'buttonholes' ? [work.on, ...work.through] : [work.on];
    for (const piece of pieces) {
      const list = on.get(piece) ?? [];
      list.push([work, subject]);
      on.set(piece, list);
    }
  }
  for (const [piece, list] of on) {
    yield [piece, list.toSorted(([a], [b]) => layerOn(made, piece, a) - layerOn(made, piece, b))];
  }
}

/** Nothing is worked or joined before it is cut and its lines are marked. */
export const cutFirst: Rule = {
  id: 'cut and mark lines first',
  source: published('Fitting Dresses', '1946', 'US Dept of Agriculture, part 2'),
  *find(made) {
    const trials = new Set(made.garment.gates.flatMap(({ id, trial }) => (trial ? [id] : [])));
    for (const subject of made.subjects.values()) {
      if (subject.id.startsWith('cut-') && subject.kind === 'piece') continue;
      if (subject.kind === 'gate' && trials.has(subject.id)) continue;
      for (const cloth of new Set(subject.pieces.map((piece) => made.cloth(piece).id))) {
        const cutting = made.subjects.get(cuttingOf(cloth));
        if (!cutting) continue;
        yield {
          before: cutting.last,
          after: subject.first,
          because: `the ${cutting.name} pieces are cut and their seam lines marked before anything is done to them`,
        };
      }
    }
  },
};

/** A trial in cheap cloth comes before the good cloth is cut. */
export const tryCheapFirst: Rule = {
  id: 'try it in cheap cloth first',
  source: published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Testing patterns'),
  *find(made) {
    for (const gate of made.garment.gates) {
      const trial = gate.trial && made.subjects.get(gate.id);
      if (!trial) continue;
      for (const cloth of new Set(trial.pieces.map((piece) => made.cloth(piece).id))) {
        const cutting = made.subjects.get(cuttingOf(cloth));
        if (!cutting) continue;
        yield {
          before: trial.last,
          after: cutting.first,
          because: `${lower(gate.name)} shows what does not fit before the ${cutting.name} is cut`,
        };
      }
    }
  },
};

/** Work on a piece comes before the first join of that piece, unless its kind is done later. */
export const prepareFlat: Rule = {
  id: 'prepare flat',
  source: published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Making plain sleeve'),
  *find(made) {
    for (const work of made.garment.works) {
      const subject = made.subjects.get(work.id);
      if (!subject || kindOf(work).when !== 'flat') continue;
      for (const join of made.garment.joins) {
        const held = made.subjects.get(join.id);
        if (!held || !piecesOf(join).includes(work.on)) continue;
        yield {
          before: subject.last,
          after: held.first,
          because: `${lower(work.name)} is easiest while the ${nameOf(made, work.on)} is a flat piece, before ${held.name}`,
        };
      }
    }
  },
};

const nameOf = (made: Made, piece: string): string => lower(made.looked.pieces.get(piece)?.name ?? piece);

/** On one piece the lower layer is done before what lies on it: tucks, then stiffening, then trims and beads. */
export const lowestLayerFirst: Rule = {
  id: 'lowest layer first',
  source: practice,
  *find(made) {
    for (const [piece, works] of worksByPiece(made)) {
      for (const [below, under] of works) {
        if (kindOf(below).when === 'free') continue;
        const layer = layerOn(made, piece, below);
        const next = works.find(
          ([above]) => kindOf(above).when !== 'free' && layerOn(made, piece, above) > layer,
        );
        const ceiling = next ? layerOn(made, piece, next[0]) : Number.POSITIVE_INFINITY;
        for (const [above, over] of works) {
          const height = layerOn(made, piece, above);
          // What the maker may do when she likes waits for what lies under it, and nothing waits for it.
          if (height <= layer || height > ceiling) continue;
          yield {
            before: under.last,
            after: over.first,
            because: because(below, above, nameOf(made, piece)),
          };
        }
      }
    }
  },
};

function because(below: Work, above: Work, piece: string): string {
  if (below.kind === 'interfacing')
    return `the ${piece} is stiffened before ${lower(above.name)} is worked on it`;
  if (kindOf(below).takesUp) {
    return `${lower(below.name)} takes up cloth of the ${piece}, so what is placed on it comes after: ${lower(above.name)}`;
  }
  return `${lower(above.name)} lies over ${lower(below.name)} on the ${piece}`;
}

/** A piece that is cut after its work is cut to the outline when nothing takes up cloth any more. */
export const tuckThenCut: Rule = {
  id: 'tuck, then cut',
  source: published('Textiles and Clothing', '1907', 'Kate Heintz Watson, Tucked waist'),
  *find(made) {
    for (const piece of made.garment.pieces) {
      const outline = made.subjects.get(outlineOf(piece.id));
      if (!outline) continue;
      const name = lower(piece.name);
      for (const work of made.garment.works) {
        const subject = made.subjects.get(work.id);
        if (!subject?.pieces.includes(piece.id)) continue;
        yield kindOf(work).takesUp
          ? {
              before: subject.last,
              after: outline.first,
              because: `${lower(work.name)} uses up width, so the ${name} is cut to its outline after it`,
            }
          : {
              before: outline.last,
              after: subject.first,
              because: `the ${name} has its outline before ${lower(work.name)}`,
            };
      }
      for (const join of made.garment.joins) {
        const subject = made.subjects.get(join.id);
        if (!subject || !piecesOf(join).includes(piece.id)) continue;
        yield {
          before: outline.last,
          after: subject.first,
          because: `the ${name} has its outline before it is sewn to anything`,
        };
      }
    }
  },
};

/** What was fused cools flat, a hem on the bias hangs, and what is wet dries before it is handled. */
export const letItRest: Rule = {
  id: 'let it rest',
  source: memory,
  *find(made): Iterable<Found> {
    for (const work of made.garment.works) {
      const subject = made.subjects.get(work.id);
      if (!subject) continue;
      if (work.kind === 'interfacing' && work.fuse && work.fuse.coolMinutes > 0) {
        for (const next of made.subjects.values()) {
          if (next.id === work.id || !next.pieces.includes(work.on) || next.id.startsWith('cut-')) continue;
          if (next.id === outlineOf(work.on) || isLower(made, next, work)) continue;
          yield {
            before: subject.last,
            after: next.first,
            wait: work.fuse.coolMinutes * 60,
            because: `the fused ${nameOf(made, work.on)} cools flat before it is handled; the leaflet of the material comes first`,
          };
        }
      }
      if (work.kind === 'hem' && work.hang > 0) {
        for (const join of made.garment.joins) {
          const held = made.subjects.get(join.id);
          if (!held || !piecesOf(join).some((piece) => subject.pieces.includes(piece))) continue;
          yield {
            before: held.last,
            after: subject.first,
            wait: work.hang * 3600,
            because: `it hangs ${work.hang} hours before ${lower(work.name)} is levelled, because cloth on the bias drops`,
          };
        }
      }
      if (work.kind === 'own') {
        const rest = work.steps.at(-1)?.rest ?? 0;
        if (rest === 0) continue;
        for (const join of made.garment.joins) {
          const held = made.subjects.get(join.id);
          if (!held || !piecesOf(join).includes(work.on) || kindOf(work).when !== 'flat') continue;
          yield {
            before: subject.last,
            after: held.first,
            wait: rest * 60,
            because: `${lower(work.name)} has to rest first`,
          };
        }
      }
    }
  },
};

const isLower = (made: Made, next: Subject, work: Work): boolean => {
  const other = made.garment.works.find((candidate) => candidate.id === next.id);
  return other !== undefined && kindOf(other).layer <= kindOf(work).layer;
};

/** What is done late comes after every join that touches its pieces. */
export const lateLast: Rule = {
  id: 'late work last',
  source: practice,
  *find(made) {
    for (const work of made.garment.works) {
      const subject = made.subjects.get(work.id);
      if (!subject || kindOf(work).when !== 'late') continue;
      for (const join of made.garment.joins) {
        const held = made.subjects.get(join.id);
        if (!held || !piecesOf(join).some((piece) => subject.pieces.includes(piece))) continue;
        yield {
          before: held.last,
          after: subject.first,
          because: `${lower(work.name)} is done when ${held.name} is finished`,
        };
      }
    }
  },
};
