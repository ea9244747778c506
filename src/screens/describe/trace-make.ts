import { type Length, nm } from '../../length/length.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { FOLD } from '../../outfit/chains.ts';
import { edgeSpelled } from '../../outfit/changing/own-corners.ts';
import type { Garment, Piece } from '../../outfit/outfit.ts';
import { flattenEdge } from '../../shape/flatten.ts';
import { type Box, boundingBox, distance, edgeLength } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';
import { cornersOf, edgesAt, type Place } from '../../traced/corners.ts';
import type { Drawing, DrawnLine } from '../../traced/drawing.ts';
import { traceOutline } from '../../traced/piece-outline.ts';
import { fieldLength } from './filled.ts';
import type { Choices, PieceChoice } from './trace-draft.ts';
import { begun } from './words.ts';

/** The box round a line. */
export const boxOf = ({ start, segments }: Pick<DrawnLine, 'start' | 'segments'>): Box =>
  boundingBox(flattenEdge(start, { name: '', segments }));

/** The middle of a box. */
export const middleOf = ({ left, right, top, bottom }: Box): Point => ({
  x: nm((left + right) / 2),
  y: nm((top + bottom) / 2),
});

const tail = (line: DrawnLine): Length => edgeLength(line.start, { name: '', segments: line.segments });

/** What the first choice for a line is made from. */
export interface Beginning {
  readonly drawing: Drawing;
  readonly garment: Garment;
  readonly number: number;
  readonly unit: ReadingUnit;
  readonly cloth: string;
}

/** A circle of this size on a piece that was written here is a mark of it, in nanometres. */
const MARK = 5_000_000;

/** What stands of a line before anything was said of it; a file written here says it itself. */
export function firstChoice(line: DrawnLine, begin: Beginning): PieceChoice {
  const { known } = line;
  const was = known && begin.garment.pieces.find(({ id }) => id === known.piece);
  const names: Record<string, string> = {};
  const corners: Place[] = [];
  let at = 0;
  for (const { name, count } of known?.edges ?? []) {
    corners.push(at);
    names[at] = name.replaceAll('-', ' ');
    at += count;
  }
  const own = boxOf(line);
  const marks = !known
    ? []
    : begin.drawing.lines.filter((one) => {
        const { left, right, top, bottom } = boxOf(one);
        const within = left > own.left && right < own.right && top > own.top && bottom < own.bottom;
        return one.closed && within && right - left < MARK;
      });
  return {
    name: line.name === '' ? `Piece ${begin.number}` : begun(line.name),
    corners: known ? corners : cornersOf(line),
    names,
    cut: known?.cut ?? 'one',
    grain: String(known?.grain ?? 0),
    marks: marks.map(({ id }) => id),
    cloth: was?.cloth ?? begin.cloth,
    allowance: was ? fieldLength(was.allowance, begin.unit) : begin.unit === 'in' ? '5/8' : '15',
    ...(was ? { put: was.id } : {}),
  };
}

/** Something in the drawing whose true length the maker may know. */
export interface Measurable {
  readonly key: string;
  readonly say: string;
  /** As found. */
  readonly long: Length;
}

/** The choice of a piece as it stands. */
export type ChoiceOf = (line: DrawnLine) => PieceChoice;

/** Two touched points, the width, height and edges of each chosen piece, and open lines. */
export function measurables(drawing: Drawing, choices: Choices, of: ChoiceOf): readonly Measurable[] {
  const [a, b] = choices.points.map(({ x, y }): Point => ({ x: nm(x), y: nm(y) }));
  const found: Measurable[] = [
    { key: 'points', say: 'Between two points that I touch', long: a && b ? distance(a, b) : nm(0) },
  ];
  for (const line of drawing.lines.filter(({ id }) => choices.chosen.includes(id))) {
    const { left, right, top, bottom } = boxOf(line);
    const { name, corners, names } = of(line);
    found.push(
      { key: `wide ${line.id}`, say: `${name}: its width`, long: nm(right - left) },
      { key: `high ${line.id}`, say: `${name}: its height`, long: nm(bottom - top) },
      ...edgesAt(line, corners).map(({ at, start, segments }, i) => ({
        key: `edge ${line.id} ${at}`,
        say: `${name}: ${names[at] || `edge ${i + 1}`}`,
        long: edgeLength(start, { name: '', segments }),
      })),
    );
  }
  for (const line of drawing.lines.filter(({ closed }) => !closed).slice(0, 30))
    found.push({ key: `line ${line.id}`, say: line.name || `line ${line.id.slice(1)}`, long: tail(line) });
  return found.filter(({ key, long }) => key === 'points' || long > 0);
}

/** How much larger than in the drawing things truly are; or what is missing for that. */
export function scaleOf(
  drawing: Drawing,
  choices: Choices,
  of: ChoiceOf,
  unit: ReadingUnit,
): Result<number, string> {
  if ((choices.how ?? (drawing.trueSize ? 'found' : 'known')) === 'found') return good(1);
  const known = measurables(drawing, choices, of).find(({ key }) => key === choices.known);
  if (!known || known.long === 0) return bad('Touch two points on the drawing whose distance you know.');
  const read = readLength(choices.long, unit);
  if (!read.ok) return read;
  return read.value > 0 ? good(read.value / known.long) : bad('Write a length of more than nothing.');
}

/** The names that the edges of a piece get, by their corners: as written, else numbered; each its own. */
export function edgeNames({ corners, names, cut }: PieceChoice): ReadonlyMap<Place, string> {
  const made = new Map<Place, string>();
  const taken = new Set<string>();
  for (const [i, at] of corners.entries()) {
    const spelled = edgeSpelled(names[at] ?? '').slice(0, 56);
    const base =
      spelled === '' ? `edge-${i + 1}` : spelled === FOLD && cut !== 'fold' ? 'fold-edge' : spelled;
    let name = base;
    for (let n = 2; taken.has(name); n++) name = `${base}-${n}`;
    taken.add(name);
    made.set(at, name);
  }
  return made;
}

/** A fault at a field of a piece's form; at none of them where it is about the outline. */
export interface TraceFault {
  readonly field: 'name' | 'grain' | 'allowance' | '';
  readonly say: string;
}

/** Makes the piece that a line of a drawing is meant to be; the first thing that is wrong, at its field. */
export function tracedPiece(
  drawing: Drawing,
  line: DrawnLine,
  choice: PieceChoice,
  scale: number,
  unit: ReadingUnit,
  id: string,
): Result<Piece, TraceFault> {
  const name = choice.name.trim();
  if (name === '') return bad({ field: 'name', say: 'Nothing is written; write a name such as “Front”.' });
  const names = edgeNames(choice);
  const fold = choice.corners.find((at) => names.get(at) === FOLD);
  if (choice.cut === 'fold' && fold === undefined)
    return bad({ field: '', say: 'Touch the edge that lies on the fold, then “fold”.' });
  const grain = choice.grain.trim() === '' ? 0 : Number(choice.grain.replace(',', '.').replace('°', ''));
  if (!(Math.abs(grain) <= 180))
    return bad({ field: 'grain', say: 'Write degrees from -180 to 180, such as 45; 0 is upright.' });
  const allowance = readLength(choice.allowance, unit);
  if (!allowance.ok) return bad({ field: 'allowance', say: allowance.error });
  if (allowance.value < 0) return bad({ field: 'allowance', say: 'Write an allowance of nothing or more.' });
  const made = traceOutline({
    run: line,
    corners: choice.corners,
    named: (at) => names.get(at) ?? 'edge',
    scale,
    ...(choice.cut === 'fold' && fold !== undefined ? { fold } : {}),
  });
  if (!made.ok) return bad({ field: '', say: made.error });
  const { outline, at, turned } = made.value;
  const lies = Math.round(turned(grain) * 100) / 100;
  const marks = drawing.lines
    .filter((one) => choice.marks.includes(one.id))
    .map((one, i) => ({ name: one.name || `mark ${i + 1}`, at: at(middleOf(boxOf(one))) }));
  return good({
    id,
    name,
    cloth: choice.cloth,
    cut: choice.cut,
    allowance: allowance.value,
    cutAfterWork: false,
    ...(lies === 0 ? {} : { grain: lies }),
    marks,
    outline,
  });
}
