import { type Asking, checkJoin, checkWork, didYouMean, type Say } from './agreement-edges.ts';
import { FOLD, lookUp } from './chains.ts';
import type { Garment, Outfit, Piece } from './outfit.ts';
import { type Problem, pointer } from './problem.ts';
import { called, lacks, namesOf, type Path, SURE, type Unsure } from './unsure.ts';

/** More than this many at once help nobody, and looking for what was meant takes time. */
const MOST = 100;

/**
 * What the names and figures of a well-formed outfit must agree about: every name exists and is used once, chains lie
 * end to end, a caught trim is basted less deep than its seam, a folded piece has its fold. All problems are given
 * (the first hundred of very many), in the order of the file. Of a description that was filled in to be looked at,
 * what hangs on the filling is left out.
 */
export function disagreements(outfit: Outfit, unsure: Unsure = SURE): readonly Problem[] {
  const found: Problem[] = [];
  const say: Say = (path, wrong, cure, ...rests) => {
    if (found.length >= MOST || unsure.inside(path) || rests.some(unsure.touches)) return;
    found.push({ at: pointer(path), wrong, cure: typeof cure === 'string' ? cure : cure() });
  };

  unique(outfit.cloths, 'cloth', ['cloths'], say);
  unique(outfit.markers, 'marker', ['markers'], say);
  unique(outfit.wearers, 'wearer', ['wearers'], say);
  unique(outfit.garments, 'garment', ['garments'], say);
  outfit.garments.forEach((garment, g) => {
    checkGarment(outfit, garment, ['garments', g], unsure, say);
  });
  return found;
}

function unique(things: readonly { readonly id: string }[], what: string, path: Path, say: Say): void {
  const seen = new Set<string>();
  things.forEach((thing, i) => {
    if (seen.has(thing.id)) {
      say([...path, i, 'id'], `two ${what}s are called \`${thing.id}\``, 'give one of them another id');
    }
    seen.add(thing.id);
  });
}

function checkGarment(outfit: Outfit, garment: Garment, path: Path, unsure: Unsure, say: Say): void {
  const looked = lookUp(garment);
  const own = called(garment, Number(path.at(-1)), unsure);
  const taken = new Set<string>();
  for (const [list, what] of [
    ['pieces', 'piece'],
    ['works', 'work'],
    ['joins', 'join'],
    ['gates', 'gate'],
  ] as const) {
    garment[list].forEach((thing, i) => {
      if (taken.has(thing.id)) {
        say(
          [...path, list, i, 'id'],
          `${what} \`${thing.id}\`: something in ${own} already has this id`,
          'give it another',
        );
      }
      taken.add(thing.id);
    });
  }

  const ids = (things: readonly { readonly id: string }[]) =>
    namesOf(
      things.map(({ id }) => id),
      unsure,
    );
  const wearers = ids(outfit.wearers);
  if (garment.wearer !== undefined && lacks(wearers, garment.wearer, unsure)) {
    say(
      [...path, 'wearer'],
      `${own}: wearer \`${garment.wearer}\` does not exist`,
      didYouMean(garment.wearer, wearers.all, 'add them to the wearers, or leave `wearer` out'),
    );
  }
  unique(garment.units, 'unit', [...path, 'units'], say);

  const cloths = ids(outfit.cloths);
  garment.pieces.forEach((piece, i) => {
    const at = [...path, 'pieces', i];
    const who = `piece \`${called(piece, i, unsure)}\``;
    if (lacks(cloths, piece.cloth, unsure)) {
      say(
        [...at, 'cloth'],
        `${who}: cloth \`${piece.cloth}\` does not exist`,
        didYouMean(piece.cloth, cloths.all, 'add it to the cloths'),
      );
    }
    checkOutline(piece, who, at, unsure, say);
  });

  const asking: Asking = {
    looked,
    unsure,
    say,
    path,
    pieces: ids(garment.pieces),
    markers: ids(outfit.markers),
    spoilt: new Set(
      garment.pieces
        .filter(({ outline }) => outline.edges.some(({ name }) => unsure.invented(name)))
        .map(({ id }) => id),
    ),
  };
  garment.works.forEach((work, i) => {
    checkWork(asking, work, i);
  });
  garment.joins.forEach((join, i) => {
    checkJoin(asking, join, i);
  });
  const known = { tack: ids(garment.joins), after: ids([...garment.joins, ...garment.works]) };
  garment.gates.forEach((gate, i) => {
    const at = [...path, 'gates', i];
    const who = `try-on \`${called(gate, i, unsure)}\``;
    for (const list of ['after', 'tack'] as const) {
      const what = list === 'after' ? 'join or work' : 'join';
      gate[list].forEach((id, j) => {
        if (!lacks(known[list], id, unsure)) return;
        say(
          [...at, list, j],
          `${who}: ${what} \`${id}\` does not exist`,
          didYouMean(id, known[list].all, `name a ${what} of this garment`),
        );
      });
    }
    if (gate.after.length === 0 && gate.tack.length === 0) {
      say(at, `${who}: nothing is put together for it`, 'name joins in `after` or `tack`');
    }
    if (gate.trial && gate.after.length > 0) {
      say(
        [...at, 'after'],
        `${who}: a trial in cheap cloth comes before anything is sewn`,
        'name its joins in `tack` alone',
      );
    }
  });
}

function checkOutline(piece: Piece, who: string, path: Path, unsure: Unsure, say: Say): void {
  const { start, edges } = piece.outline;
  const at = [...path, 'outline'];
  const named = new Set<string>();
  edges.forEach(({ name }, e) => {
    if (named.has(name)) {
      say(
        [...at, 'edges', e, 'name'],
        `${who}: two edges are called \`${name}\``,
        'give one of them another name',
      );
    }
    named.add(name);
  });
  const hasFold = edges.some(({ name }) => name === FOLD || unsure.invented(name));
  if (piece.cut === 'fold' && !hasFold) {
    say(
      at,
      `${who} is cut on the fold but has no edge called \`${FOLD}\``,
      `name the edge on the fold \`${FOLD}\``,
    );
  }
  const last = edges.at(-1)?.segments.at(-1)?.to;
  if (last && (last.x !== start.x || last.y !== start.y)) {
    say(
      [...at, 'edges'],
      `${who}: the outline does not close`,
      'let the last edge end where the first one starts',
      [...at, 'unit'],
      [...at, 'start'],
      [...at, 'edges', edges.length - 1, 'to'],
    );
  }
}
