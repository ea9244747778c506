import { describe, expect, it } from 'vitest';
import { add, type Length, toInches, toMm } from '../../src/length/length.ts';
import {
  BODICE_EASE,
  HIP_EASE,
  SHIRT_EASE,
  SKIRT_WAIST_EASE,
  WAIST_EASE,
} from '../../src/outfit/units/body-figures.ts';
import { circleSkirt } from '../../src/outfit/units/circle-skirt.ts';
import { plainBack } from '../../src/outfit/units/plain-back.ts';
import { plainFront } from '../../src/outfit/units/plain-front.ts';
import { edgeLengths } from '../../src/shape/measure.ts';
import { built, emptyOutfit, garmentOf, MIDDLING, put } from '../outfit/units/made-of.ts';

/*
 * Ease: "Costume text", Central Washington University (S. Robinson), chapter 16, Ease in clothing (undated), as read in
 * its table: bodice bust 1 1/2 to 2 in; standard shirt (men) up to 3 in; waist of a dress 3/4 to 1 in; waist of a skirt
 * 1/2 to 3/4 in; hips of any garment 2 to 2 3/4 in.
 */
describe('ease against a published table', () => {
  it.each([
    ['bodice at the chest', BODICE_EASE.value, 1.5, 2],
    ['standard shirt at the chest', SHIRT_EASE.value, 1.5, 3],
    ['waist of a dress', WAIST_EASE.value, 0.75, 1],
    ['waist of a skirt', SKIRT_WAIST_EASE.value, 0.5, 0.75],
    ['hips', HIP_EASE.value, 2, 2.75],
  ] as const)('%s', (_, ease, least, most) => {
    expect(toInches(ease)).toBeGreaterThanOrEqual(least);
    expect(toInches(ease)).toBeLessThanOrEqual(most);
  });
});

/*
 * Neck of a shirt: The New Dressmaker, Butterick Publishing Co. (1921), p. 13, has the neck measured with the tape easy
 * where the band comes, and half an inch more. Our necks come out within a half inch of that, and never tighter than the neck.
 */
describe('neck of a shirt against a published rule', () => {
  it.each([12, 13.5, 15, 16.5, 18, 20])('%s in', (neck) => {
    const front = put(emptyOutfit('in', { ...MIDDLING, neck }), plainFront);
    const at = { shoulder: ['plain-front.shoulder'], side: ['plain-front.side'] };
    const edges = garmentOf(put(front, plainBack, { at })).pieces.map(
      (piece) => edgeLengths(piece.outline).get('neck') as Length,
    );
    const round = 2 * toInches(add(...edges));
    expect(round).toBeGreaterThan(neck);
    expect(Math.abs(round - (neck + 0.5))).toBeLessThan(0.5);
  });
});

/*
 * Clothing for Women, Laura I. Baldt, 1916, Draft of circular flounce, fig. 56 (seen as an excerpt): with the top T, the bottom B and the depth
 * D, the radius is T times D over B less T; a whole circle is the case where B less T is 2 pi D, so that r = T / 2 pi.
 */
describe('a circle skirt against a published draft', () => {
  it.each(['1', '0.5', '0.25'])('cut from %s of a circle', (circles) => {
    const entries = { circles, waist: '720 mm', length: '700 mm' };
    const { pieces } = built(emptyOutfit('mm'), circleSkirt, { entries });
    const outline = pieces[0]!.outline;
    const lengths = edgeLengths(outline);
    const [top, bottom] = (['waist', 'hem'] as const).map((edge) => 4 * toMm(lengths.get(edge)!));
    expect(toMm(outline.start.y)).toBeCloseTo((top! * 700) / (bottom! - top!), 1);
    if (circles === '1') expect(toMm(outline.start.y)).toBeCloseTo(720 / (2 * Math.PI), 2);
  });
});
