import type { Fault } from '../../fields/fields.ts';
import { type ReadingUnit, readLength } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { cornersOf, moveCorner } from '../../outfit/changing/own-corners.ts';
import type { Piece } from '../../outfit/outfit.ts';
import type { Outline } from '../../shape/outline.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { MoreFields } from '../reckoner/more-fields.tsx';
import type { Written } from './drafts.ts';
import { saidName } from './edge-lines.ts';
import type { InHand } from './folded-words.ts';
import { lengthWords } from './stands.ts';

const fieldOf = (edge: string, way: 'x' | 'y'): string => `corner.${edge}.${way}`;

/** Moves the corners that were typed, one after the other; every fault stands at its field. */
export function moveCorners(
  outline: Outline,
  written: Written,
  unit: ReadingUnit,
): Result<Outline, readonly Fault[]> {
  const faults: Fault[] = [];
  let moved = outline;
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
    if (to.x === at.x && to.y === at.y) continue;
    const made = moveCorner(moved, edge, to);
    if (made.ok) moved = made.value;
    else faults.push({ field: fieldOf(edge, to.x === at.x ? 'y' : 'x'), say: made.error });
  }
  return faults.length > 0 ? bad(faults) : good(moved);
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
