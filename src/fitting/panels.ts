import type { Chain, Garment, Join, Piece } from '../outfit/outfit.ts';
import type { Role } from './entry.ts';

/** Edges that lie against each other in a seam, two by two where both sides have as many. */
export function facing(join: Join): readonly (readonly [Chain[number], Chain[number]])[] {
  const { this: one, to } = join;
  const even = one.length === to.length;
  return one.flatMap((a, i) => to.flatMap((b, k) => (!even || i === k ? [[a, b] as const] : [])));
}

/** Names of edges in their words; there are few of them, and they are asked for again and again. */
const split = new Map<string, readonly string[]>();

/** Is that the name of an edge, alone or with words before or after it: `front-inseam`, `cap-back`? */
export function isCalled(edge: string, ...names: readonly string[]): boolean {
  let words = split.get(edge);
  if (!words) {
    words = edge.split('-');
    split.set(edge, words);
  }
  for (const name of names) if (words.includes(name)) return true;
  return false;
}

/** Has the piece an edge of such a name? */
export const hasEdge = (piece: Piece, ...names: readonly string[]): boolean =>
  piece.outline.edges.some(({ name }) => isCalled(name, ...names));

/** The words of a piece: of its id and of its name, in lower case. */
export const wordsOf = (piece: Pick<Piece, 'id' | 'name'>): string =>
  `${piece.id} ${piece.name}`.toLowerCase().replace(/[^\p{L}]+/gu, ' ');

/** How far the neck drops from the shoulder to the centre. */
function neckDrop(piece: Piece): number {
  let [at, drop] = [piece.outline.start.y as number, 0];
  for (const { name, segments } of piece.outline.edges) {
    const to = segments.at(-1)?.to.y ?? at;
    if (isCalled(name, 'neck')) drop += Math.abs(to - at);
    at = to;
  }
  return drop;
}

const side = (piece: Piece): 'front' | 'back' | undefined => {
  const words = wordsOf(piece);
  const [front, back] = [/\bfront\b/.test(words), /\b(back|yoke)\b/.test(words)];
  return front === back ? undefined : front ? 'front' : 'back';
};

/** Fronts and backs that lie at the centre. One that says neither is the front where it opens, or where its neck is lower. */
function centres(body: readonly Piece[]): ReadonlyMap<string, 'front' | 'back'> {
  const found = new Map<string, 'front' | 'back'>();
  const mid = body.filter((piece) => hasEdge(piece, 'fold', 'opening', 'lap', 'centre', 'center'));
  const unsaid = mid.filter((piece) => {
    const says = side(piece);
    if (says) found.set(piece.id, says);
    return says === undefined;
  });
  const drops = (piece: Piece): number => neckDrop(piece) + (hasEdge(piece, 'opening', 'lap') ? 1e12 : 0);
  for (const piece of [...unsaid].sort((a, b) => drops(b) - drops(a))) {
    found.set(piece.id, [...found.values()].includes('front') ? 'back' : 'front');
  }
  return found;
}

/** Panels of a body, counted from the centre over the seams that stand upright between them. */
export function panelRoles(garment: Garment, body: readonly Piece[]): ReadonlyMap<string, Role> {
  const roles = new Map<string, Role>();
  const ids = new Set(body.map((piece) => piece.id));
  const at = centres(body);
  for (const [piece, where] of at) roles.set(piece, `centre-${where}`);
  const beside = garment.joins
    .flatMap(facing)
    .filter(([a, b]) => ids.has(a.piece) && ids.has(b.piece) && a.piece !== b.piece)
    .filter(([a, b]) => !isCalled(a.edge, 'shoulder', 'side', 'neck', 'hem', 'waist') || a.edge !== b.edge);
  let reached = new Map(at);
  while (reached.size > 0) {
    const next = new Map<string, 'front' | 'back'>();
    for (const [a, b] of beside) {
      for (const [from, to] of [
        [a, b],
        [b, a],
      ] as const) {
        const where = reached.get(from.piece);
        if (where && !roles.has(to.piece)) next.set(to.piece, where);
      }
    }
    for (const [piece, where] of next) roles.set(piece, `side-${where}`);
    reached = next;
  }
  for (const piece of body) {
    const says = side(piece);
    if (roles.has(piece.id) || !says) continue;
    const out = /\bside\b/.test(wordsOf(piece)) || (at.size > 0 && !hasEdge(piece, 'neck'));
    roles.set(piece.id, `${out ? 'side' : 'centre'}-${says}`);
  }
  return roles;
}
