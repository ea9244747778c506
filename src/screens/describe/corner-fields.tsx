import type { Fault } from '../../fields/fields.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { cornersOf, moveCorners } from '../../outfit/changing/own-corners.ts';
import type { Piece } from '../../outfit/outfit.ts';
import type { Outline, Point } from '../../shape/outline.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { MoreFields } from '../reckoner/more-fields.tsx';
import type { Written } from './drafts.ts';
import { saidName } from './edge-lines.ts';
import type { InHand } from './folded-words.ts';
import { lengthWords } from './stands.ts';

const fieldOf = (edge: string, way: 'x' | 'y'): string => `corner.${edge}.${way}`;

/** The outline with the corners moved that were typed; every fault stands at its field. */
export function cornersTyped(
  outline: Outline,
  written: Written,
  unit: ReadingUnit,
): Result<Outline, readonly Fault[]> {
  const faults: Fault[] = [];
  const moves = new Map<string, Point>();
  for (const { edge, at } of cornersOf(outline)) {
    const typed = (way: 'x' | 'y') => {
      const text = written[fieldOf(edge, way)];
      if (text === undefined) return at[way];
      const read = readLength(text, unit);
      if (read.ok) return read.value;
      faults.push({ field: fieldOf(edge, way), say: read.error });
      return at[way];
    };
    const to = { x: typed('x'), y: typed('y') };
    if (to.x !== at.x || to.y !== at.y) moves.set(edge, to);
  }
  if (faults.length > 0) return bad(faults);
  if (moves.size === 0) return good(outline);
  const made = moveCorners(outline, moves);
  if (made.ok) return made;
  return bad(
    made.error.map(({ edge, say }) => {
      const across = written[fieldOf(edge, 'x')] !== undefined;
      return { field: fieldOf(edge, across ? 'x' : 'y'), say };
    }),
  );
}

/** More corners than this come from a drawing program, where they are better moved. */
const MOST = 40;

/** The corners of a piece, each to be moved by typing. */
export function CornerFields({ piece, form }: { readonly piece: Piece; readonly form: InHand }) {
  const corners = cornersOf(piece.outline);
  const { marking } = form.here;
  if (corners.length > MOST)
    return (
      <p class="quiet field-wide">It has {corners.length} corners; move them in the drawing it came from.</p>
    );
  return (
    <MoreFields
      words={`Its ${corners.length} corners, to be moved by typing.`}
      atFault={[...form.faults.keys()].some((field) => field.startsWith('corner.'))}
    >
      <p class="means field-wide">
        Across goes to the right, down goes down, both from the 0 of the drawing, along the seam line. Curves
        that meet at a corner keep their lean.
      </p>
      {corners.map(({ edge, at }, i) => {
        const before = corners.at(i - 1)?.edge ?? edge;
        const where = `where ${saidName(before)} meets ${saidName(edge)}`;
        return (['x', 'y'] as const).map((way) => {
          const name = fieldOf(edge, way);
          return (
            <FieldBox
              key={name}
              name={name}
              field={{
                kind: 'length',
                label: `${way === 'x' ? 'Across' : 'Down'}, ${where}`,
                start: { in: '', mm: '' },
              }}
              text={form.written[name] ?? lengthWords(at[way], marking)}
              fault={form.faults.get(name)}
              marking={marking}
              onText={(text) => form.write(name, text)}
            />
          );
        });
      })}
    </MoreFields>
  );
}
