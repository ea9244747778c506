import { geometry } from '../../cloth/source.ts';
import { tuckedPanel as openPanel } from '../../cloth/tucked-panel.ts';
import { shallowAdvice } from '../../cloth/tucks.ts';
import { longest, mm, nm, subtract, times } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, middleWords, moved, place, ring, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { boundingBox } from '../../shape/measure.ts';
import { reckoning } from '../reckoning.ts';
import { tuckStrip, tuckStrokes } from './tuck-drawing.ts';

const RUNS = {
  'across-down': { run: 'across', pressed: 'away' },
  'across-up': { run: 'across', pressed: 'toward' },
  'down-right': { run: 'down', pressed: 'away' },
  'down-left': { run: 'down', pressed: 'toward' },
} as const;

/** A finished panel opened through its tucks into the outline to cut. */
export const tuckedPanel = reckoning({
  id: 'tucked-panel',
  name: 'Panel opened through tucks',
  tells: 'The outline to cut, so that a shaped panel is true once its tucks are folded.',
  group: 'Tucks and bands',
  fields: {
    top: { kind: 'length', label: 'Width at top', means: 'Finished.', start: { in: '9', mm: '230' } },
    bottom: { kind: 'length', label: 'Width at bottom', start: { in: '6', mm: '150' } },
    height: { kind: 'length', label: 'Height', start: { in: '10', mm: '250' } },
    run: {
      kind: 'choice',
      usual: true,
      label: 'Tucks run',
      options: [
        { value: 'across-down', label: 'across, pressed down' },
        { value: 'across-up', label: 'across, pressed up' },
        { value: 'down-right', label: 'up and down, pressed right' },
        { value: 'down-left', label: 'up and down, pressed left' },
      ],
      start: 'across-down',
    },
    count: { kind: 'number', label: 'How many', whole: true, start: '5' },
    depth: {
      kind: 'length',
      label: 'Depth of a tuck',
      means: 'From the stitching to the fold.',
      start: { in: '1/2', mm: '12' },
    },
    spacing: {
      kind: 'length',
      label: 'Spacing, finished',
      means: 'From one stitching line to the next.',
      start: { in: '1 1/2', mm: '40' },
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '5/8', mm: '15' } },
  },
  blame: { tucks: 'spacing', width: 'top' },
  work: ({ run, ...given }) => {
    const made = openPanel({ ...given, ...RUNS[run] });
    if (!made.ok) return made;
    const { seam, cut, map, lines, takeUp, assumed } = made.value;
    const all = boundingBox(cut);
    const inner = boundingBox(seam);
    const across = RUNS[run].run === 'across';
    const letters = times(longest(subtract(all.right, all.left), subtract(all.bottom, all.top)), 1 / 25);
    const centre = nm((all.left + all.right) / 2);
    const drawn: Drawn[] = [ring('cut', cut), ring('seam', seam), ...tuckStrokes(lines)];
    const first = map.marks[0];
    return good({
      figures: [
        { kind: 'length', name: 'Cut width at the widest', length: subtract(all.right, all.left) },
        { kind: 'length', name: 'Cut height', length: subtract(all.bottom, all.top) },
        { kind: 'length', name: 'Cloth that the tucks take', length: takeUp },
        ...(first
          ? [
              {
                kind: 'length' as const,
                name: across ? 'First stitching, from the top' : 'First stitching, from the left',
                length: first.firstStitching,
              },
            ]
          : []),
      ],
      strips: [
        across
          ? tuckStrip(
              'Tucks, on the opened panel',
              'the top seam line',
              subtract(inner.bottom, inner.top),
              map.marks,
            )
          : tuckStrip(
              'Tucks, on the opened panel',
              'the seam line at the widest left corner',
              subtract(inner.right, inner.left),
              map.marks,
            ),
      ],
      drawing: sheet('Panel, opened', [
        ...drawn,
        ...map.marks
          .filter((_, i) => i === 0 || given.spacing + 2 * given.depth > letters * 1.2)
          .map(({ fold }, i) =>
            middleWords(
              String(i + 1),
              across
                ? place(nm(centre - letters * 2), nm(fold - letters * 0.2))
                : place(fold, nm(all.top - letters * 0.4)),
              letters,
            ),
          ),
      ]),
      sheets: [
        sheet(
          'Panel, opened through its tucks',
          [
            ...drawn,
            line(
              'grain',
              place(nm(centre + mm(3)), nm(all.top + (all.bottom - all.top) / 4)),
              place(nm(centre + mm(3)), nm(all.top + ((all.bottom - all.top) * 3) / 4)),
            ),
          ].map((one) => moved(one, nm(-all.left), nm(-all.top))),
          ['Cut 1.', 'The seam allowance is drawn.', 'Fold and sew the tucks before any seam.'],
        ),
      ],
      advice: shallowAdvice([given.depth]),
      assumed,
      sources: [geometry],
    });
  },
});
