import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { MEASURES } from '../../src/outfit/measures.ts';
import { doubts, type Measures } from '../../src/outfit/plausible.ts';

/** An invented singer of middle size, measured as the words say. */
const singer: Measures = Object.fromEntries(
  Object.entries({
    ...{ height: 1700, neck: 380, shoulder: 130, 'across-back': 360, chest: 980, waist: 820, hip: 1040 },
    ...{ 'back-waist': 410, armhole: 440, 'upper-arm': 310, 'arm-length': 590, wrist: 165, hand: 215 },
    ...{ 'waist-to-crotch': 260, rise: 680, 'waist-to-floor': 1050, thigh: 620, knee: 380, calf: 380 },
    ...{ ankle: 225, 'crotch-to-knee': 330, 'knee-to-floor': 460, heel: 320, 'foot-length': 255, ball: 240 },
  }).map(([id, value]) => [id, mm(value)]),
);
const METRIC = { unit: 'mm', step: 1 } as const;
const said = (more: Measures) => doubts({ ...singer, ...more }, METRIC).map(({ at, say }) => [at, say]);

describe('doubts', () => {
  test('has none about somebody measured well, nor about nobody', () => {
    expect(Object.keys(singer).sort()).toEqual(MEASURES.map(({ id }) => id).sort());
    expect(said({})).toEqual([]);
    expect(doubts({}, METRIC)).toEqual([]);
  });

  test('says between what nearly everybody lies, in the maker’s rule', () => {
    expect(said({ neck: mm(38) })).toEqual([
      [
        'neck',
        'Of adults measured, 98 of 100 lie between 329 mm and 502 mm. Measure again, and keep it if it comes out the same.',
      ],
    ]);
    const [inch] = doubts({ neck: mm(600) }, { unit: 'in', per: 8 });
    expect(inch?.say).toContain('between 13 in and 19 3/4 in');
    expect(inch?.source.kind).toBe('published');
  });

  test('takes a waist for what it is, wherever it sits', () => {
    expect(doubts({ waist: mm(600) }, METRIC)).toEqual([]);
    expect(doubts({ waist: mm(300) }, METRIC)[0]?.say).toContain('nearly all lie between 580 mm and 1214 mm');
    expect(doubts({ rise: mm(300) }, METRIC)[0]?.say).toContain(
      '98 of 100 have more than 523 mm, taken to the navel',
    );
  });

  test.each([
    ['hip', { waist: mm(1210), hip: mm(900) }, 'between 991 mm and 2118 mm'],
    ['hip', { waist: mm(600), hip: mm(1100) }, 'between 491 mm and 1050 mm'],
    ['upper-arm', { 'upper-arm': mm(440) }, 'between 234 mm and 434 mm'],
    [
      'hand',
      { hand: mm(165) },
      'Hand 165 mm and wrist 165 mm hardly go together: with this wrist, the hand would be 174 mm or more',
    ],
    ['thigh', { thigh: mm(760) }, 'with this hip, the thigh would be between 545 mm and 716 mm'],
    ['knee', { knee: mm(300) }, 'with this calf, the knee would be between 318 mm and 454 mm'],
    [
      'knee',
      { knee: mm(630), calf: undefined as never },
      'with this thigh, the knee would be 620 mm or less',
    ],
    [
      'calf',
      { ankle: mm(265), calf: mm(350), knee: mm(360) },
      'with this ankle, the calf would be between 372 mm and 571 mm',
    ],
    ['crotch-to-knee', { height: mm(1450) }, 'Way from crotch to floor 790 mm and height 1450 mm'],
    ['knee-to-floor', { 'knee-to-floor': mm(395), 'crotch-to-knee': mm(395) }, 'between 418 mm'],
    ['heel', { heel: mm(280), ankle: mm(262) }, 'between 294 mm'],
    ['rise', { 'waist-to-crotch': mm(350), 'waist-to-floor': mm(1140) }, '700 mm or more'],
    ['waist-to-floor', { 'waist-to-floor': mm(950) }, 'come to 1050 mm together'],
  ] as const)('%s: notices what hardly goes together', (id, more, words) => {
    const found = said(more);
    expect(
      found
        .filter(([at]) => at === id)
        .map(([, say]) => say)
        .join(' '),
    ).toContain(words);
  });

  test('never throws, and stands in the order of the measures', () => {
    const any = fc.record(
      Object.fromEntries(MEASURES.map(({ id }) => [id, fc.integer({ min: 1, max: 4000 }).map(mm)])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(any, (measures: Measures) => {
        const ids = doubts(measures, METRIC).map(({ at }) => MEASURES.findIndex(({ id }) => id === at));
        expect(ids).toEqual([...ids].sort((a, b) => a - b));
      }),
      { seed: 17 },
    );
  });
});
