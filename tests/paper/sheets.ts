import fc from 'fast-check';
import { type Length, mm, nm } from '../../src/length/length.ts';
import { arc, box, line, place, ring, sheet, words } from '../../src/paper/drawing.ts';
import { markingStrip } from '../../src/paper/marking-strip.ts';
import type { PatternSheet } from '../../src/paper/pattern-sheet.ts';
import type { Point } from '../../src/shape/outline.ts';

/** A small piece with every kind of line: 150 mm by 80 mm. */
export const collar: PatternSheet = sheet(
  'Upper collar',
  [
    box('cut', mm(0), mm(0), mm(150), mm(80)),
    box('seam', mm(12), mm(12), mm(126), mm(56)),
    line('fold', place(mm(75), mm(0)), place(mm(75), mm(80))),
    line('grain', place(mm(30), mm(20)), place(mm(30), mm(60))),
    line('mark', place(mm(0), mm(30)), place(mm(8), mm(30))),
    line('stitch', place(mm(90), mm(20)), place(mm(130), mm(50))),
  ],
  ['Cut 2.', 'Allowance drawn: 12 mm.'],
);

/** A ring far larger than a page. */
export const flounce: PatternSheet = sheet(
  'Flounce',
  [
    arc('cut', place(mm(0), mm(0)), mm(420)),
    arc('seam', place(mm(0), mm(0)), mm(100)),
    line('grain', place(mm(-300), mm(0)), place(mm(-120), mm(0))),
    words('flounce', place(mm(-300), mm(-20)), mm(10)),
  ],
  ['Cut 2.'],
);

/** A strip of marks, as long as wanted. */
export const strip = (count: number, apart: Length): PatternSheet =>
  markingStrip(
    {
      name: 'Left front, tuck folds',
      from: 'the neck seam',
      span: nm((count + 1) * apart),
      marks: Array.from({ length: count }, (_, i) => ({ at: nm((i + 1) * apart), name: `fold ${i + 1}` })),
    },
    { unit: 'in', per: 16 },
  );

/** A place within a metre and a bit, at any micrometre. */
export const places: fc.Arbitrary<Point> = fc
  .tuple(fc.integer({ min: -600_000, max: 600_000 }), fc.integer({ min: -600_000, max: 600_000 }))
  .map(([x, y]) => ({ x: nm(x * 1000), y: nm(y * 1000) }));

/** Any drawing of lines, large or small, somewhere or other. */
export const drawings: fc.Arbitrary<PatternSheet> = fc
  .array(fc.tuple(fc.array(places, { minLength: 2, maxLength: 6 }), fc.boolean()), {
    minLength: 1,
    maxLength: 4,
  })
  .map((paths) =>
    sheet(
      'Any',
      paths.map(([points, closed]) => (closed ? ring('cut', points) : line('seam', ...points))),
    ),
  );
