import { describe, expect, test } from 'vitest';
import { clothNeeded } from '../../src/cloth/cloth-needed.ts';
import { beforeShrinking } from '../../src/cloth/shrinkage.ts';
import { stretchOf } from '../../src/cloth/stretch.ts';
import { inches, type Length, mm, readLength, toInches, toMm } from '../../src/length/index.ts';
import { cardFor } from '../../src/order/card.ts';
import type { Station } from '../../src/order/step.ts';
import { made } from '../cloth/good.ts';
import { order } from '../order/make.ts';
import { demo } from '../outfit/demo-files.ts';

const read = (text: string): Length => {
  const result = readLength(text, 'in');
  if (!result.ok) throw new Error(result.error);
  return result.value;
};
const box = (across: Length, along: Length, count = 1) =>
  ({ name: 'Piece', shape: { across, along }, cut: 'one', count }) as const;

describe('cloth quantities', () => {
  // Math Central, University of Regina, questions and answers, 2007 (seen as an excerpt): 54 in are 1.5 yd, so square yards / 1.5 are
  // running yards.
  test.each([
    [1.5, 1],
    [3, 2],
    [6, 4],
  ])('%s square yards from cloth of 54 in are %s yards', (square, running) => {
    const long = square / 1.5;
    const { length, efficiency } = made(
      clothNeeded({
        pieces: [box(inches(54), inches(36 * long))],
        width: inches(54),
        laid: 'single',
        oneWay: false,
      }),
    );
    expect(toInches(length) / 36).toBeCloseTo(running, 9);
    expect(efficiency).toBeCloseTo(1, 9);
  });

  // Textiles and Clothing, Kate Heintz Watson, 1907: sheeting 2 1/4 to 2 1/2 yd, velvet 18 to 24 in, pillow cloth 38 to 54 in. A yard is
  // 0.9144 m (NIST SP 811, 2008, from memory); the millimetres are derived.
  test.each([
    ['2 1/4 yd', 2057.4],
    ['2 1/2 yd', 2286],
    ['18 in', 457.2],
    ['36 in', 914.4],
    ['54 in', 1371.6],
  ])('cloth %s wide is %s mm', (text, wide) => {
    expect(toMm(read(text))).toBe(wide);
  });

  // Dress Making, Trade Theory, NIMI, about 2024, p. 32 (seen as an excerpt): pattern area / laid area x 100.
  test('two thirds of the cloth used are an efficiency of two thirds', () => {
    const { efficiency } = made(
      clothNeeded({ pieces: [box(mm(600), mm(500))], width: mm(900), laid: 'single', oneWay: false }),
    );
    expect(efficiency).toBeCloseTo(2 / 3, 9);
  });

  // Geometry (derived): cloth that loses the part s must be bought 1 / (1 - s) times as long.
  test.each([
    [0.05, 2000, 2105.3],
    [0.1, 1800, 2000],
    [0.03, 970, 1000],
  ])('%s lost: %s mm from %s', (part, needed, bought) => {
    expect(Math.abs(toMm(made(beforeShrinking(mm(needed), part))) - bought)).toBeLessThan(0.05);
  });

  // Dress Making, Trade Theory, NIMI, about 2024, p. 250 (seen as an excerpt): tiers of 6.25, 6.75, 7.25 and 8.75 make 29 in.
  test('four tiers are 29 in', () => {
    expect(['6 1/4', '6 3/4', '7 1/4', '8 3/4'].map(read).reduce((sum, tier) => sum + tier, 0)).toBe(
      inches(29),
    );
  });

  // Knits Knacks: Sweater Knits, HE452, Gotwals, Purdue Cooperative Extension, undated, p. 1 (seen as an excerpt): a gauge of 4 in. In
  // millimetres the percentage stays (definition, derived).
  test.each([
    [127, 0.25],
    [152.4, 0.5],
    [203.2, 1],
  ])('4 in drawn out to %s mm', (stretched, part) => {
    expect(made(stretchOf({ rest: inches(4), stretched: mm(stretched) }))).toBeCloseTo(part, 12);
  });
});

describe('order of making', () => {
  // Dress Making, Trade Practical, NIMI, about 2024, p. 207 (seen as an excerpt), and The New Dressmaker, Butterick, 1921, p. 98: all
  // tucks of one direction first, stitched and pressed one way; then the others.
  test('crossed tucks: one direction stitched and pressed before the other is stitched', () => {
    const running = order(demo('harbour-clockmaker'));
    const at = (part: RegExp) => running.sequence.findIndex((id) => part.test(id));
    const [first, press, second] = [
      at(/tucks\/stitch(-1)?$/),
      at(/tucks\/press(-1)?$/),
      at(/tucks\/stitch-2$/),
    ];
    expect(first).toBeGreaterThanOrEqual(0);
    expect(press).toBeGreaterThan(first);
    expect(second).toBeGreaterThan(press);
  });
});

// Safety Guide, Duds to Dazzle contest, 4-H, undated (seen as an excerpt).
describe('care that the cards ask for', () => {
  const outfit = demo('harbour-clockmaker');
  const running = order(outfit);
  const cautions = (station: Station): string => {
    const step = [...running.steps.values()].find(
      ({ setUp, action }) => setUp.station === station && action !== 'slit',
    );
    return cardFor(outfit, running, step?.id ?? '')?.cautions.join(' ') ?? '';
  };
  test.each<[string, Station, RegExp]>([
    ['pins are never held in the mouth', 'pin', /Never hold pins in the mouth/],
    ['blades cut away from the body', 'cut', /cut away from yourself/],
    ['blades do not go over pins', 'cut', /never over pins/],
    ['blades are closed or covered when idle', 'cut', /close or cover the blade/],
    ['an iron stands on its heel', 'iron', /stand it on its heel/],
    ['fingers and face keep off the steam', 'iron', /keep fingers and face clear/],
    ['an iron is unplugged after use', 'iron', /unplug it after/],
  ])('%s', (_, station, words) => {
    expect(cautions(station)).toMatch(words);
  });
});
