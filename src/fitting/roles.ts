import { edgeName } from '../outfit/chains.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import type { Role } from './entry.ts';
import { hasEdge, isCalled, panelRoles, wordsOf } from './panels.ts';

/** What the pieces of a ready-made unit are for; `body` is counted from the centre. A unit not named brings nothing that is fitted. */
const OF_UNIT: Readonly<Record<string, Role | 'body'>> = {
  'plain-front': 'body',
  'plain-back': 'body',
  'princess-front': 'body',
  'princess-back': 'body',
  'panelled-bodice': 'body',
  'inset-frill': 'frill',
  'straight-frill': 'frill',
  'bias-frill': 'frill',
  'circular-frill': 'frill',
  'ribbon-frill': 'frill',
  'flat-collar': 'collar',
  'standing-band': 'collar',
  'stand-and-collar': 'collar',
  'plain-sleeve': 'sleeve',
  'puffed-sleeve': 'sleeve',
  'lantern-sleeve': 'sleeve',
  'buttoned-cuff': 'cuff',
  'sleeve-head-stretch': 'sleeve-head',
  'stretch-leg': 'leg',
  'gathered-skirt': 'skirt',
  'circle-skirt': 'skirt',
  waistband: 'waistband',
  'bias-bound-neck': 'other',
  'neckcloth-bow': 'other',
  'loop-bow': 'other',
  'sleeve-support': 'other',
  'applique-on-mesh': 'other',
  facing: 'other',
  lining: 'other',
};

/** Words that tell what a piece is for; the first that is found counts. */
const BY_WORD: readonly (readonly [RegExp, Role])[] = [
  [
    /\b(lining|facing|interlining|interfacing|motif|pocket|flap|bow|knot|loop|float|binding|gusset|neckcloth|support)s?\b/,
    'other',
  ],
  [/\b(frill|ruffle|flounce)s?\b/, 'frill'],
  [/\bcuffs?\b/, 'cuff'],
  [/\b(collar|neck ?band|stand|standing band)\b/, 'collar'],
  [/\bwaist ?band\b/, 'waistband'],
  [/\b(arm|upper|sleeve) ?band\b/, 'arm-band'],
  [/\bsleeve heads?\b/, 'sleeve-head'],
  [/\bsleeves?\b/, 'sleeve'],
  [/\b(lower legs?|shins?)\b/, 'lower-leg'],
  [/\b(legs?|thighs?|hose|trousers?|breeches)\b/, 'leg'],
  [/\bskirts?\b/, 'skirt'],
];

/** What its edges say a piece is for, where they are called as is usual. */
function byEdges(piece: Piece): Role | 'body' | undefined {
  if (hasEdge(piece, 'cap')) return 'sleeve';
  if (hasEdge(piece, 'rise')) return 'leg';
  if (hasEdge(piece, 'inseam', 'ankle')) return 'lower-leg';
  if (hasEdge(piece, 'armhole', 'shoulder')) return 'body';
  if (hasEdge(piece, 'waist') && hasEdge(piece, 'hem')) return 'skirt';
  return undefined;
}

/** Pieces with an edge that is sewn to one of these. */
const sewnTo = (garment: Garment, piece: string, ids: ReadonlySet<string>): readonly string[] =>
  garment.joins.flatMap(({ this: one, to }) =>
    [
      [one, to],
      [to, one],
    ].flatMap(([a = [], b = []]) =>
      b.some((ref) => ids.has(ref.piece)) ? a.flatMap((ref) => (ref.piece === piece ? [ref.edge] : [])) : [],
    ),
  );

/** A strip that is gathered or caught along one edge and sewn to nothing along the opposite one. */
function isTrim(garment: Garment, piece: Piece): boolean {
  const caught = garment.joins.some((join) => join.catches.some(({ trim }) => trim.piece === piece.id));
  if (caught) return true;
  const sewn = new Set(
    garment.joins.flatMap(({ this: one, to, cover }) =>
      [...one, ...to, ...(cover ? [cover] : [])].map(edgeName),
    ),
  );
  const { edges } = piece.outline;
  return garment.works.some((work) => {
    if (work.kind !== 'gather' || work.on !== piece.id || edges.length < 4) return false;
    const at = edges.findIndex(({ name }) => name === work.edge);
    const opposite = edges[(at + Math.floor(edges.length / 2)) % edges.length];
    return opposite !== undefined && !sewn.has(`${piece.id}.${opposite.name}`);
  });
}

/** What a ready-made unit's piece is for; the unit is the surest sign. */
function byUnit(garment: Garment, piece: Piece): Role | 'body' | undefined {
  const use = garment.units.find(({ brought }) => brought.includes(piece.id));
  const role = use && OF_UNIT[use.unit];
  const part = use ? piece.id.slice(use.id.length + 1) : '';
  if (role === 'sleeve' && part === 'band') return 'cuff';
  if (role === 'sleeve-head' && part === 'band') return 'arm-band';
  if (role === 'leg' && !hasEdge(piece, 'rise')) return 'lower-leg';
  return role;
}

/** What every piece of a garment is for, from what brought it, its seams, its edges and its name. */
export function rolesOf(garment: Garment): ReadonlyMap<string, Role> {
  const roles = new Map<string, Role>();
  const body: Piece[] = [];
  const trims = new Set(garment.pieces.filter((piece) => isTrim(garment, piece)).map(({ id }) => id));
  for (const piece of garment.pieces) {
    const words = wordsOf(piece);
    const said = BY_WORD.find(([word]) => word.test(words))?.[1];
    const shape = said === 'other' ? undefined : byEdges(piece);
    const role = byUnit(garment, piece) ?? shape ?? said ?? (trims.has(piece.id) ? 'frill' : undefined);
    const bodily =
      role === undefined && (/\b(front|back|yoke|panel)\b/.test(words) || hasEdge(piece, 'panel', 'side'));
    if (role === 'body' || bodily) body.push(piece);
    else roles.set(piece.id, role ?? 'other');
  }
  for (const [piece, role] of panelRoles(garment, body)) roles.set(piece, role);
  const leftOver = body.filter(({ id }) => !roles.has(id));
  for (const { id } of leftOver) roles.set(id, 'other');
  return new Map(garment.pieces.map(({ id }) => [id, bandOrCuff(garment, roles, id)]));
}

/** A band that is called otherwise is a cuff or an arm band by where it is sewn to a sleeve. */
function bandOrCuff(garment: Garment, roles: ReadonlyMap<string, Role>, id: string): Role {
  const role = roles.get(id) ?? 'other';
  const piece = garment.pieces.find((one) => one.id === id);
  if (role !== 'other' || !piece || !/\bband\b/.test(wordsOf(piece))) return role;
  const arm = new Set(
    [...roles].flatMap(([one, its]) => (its === 'sleeve' || its === 'sleeve-head' ? [one] : [])),
  );
  const edges = sewnTo(garment, id, arm);
  if (edges.length === 0) return role;
  return edges.some((edge) => isCalled(edge, 'lower', 'bottom')) ? 'arm-band' : 'cuff';
}
