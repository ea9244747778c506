import {
  HAND_OF_WRIST,
  HIP_OF_WAIST,
  KNEE_LIKELY,
  LEAST_TO_NAVEL,
  MEASURED,
  MEASURED_PARTS,
  MOST_HIP_OF_WAIST,
  WAIST_MEASURED,
  WAY_DOWN_OFF,
} from '../cloth/body-measured.ts';
import { geometry, practice, type Source } from '../cloth/source.ts';
import { add, type Length, size, subtract, times } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { MEASURES, type MeasureId } from './measures.ts';

/** The measures of somebody, as far as they were taken. */
export type Measures = Readonly<Partial<Record<MeasureId, Length>>>;

/** A measure that had better be taken again; never a reason to refuse it. */
export interface Doubt {
  /** The measure it is said at. */
  readonly at: MeasureId;
  /** What is unlikely, and what to do, in plain sentences. */
  readonly say: string;
  readonly source: Source;
}

/** A measure, or a sum of some, beside another that it should go with. */
interface Beside {
  readonly at: MeasureId;
  readonly what: string;
  readonly value: Length | undefined;
  readonly than: string;
  readonly other: Length | undefined;
  readonly least: number;
  readonly most: number;
  readonly source: Source;
}

const sum = (...lengths: readonly (Length | undefined)[]): Length | undefined => {
  const known = lengths.filter((one) => one !== undefined);
  return known.length === lengths.length ? add(...known) : undefined;
};

/** What should go together, as far as the survey knows it. */
function besides(m: Measures): readonly Beside[] {
  const surveyed = (
    at: MeasureId,
    what: string,
    value: Length | undefined,
    than: string,
    other: Length | undefined,
  ) => {
    const [least, most] = MEASURED_PARTS.value[`${what} of the ${than}`] ?? [0, Number.POSITIVE_INFINITY];
    return { at, what, value, than, other, least, most, source: MEASURED_PARTS.source };
  };
  const crotch = sum(m['crotch-to-knee'], m['knee-to-floor']);
  const wide = m.hip !== undefined && m.waist !== undefined && m.hip > m.waist;
  return [
    {
      ...{ at: 'hip', what: 'hip', value: m.hip, than: 'waist', other: m.waist },
      ...{ least: HIP_OF_WAIST.value, most: MOST_HIP_OF_WAIST.value },
      source: wide ? MOST_HIP_OF_WAIST.source : HIP_OF_WAIST.source,
    },
    surveyed('upper-arm', 'upper arm', m['upper-arm'], 'wrist', m.wrist),
    {
      ...{ at: 'hand', what: 'hand', value: m.hand, than: 'wrist', other: m.wrist },
      ...{ least: HAND_OF_WRIST.value, most: Number.POSITIVE_INFINITY, source: HAND_OF_WRIST.source },
    },
    surveyed('thigh', 'thigh', m.thigh, 'hip', m.hip),
    surveyed('thigh', 'thigh', m.thigh, 'calf', m.calf),
    {
      ...{ at: 'knee', what: 'knee', value: m.knee, than: 'calf', other: m.calf },
      ...{ least: KNEE_LIKELY.value[0], most: KNEE_LIKELY.value[1], source: KNEE_LIKELY.source },
    },
    {
      ...{ at: 'knee', what: 'knee', value: m.knee, than: 'thigh', other: m.thigh },
      ...{ least: 0, most: 1, source: practice },
    },
    surveyed('calf', 'calf', m.calf, 'ankle', m.ankle),
    surveyed('crotch-to-knee', 'way from crotch to floor', crotch, 'height', m.height),
    surveyed('knee-to-floor', 'knee to floor', m['knee-to-floor'], 'way from crotch to floor', crotch),
    surveyed('heel', 'heel', m.heel, 'ankle', m.ankle),
    {
      ...{
        at: 'rise',
        what: 'rise',
        value: m.rise,
        than: 'way from waist to crotch',
        other: m['waist-to-crotch'],
      },
      // Down in front and up again behind.
      ...{ least: 2, most: Number.POSITIVE_INFINITY, source: geometry },
    },
  ];
}

const upper = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * What is unlikely about the measures of one body, in the order of the measures: further out than 98 of 100 adults, or
 * not going with another measure. The only large survey that is open to all measured soldiers: a child, or a wearer of
 * unusual build, may be measured rightly and still be doubted.
 */
export function doubts(measures: Measures, marking: Marking): readonly Doubt[] {
  const found: Doubt[] = [];
  const said = (length: Length): string => writeLength(length, marking).text;
  const between = (from: Length, to: Length): string => `between ${said(from)} and ${said(to)}`;
  const say = (at: MeasureId, source: Source, ...words: readonly string[]): void =>
    void found.push({ at, source, say: words.join(' ') });

  for (const { id } of MEASURES) {
    const value = measures[id];
    if (value === undefined) continue;
    const again = 'Measure again, and keep it if it comes out the same.';
    const range = id === 'waist' ? WAIST_MEASURED.value : MEASURED.value[id];
    const navel = LEAST_TO_NAVEL.value[id];
    if (range && (value < range[0] || value > range[1])) {
      const source = id === 'waist' ? WAIST_MEASURED.source : MEASURED.source;
      const who = id === 'waist' ? 'nearly all' : '98 of 100';
      say(id, source, `Of adults measured, ${who} lie ${between(...range)}.`, again);
    }
    if (navel !== undefined && value < navel) {
      const words = `Of adults measured, 98 of 100 have more than ${said(navel)}, taken to the navel.`;
      say(id, LEAST_TO_NAVEL.source, words, again);
    }
  }
  for (const { at, what, value, than, other, least, most, source } of besides(measures)) {
    if (value === undefined || other === undefined) continue;
    // What is unlikely by itself need not be told so twice.
    if (found.some((doubt) => doubt.at === at)) continue;
    if (value >= other * least && value <= other * most) continue;
    const from = times(other, least);
    const likely =
      most === Number.POSITIVE_INFINITY
        ? `${said(from)} or more`
        : least === 0
          ? `${said(times(other, most))} or less`
          : between(from, times(other, most));
    const words = `${upper(what)} ${said(value)} and ${than} ${said(other)} hardly go together: with this ${than}, the ${what} would be ${likely}.`;
    say(at, source, words, 'Measure both again.');
  }
  const parts = sum(measures['waist-to-crotch'], measures['crotch-to-knee'], measures['knee-to-floor']);
  const side = measures['waist-to-floor'];
  if (side !== undefined && parts !== undefined && size(subtract(side, parts)) > WAY_DOWN_OFF.value) {
    const words = `Waist to crotch, crotch to knee and knee to floor come to ${said(parts)} together.`;
    say(
      'waist-to-floor',
      WAY_DOWN_OFF.source,
      words,
      'Measure all four again, from the same waist and without shoes.',
    );
  }
  const rank = (doubt: Doubt): number => MEASURES.findIndex(({ id }) => id === doubt.at);
  return found.sort((a, b) => rank(a) - rank(b));
}
