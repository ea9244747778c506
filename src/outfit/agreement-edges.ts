import { longer } from '../length/length.ts';
import { crossings, edgeName, type Looked, mightLink, spell } from './chains.ts';
import type { Chain, EdgeRef, Join, Work } from './outfit.ts';
import { nearest } from './suggest.ts';
import { called, lacks, type Names, type Path, type Unsure } from './unsure.ts';

/** Says what is wrong at a place and what would be right; with the places, besides that one, that it rests on. */
export type Say = (
  path: Path,
  wrong: string,
  cure: string | (() => string),
  ...rests: readonly Path[]
) => void;

/** What is asked of the works and joins of a garment. */
export interface Asking {
  readonly looked: Looked;
  readonly unsure: Unsure;
  readonly say: Say;
  /** The way to the garment. */
  readonly path: Path;
  readonly pieces: Names;
  readonly markers: Names;
  /** Pieces of which not every edge is known. */
  readonly spoilt: ReadonlySet<string>;
}

/** The nearest known name as a question, or else what to do. */
export const didYouMean =
  (wanted: string, known: Iterable<string>, otherwise: string): (() => string) =>
  () => {
    const near = nearest(wanted, known);
    return near === undefined ? otherwise : `did you mean \`${near}\`?`;
  };

function checkPiece(asking: Asking, who: string, piece: string, path: Path): boolean {
  const { looked, unsure, pieces, say } = asking;
  if (looked.pieces.has(piece)) return true;
  if (lacks(pieces, piece, unsure)) {
    say(
      path,
      `${who}: piece \`${piece}\` does not exist`,
      didYouMean(piece, pieces.all, 'name one of the pieces'),
    );
  }
  return false;
}

/** True where it is not known whether there is such an edge. */
const unknowable = ({ looked, unsure, pieces, spoilt }: Asking, { piece, edge }: EdgeRef): boolean =>
  unsure.invented(piece) ||
  unsure.invented(edge) ||
  spoilt.has(piece) ||
  (pieces.open && !looked.pieces.has(piece));

function checkEdge(asking: Asking, who: string, ref: EdgeRef, path: Path): boolean {
  const { looked, unsure, say } = asking;
  const piece = looked.pieces.get(ref.piece);
  if (!piece || !looked.beside.has(edgeName(ref))) {
    if (unknowable(asking, ref)) return false;
    say(
      path,
      `${who}: edge \`${spell(ref)}\` does not exist`,
      didYouMean(
        edgeName(ref),
        [...looked.beside.keys()].filter((name) => !unsure.invented(name)),
        piece
          ? `${piece.name} has the edges ${piece.outline.edges.map((e) => `\`${e.name}\``).join(', ')}`
          : 'name one of the pieces and its edge',
      ),
    );
    return false;
  }
  if (ref.other && piece.cut === 'one') {
    const i = looked.garment.pieces.indexOf(piece);
    say(
      path,
      `${who}: \`${spell(ref)}\` asks for the mate of ${called(piece, i, unsure)}, which is a single piece`,
      'leave `other:` out, or cut the piece as a pair',
      [...asking.path, 'pieces', i, 'cut'],
    );
    return false;
  }
  return true;
}

function checkChain(
  asking: Asking,
  who: string,
  chain: Chain,
  ring: boolean,
  path: Path,
  carrying?: string,
): void {
  const { looked, unsure, say } = asking;
  const known = chain.map((ref, i) => checkEdge(asking, who, ref, [...path, i]));
  if (known.includes(false)) return;
  for (const crossing of crossings(looked, chain, ring, carrying)) {
    const { from, to, over } = crossing;
    if (over.length > 0) continue;
    // While a join names an edge that does not exist, a run over it seems broken too: say only what is wrong first.
    if (mightLink(looked, crossing, ring, carrying)) continue;
    // An edge and its own mirror image are one run over a fold, and an edge without its name may be a fold.
    const folded = from !== to && edgeName(from) === edgeName(to);
    if (folded && looked.beside.get(edgeName(from))?.some(unsure.invented)) continue;
    const where =
      from === to ? `the two ends of \`${spell(from)}\`` : `\`${spell(from)}\` and \`${spell(to)}\``;
    say(
      path,
      `${who}: ${where} do not lie end to end, because no join sews them together there`,
      'add that join, or take one of the two out of this run',
    );
  }
}

/** What a work names. */
export function checkWork(asking: Asking, work: Work, i: number): void {
  const { unsure, markers, say } = asking;
  const path = [...asking.path, 'works', i];
  const who = `work \`${called(work, i, unsure)}\``;
  const there = checkPiece(asking, who, work.on, [...path, 'on']);
  const edge = (name: string, key: string) =>
    there && checkEdge(asking, who, { piece: work.on, edge: name, other: false }, [...path, key]);
  if ('marker' in work && lacks(markers, work.marker, unsure)) {
    say(
      [...path, 'marker'],
      `${who}: marker \`${work.marker}\` does not exist`,
      didYouMean(work.marker, markers.all, 'add it to the markers'),
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
        checkPiece(asking, who, piece, [...path, 'through', i]);
      });
      if (work.count > 1 && !longer(work.last, work.first)) {
        say(
          [...path, 'last'],
          `${who}: the last hole is not beyond the first`,
          'measure both from the same place, the first one nearer',
          [...path, 'count'],
          [...path, 'first'],
        );
      }
      break;
    case 'own':
      work.with.forEach((piece, i) => {
        checkPiece(asking, who, piece, [...path, 'with', i]);
      });
      work.finishes?.forEach((ref, i) => {
        checkEdge(asking, who, ref, [...path, 'finishes', i]);
      });
      break;
    case 'hem':
    case 'casing':
      checkChain(asking, who, work.along, work.ring, [...path, 'along']);
      break;
    default:
      break;
  }
}

/** What a join names. */
export function checkJoin(asking: Asking, join: Join, i: number): void {
  const { say } = asking;
  const path = [...asking.path, 'joins', i];
  const who = `join \`${called(join, i, asking.unsure)}\``;
  checkChain(asking, who, join.this, join.ring, [...path, 'this'], join.id);
  checkChain(asking, who, join.to, join.ring, [...path, 'to'], join.id);
  join.catches.forEach((caught, c) => {
    const at = [...path, 'catches', c];
    checkEdge(asking, who, caught.trim, [...at, 'trim']);
    if (!longer(join.depth, caught.depth)) {
      say(
        [...at, 'depth'],
        `${who}: the basting of \`${spell(caught.trim)}\` is as deep as the seam or deeper, so it would show`,
        'baste less deep, or sew the seam further in',
        [...path, 'depth'],
      );
    }
  });
  if (join.cover) checkEdge(asking, who, join.cover, [...path, 'cover']);
  if (join.seam === 'covered' && !join.cover) {
    say(path, `${who} is covered, but nothing covers it`, 'name the edge that is sewn over it in `cover`');
  }
}
