import { curveRadius } from '../../cloth/curve-radius.ts';
import { easeNotches, NOTCH_GAP, NOTCHES_APART, SHORT_OF_SEAM } from '../../cloth/ease-notches.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { type Length, longer, nm, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { arc, line, place, sheet } from '../../paper/drawing.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';
import { reckoning } from '../reckoning.ts';

/** More notches than this are a slip of the finger. */
const MOST_NOTCHES = 1000;

/** Notches that let a curved seam lie flat. */
export const notchesOnACurve = reckoning({
  id: 'notches-on-a-curve',
  name: 'Notches on a curve',
  tells: 'Where to clip or notch a curved allowance, how deep, and how much each opens.',
  group: 'Frills',
  fields: {
    seam: {
      kind: 'length',
      label: 'Curved seam',
      means: 'Length of the seam line, along the curve.',
      start: { in: '8', mm: '200' },
    },
    across: {
      kind: 'length',
      label: 'Ruler across',
      means:
        'Lay a ruler straight across a part of the curve: from where the seam meets it to where it leaves.',
      start: { in: '4', mm: '100' },
    },
    bow: {
      kind: 'length',
      label: 'Bow of the curve',
      means: 'How far the seam line lies from that ruler, at its furthest.',
      start: { in: '3/4', mm: '20' },
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '1/2', mm: '12' } },
    curve: {
      kind: 'choice',
      label: 'Allowance lies',
      options: [
        { value: 'inward', label: 'inside the curve, such as a neck' },
        { value: 'outward', label: 'outside the curve, such as a collar' },
      ],
      start: 'inward',
    },
  },
  blame: { radius: 'bow' },
  work: ({ seam, across, bow, allowance, curve }) => {
    const round = curveRadius(across, bow);
    if (!round.ok) return round;
    const radius = round.value;
    if (longer(seam, times(NOTCHES_APART.value[0], MOST_NOTCHES))) {
      const cure = 'Give the seam of one piece.';
      return bad(refusal('seam', `This seam could take more than ${MOST_NOTCHES} notches.`, cure));
    }
    const made = easeNotches({ seam, radius, allowance, curve });
    if (!made.ok) return made;
    const { cut, at, apart, deep, gap, assumed } = made.value;
    const clips = cut === 'clip';
    return good({
      figures: [
        { kind: 'length', name: clips ? 'Clip every' : 'Take out a wedge every', length: apart },
        { kind: 'length', name: 'How deep, from the raw edge', length: deep },
        { kind: 'length', name: clips ? 'Each opens at the raw edge' : 'Width of a wedge', length: gap },
        { kind: 'number', name: clips ? 'Clips' : 'Wedges', number: at.length },
        { kind: 'length', name: 'Radius of the curve', length: radius },
      ],
      strips:
        at.length > 0
          ? [
              {
                name: clips ? 'Clips, along the seam line' : 'Wedges, along the seam line',
                from: 'the start of the curve',
                span: seam,
                marks: at.map((where, i) => ({ at: where, name: `notch ${i + 1}` })),
              },
            ]
          : [],
      drawing: drawn({ seam, radius, allowance, deep, gap, at, clips }),
      sheets: [],
      advice: [],
      assumed,
      sources: [NOTCHES_APART.source, NOTCH_GAP.source, SHORT_OF_SEAM.source, geometry],
    });
  },
});

/** The allowance from above, as much of the curve as one turn holds, its middle at the top. */
function drawn(of: {
  readonly seam: Length;
  readonly radius: Length;
  readonly allowance: Length;
  readonly deep: Length;
  readonly gap: Length;
  readonly at: readonly Length[];
  readonly clips: boolean;
}): PatternSheet {
  const { seam, radius, allowance, deep, gap, at, clips } = of;
  const middle = place(zero, zero);
  const toRaw = clips ? -1 : 1;
  const raw = nm(radius + toRaw * allowance);
  const whole = Math.min(seam / radius, 2 * Math.PI);
  const degrees = (angle: number) => (angle * 180) / Math.PI;
  const begin = -Math.PI / 2 - whole / 2;
  const on = (r: number, angle: number): Point => place(nm(r * Math.cos(angle)), nm(r * Math.sin(angle)));
  const curve = (stroke: 'seam' | 'cut', r: Length) =>
    arc(stroke, middle, r, degrees(begin), degrees(begin + whole));
  const tip = raw - toRaw * deep;
  const half = gap / 2 / raw;
  return sheet('Curved allowance', [
    curve('cut', raw),
    curve('seam', radius),
    line('body', on(raw, begin), on(radius, begin)),
    line('body', on(raw, begin + whole), on(radius, begin + whole)),
    ...at
      .map((where) => begin + where / radius)
      .filter((angle) => angle < begin + whole)
      .map((angle) =>
        clips
          ? line('mark', on(raw, angle), on(tip, angle))
          : line('mark', on(raw, angle - half), on(tip, angle), on(raw, angle + half)),
      ),
  ]);
}
