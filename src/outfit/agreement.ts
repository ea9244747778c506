import { longer } from '../length/length.ts';
import { crossings, edgeName, FOLD, type Looked, lookUp, spell } from './chains.ts';
import type { Chain, EdgeRef, Garment, Join, Outfit, Work } from './outfit.ts';
import { type Problem, pointer } from './problem.ts';
import { nearest } from './suggest.ts';

type Path = readonly (string | number)[];

/** More than this many at once help nobody, and looking for what was meant takes time. */
const MOST = 100;

/**
 * What the names and figures of a well-formed outfit must agree about: every name exists and is used once, chains lie
 * end to end, a caught trim is basted less deep than its seam, a folded piece has its fold. All problems are given
 * (the first hundred of very many), in the order of the file.
 */
export function disagreements(outfit: Outfit): readonly Problem[] {
  const found: Problem[] = [];
  const say: Say = (path, wrong, cure) => {
    if (found.length >= MOST) return;
    found.push({ at: pointer(path), wrong, cure: typeof cure === 'string' ? cure : cure() });
  };

  unique(outfit.cloths, 'cloth', ['cloths'], say);
  unique(outfit.markers, 'marker', ['markers'], say);
  unique(outfit.wearers, 'wearer', ['wearers'], say);
  unique(outfit.garments, 'garment', ['garments'], say);
  outfit.garments.forEach((garment, g) => {
    checkGarment(outfit, garment, ['garments', g], say);
  });
  return found;
}

type Say = (path: Path, wrong: string, cure: string | (() => string)) => void;

const didYouMean =
  (wanted: string, known: Iterable<string>, otherwise: string): (() => string) =>
  () => {
    const near = nearest(wanted, known);
    return near === undefined ? otherwise : `did you mean \`${near}\`?`;
  };

function unique(things: readonly { readonly id: string }[], what: string, path: Path, say: Say): void {
  const seen = new Set<string>();
  things.forEach((thing, i) => {
    if (seen.has(thing.id)) {
      say([...path, i, 'id'], `two ${what}s are called \`${thing.id}\``, 'give one of them another id');
    }
    seen.add(thing.id);
  });
}

function checkGarment(outfit: Outfit, garment: Garment, path: Path, say: Say): void {
  const looked = lookUp(garment);
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
          `${what} \`${thing.id}\`: something in ${garment.name} already has this id`,
          'give it another',
        );
      }
      taken.add(thing.id);
    });
  }

  const wearers = outfit.wearers.map((wearer) => wearer.id);
  if (garment.wearer !== undefined && !wearers.includes(garment.wearer)) {
    say(
      [...path, 'wearer'],
      `${garment.name}: wearer \`${garment.wearer}\` does not exist`,
      didYouMean(garment.wearer, wearers, 'add them to the wearers, or leave `wearer` out'),
    );
  }
  unique(garment.units, 'unit', [...path, 'units'], say);

  const cloths = new Set(outfit.cloths.map((cloth) => cloth.id));
  garment.pieces.forEach((piece, i) => {
    const at = [...path, 'pieces', i];
    if (!cloths.has(piece.cloth)) {
      say(
        [...at, 'cloth'],
        `piece \`${piece.name}\`: cloth \`${piece.cloth}\` does not exist`,
        didYouMean(piece.cloth, cloths, 'add it to the cloths'),
      );
    }
    const named = new Set<string>();
    piece.outline.edges.forEach((edge, e) => {
      if (named.has(edge.name)) {
        say(
          [...at, 'outline', 'edges', e, 'name'],
          `piece \`${piece.name}\`: two edges are called \`${edge.name}\``,
          'give one of them another name',
        );
      }
      named.add(edge.name);
    });
    const hasFold = piece.outline.edges.some((edge) => edge.name === FOLD);
    if (piece.cut === 'fold' && !hasFold) {
      say(
        [...at, 'outline'],
        `piece \`${piece.name}\` is cut on the fold but has no edge called \`${FOLD}\``,
        `name the edge on the fold \`${FOLD}\``,
      );
    }
    const last = piece.outline.edges.at(-1)?.segments.at(-1)?.to;
    if (last && (last.x !== piece.outline.start.x || last.y !== piece.outline.start.y)) {
      say(
        [...at, 'outline', 'edges'],
        `piece \`${piece.name}\`: the outline does not close`,
        'let the last edge end where the first one starts',
      );
    }
  });

  garment.works.forEach((work, i) => {
    checkWork(outfit, looked, work, [...path, 'works', i], say);
  });
  garment.joins.forEach((join, i) => {
    checkJoin(looked, join, [...path, 'joins', i], say);
  });
  garment.gates.forEach((gate, i) => {
    for (const list of ['after', 'tack'] as const) {
      const works = list === 'after' ? garment.works.map((work) => work.id) : [];
      const known = [...looked.joins.keys(), ...works];
      const what = list === 'after' ? 'join or work' : 'join';
      gate[list].forEach((id, j) => {
        if (!known.includes(id)) {
          say(
            [...path, 'gates', i, list, j],
            `try-on \`${gate.name}\`: ${what} \`${id}\` does not exist`,
            didYouMean(id, known, `name a ${what} of this garment`),
          );
        }
      });
    }
    if (gate.after.length === 0 && gate.tack.length === 0) {
      say(
        [...path, 'gates', i],
        `try-on \`${gate.name}\`: nothing is put together for it`,
        'name joins in `after` or `tack`',
      );
    }
  });
}

function checkPiece(looked: Looked, who: string, piece: string, path: Path, say: Say): boolean {
  if (looked.pieces.has(piece)) return true;
  say(
    path,
    `${who}: piece \`${piece}\` does not exist`,
    didYouMean(piece, looked.pieces.keys(), 'name one of the pieces'),
  );
  return false;
}

function checkEdge(looked: Looked, who: string, ref: EdgeRef, path: Path, say: Say): boolean {
  const piece = looked.pieces.get(ref.piece);
  if (!piece || !looked.beside.has(edgeName(ref))) {
    say(
      path,
      `${who}: edge \`${spell(ref)}\` does not exist`,
      didYouMean(
        edgeName(ref),
        looked.beside.keys(),
        piece
          ? `${piece.name} has the edges ${piece.outline.edges.map((e) => `\`${e.name}\``).join(', ')}`
          : 'name one of the pieces and its edge',
      ),
    );
    return false;
  }
  if (ref.other && piece.cut === 'one') {
    say(
      path,
      `${who}: \`${spell(ref)}\` asks for the mate of ${piece.name}, which is a single piece`,
      'leave `other:` out, or cut the piece as a pair',
    );
    return false;
  }
  return true;
}

/** While a join names an edge that does not exist, runs over that join seem broken too: say only what is wrong first. */
const spelledRight = (looked: Looked): boolean =>
  looked.garment.joins.every((join) =>
    [...join.this, ...join.to].every((ref) => looked.beside.has(edgeName(ref))),
  );

function checkChain(
  looked: Looked,
  who: string,
  chain: Chain,
  ring: boolean,
  path: Path,
  say: Say,
  carrying?: string,
): void {
  const known = chain.map((ref, i) => checkEdge(looked, who, ref, [...path, i], say));
  if (known.includes(false) || !spelledRight(looked)) return;
  for (const { from, to, over } of crossings(looked, chain, ring, carrying)) {
    if (over.length > 0) continue;
    const where =
      from === to ? `the two ends of \`${spell(from)}\`` : `\`${spell(from)}\` and \`${spell(to)}\``;
    say(
      path,
      `${who}: ${where} do not lie end to end, because no join sews them together there`,
      'add that join, or take one of the two out of this run',
    );
  }
}

function checkWork(outfit: Outfit, looked: Looked, work: Work, path: Path, say: Say): void {
  const who = `work \`${work.name}\``;
  if (!checkPiece(looked, who, work.on, [...path, 'on'], say)) return;
  const edge = (name: string, key: string) =>
    checkEdge(looked, who, { piece: work.on, edge: name, other: false }, [...path, key], say);
  if ('marker' in work && !outfit.markers.some((marker) => marker.id === work.marker)) {
    say(
      [...path, 'marker'],
      `${who}: marker \`${work.marker}\` does not exist`,
      didYouMean(
        work.marker,
        outfit.markers.map((m) => m.id),
        'add it to the markers',
      ),
    );
  }
  switch (work.kind) {
    case 'tucks':
    case 'crossed-tucks':
      edge(work.from, 'from');
      break;
    case 'folded-band':
    case 'applied-tape':
    case 'gather':
    case 'bind-edge':
    case 'press-edge':
    case 'stay-stitch':
      edge(work.edge, 'edge');
      break;
    case 'buttonholes':
      edge(work.along, 'along');
      work.through.forEach((piece, i) => {
        checkPiece(looked, who, piece, [...path, 'through', i], say);
      });
      if (work.count > 1 && !longer(work.last, work.first)) {
        say(
          [...path, 'last'],
          `${who}: the last hole is not beyond the first`,
          'measure both from the same place, the first one nearer',
        );
      }
      break;
    case 'own':
      work.with.forEach((piece, i) => {
        checkPiece(looked, who, piece, [...path, 'with', i], say);
      });
      work.finishes?.forEach((ref, i) => {
        checkEdge(looked, who, ref, [...path, 'finishes', i], say);
      });
      break;
    case 'hem':
    case 'casing':
      checkChain(looked, who, work.along, work.ring, [...path, 'along'], say);
      break;
    default:
      break;
  }
}

function checkJoin(looked: Looked, join: Join, path: Path, say: Say): void {
  const who = `join \`${join.name}\``;
  checkChain(looked, who, join.this, join.ring, [...path, 'this'], say, join.id);
  checkChain(looked, who, join.to, join.ring, [...path, 'to'], say, join.id);
  join.catches.forEach((caught, i) => {
    const at = [...path, 'catches', i];
    checkEdge(looked, who, caught.trim, [...at, 'trim'], say);
    if (!longer(join.depth, caught.depth)) {
      say(
        [...at, 'depth'],
        `${who}: the basting of \`${spell(caught.trim)}\` is as deep as the seam or deeper, so it would show`,
        'baste less deep, or sew the seam further in',
      );
    }
  });
  if (join.cover) checkEdge(looked, who, join.cover, [...path, 'cover'], say);
  if (join.seam === 'covered' && !join.cover) {
    say(path, `${who} is covered, but nothing covers it`, 'name the edge that is sewn over it in `cover`');
  }
}
