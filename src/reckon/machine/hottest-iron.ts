import { advise } from '../../cloth/advice.ts';
import { DOT_LIMIT, type Dots, pressAdvice, pressLimit } from '../../cloth/press-heat.ts';
import { practice } from '../../cloth/source.ts';
import type { ChoiceField } from '../../fields/fields.ts';
import { mm, nm, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, middleWords, place, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { CARE_OPTIONS, dotsDrawn, dotsOf, sayDots, soleDrawn } from './iron-drawing.ts';

type Care = '0' | '1' | '2' | '3';
const another = (label: string, start: Care | 'none') =>
  ({
    kind: 'choice',
    label,
    options: [{ value: 'none', label: 'there is none' }, ...CARE_OPTIONS],
    start,
  }) as const satisfies ChoiceField<Care | 'none'>;

const SWATCH = mm(90);

/** Each cloth with its dots, those that decide drawn heavier. */
function swatches(dots: readonly Dots[], least: number): Drawn[] {
  return dots.flatMap((one, i) => {
    const [x, y] = [times(SWATCH, i * 1.15), mm(75)];
    return [
      box(one === least ? 'cut' : 'body', x, y, SWATCH, nm(SWATCH * 0.7)),
      ...dotsDrawn(one, nm(x + SWATCH / 2), nm(y + SWATCH * 0.35), mm(7)),
      middleWords(String(i + 1), place(nm(x + SWATCH / 2), nm(y + SWATCH * 0.9)), mm(14)),
    ];
  });
}

/** The hottest iron that cloths sewn together bear. */
export const hottestIron = reckoning({
  id: 'hottest-iron',
  name: 'Hottest iron',
  tells: 'How hot the iron may be on cloths that are sewn together.',
  group: 'Machine and iron',
  fields: {
    first: {
      kind: 'choice',
      label: 'First cloth',
      means: 'Dots in the iron on its care label.',
      options: CARE_OPTIONS,
      start: '3',
    },
    second: another('Second cloth', '2'),
    third: { ...another('Third cloth', 'none'), usual: true },
    fourth: { ...another('Fourth cloth', 'none'), usual: true },
  },
  work: (chosen) => {
    const cloths: { field: 'first' | 'second' | 'third' | 'fourth'; dots: Dots }[] = [];
    for (const field of ['first', 'second', 'third', 'fourth'] as const) {
      const care = chosen[field];
      if (care !== 'none') cloths.push({ field, dots: dotsOf(care) });
    }
    const dots = cloths.map((one) => one.dots);
    const limit = pressLimit(dots);
    if (!limit.ok) {
      const at = cloths.find((one) => one.dots === 0)?.field ?? 'first';
      return bad({ ...limit.error, field: at });
    }
    const least = dots.find((one) => one !== 0 && DOT_LIMIT.value[one] === limit.value) ?? 1;
    const decides = dots.flatMap((one, i) => (one === least ? [String(i + 1)] : []));
    return good({
      figures: [
        { kind: 'number', name: 'At most', number: limit.value, of: '°C' },
        { kind: 'words', name: 'On the dial', words: sayDots(least).split(',')[0] ?? '' },
        { kind: 'words', name: 'Decided by cloth', words: decides.join(', ') },
      ],
      strips: [],
      drawing: sheet('The iron and the cloths', [...soleDrawn(least, zero, zero), ...swatches(dots, least)]),
      sheets: [],
      advice: [
        ...pressAdvice(dots),
        advise(
          'Try the iron on a scrap of each cloth first; the care label goes above these figures.',
          practice,
        ),
      ],
      assumed: ['Thread, interfacing and trimmings bear as much as the cloths.'],
      sources: [DOT_LIMIT.source],
    });
  },
});
