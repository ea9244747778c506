import { geometry } from '../../cloth/source.ts';
import { HORSEHAIR_LAP, LADEN_SLEEVES, type SleeveSupportMade, sleeveSupport } from '../../cloth/support.ts';
import { add, type Length, nm, subtract, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, middleWords, place, sheet } from '../../paper/drawing.ts';
import type { Drawn, PatternSheet } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { LONGEST_SHEET } from './strip-piece.ts';

/** An inner sleeve with rings that carries a laden one. */
export const supportInside = reckoning({
  id: 'support-inside-a-sleeve',
  name: 'Support inside a sleeve',
  tells: 'Whether a sleeve needs support, the inner sleeve of net, and the horsehair for its rings.',
  group: 'Sleeves, bows and cuffs',
  fields: {
    sleeve: {
      kind: 'choice',
      label: 'Sleeve',
      options: [
        { value: 'both', label: 'detached and laden with beads' },
        { value: 'detached', label: 'detached and light' },
        { value: 'beaded', label: 'sewn in and laden with beads' },
      ],
      start: 'both',
    },
    top: { kind: 'length', label: 'Round the top', start: { in: '12 1/2', mm: '320' } },
    bottom: { kind: 'length', label: 'Round lower edge', start: { in: '20', mm: '520' } },
    length: {
      kind: 'length',
      label: 'Length of sleeve',
      means: 'From its top to its lower edge.',
      start: { in: '16', mm: '400' },
    },
    rings: {
      kind: 'number',
      label: 'Rings',
      means: 'Of horsehair, the first at the top and the last at the lower edge.',
      whole: true,
      start: '3',
    },
    allowance: { kind: 'length', usual: true, label: 'Seam allowance', start: { in: '3/8', mm: '10' } },
  },
  work: ({ sleeve, ...given }) => {
    const made = sleeveSupport({ ...given, detached: sleeve !== 'beaded', beaded: sleeve !== 'detached' });
    if (!made.ok) return made;
    const { needed, cut, rings, advice, assumed } = made.value;
    const { allowance } = given;
    return good({
      figures: [
        { kind: 'words', name: 'Support inside', words: needed ? 'needed' : 'not needed, if you like' },
        { kind: 'length', name: 'Net, cut width at the top', length: cut.top },
        { kind: 'length', name: 'Net, cut width at the lower edge', length: cut.bottom },
        { kind: 'length', name: 'Net, cut length', length: cut.length },
        ...rings.map(({ horsehair }, i) => ({
          kind: 'length' as const,
          name: `Horsehair for ring ${i + 1}`,
          length: horsehair,
        })),
      ],
      strips: [
        {
          name: 'Rings, down the sleeve',
          from: 'the seam line of its top',
          span: given.length,
          marks: rings.map(({ at }, i) => ({ at, name: `ring ${i + 1}`, stroke: 'stitch' as const })),
        },
      ],
      drawing: sheet(
        'Inner sleeve',
        half(made.value, given, allowance, -1).concat(half(made.value, given, allowance, 1)),
      ),
      sheets: onFold(made.value, given, allowance),
      advice,
      assumed,
      sources: [LADEN_SLEEVES, HORSEHAIR_LAP.source, geometry],
    });
  },
});

/** One half of the inner sleeve beside its middle line. */
function half(
  { cut, rings }: SleeveSupportMade,
  finished: { readonly top: Length; readonly bottom: Length; readonly length: Length },
  allowance: Length,
  side: 1 | -1,
): readonly Drawn[] {
  const at = (x: number, y: Length) => place(nm((side * x) / 2), y);
  const low = add(finished.length, allowance);
  const wideAt = (down: Length) =>
    finished.top + ((finished.bottom - finished.top) * down) / Math.max(1, finished.length);
  const outline = (top: Length, bottom: Length, from: Length, to: Length) =>
    [at(0, from), at(top, from), at(bottom, to), at(0, to)] as const;
  return [
    line('cut', ...outline(cut.top, cut.bottom, zero, cut.length)),
    ...(allowance > 0 ? [line('seam', ...outline(finished.top, finished.bottom, allowance, low))] : []),
    ...rings.map(({ at: down }) =>
      line('stitch', at(0, add(allowance, down)), at(wideAt(down), add(allowance, down))),
    ),
  ];
}

/** Half the pattern, its middle on the fold; none where it is too long to print. */
function onFold(
  made: SleeveSupportMade,
  finished: { readonly top: Length; readonly bottom: Length; readonly length: Length },
  allowance: Length,
): readonly PatternSheet[] {
  const { cut } = made;
  if (Math.max(cut.top, cut.bottom, cut.length) > LONGEST_SHEET) return [];
  const x = times(cut.top, 1 / 12);
  const upright = [place(x, times(cut.length, 0.2)), place(x, times(cut.length, 0.45))] as const;
  const high = times(cut.top, 1 / 30);
  return [
    sheet(
      'Inner sleeve, half',
      [
        ...half(made, finished, allowance, 1),
        line('fold', place(zero, zero), place(zero, cut.length)),
        line('grain', ...upright),
        middleWords('inner sleeve', place(times(cut.top, 1 / 4), subtract(upright[1].y, high)), high),
      ],
      ['cut 2 of net, on the fold', 'allowances drawn', 'dashes across: a ring of horsehair on each'],
    ),
  ];
}
