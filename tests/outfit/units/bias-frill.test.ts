import { describe, expect, test } from 'vitest';
import { biasFrill } from '../../../src/outfit/units/bias-frill.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

const at = { edge: NECK };

describe('a bias frill', () => {
  test.each(RULES)('is folded, gathered and sewn to its edge, in %s', (units) => {
    const outfit = put(plainBody(units), biasFrill, { at });
    expect(differsBy(outfit, 'bias-frill-seam')).toBeLessThan(0.001);
    const running = soundOrder(outfit);
    expect(forced(running, 'bias-frill-edges/own-1', 'bias-frill-gathers/rows', 'garment')).toBe(true);
    expect(forced(running, 'shoulder/press', 'bias-frill-seam/pin', 'garment')).toBe(true);
  });

  test('is cut on the bias, twice as deep where it is folded', () => {
    const piece = (layers: string) =>
      built(plainBody(), biasFrill, { at, entries: { layers, depth: '50' } }).pieces[0]!;
    const [folded, single] = [piece('folded'), piece('single')];
    expect([folded.grain, single.grain]).toEqual([45, 45]);
    expect(folded.outline.edges.map(({ name }) => name)).toEqual(['seam', 'front-end', 'inner', 'back-end']);
    expect(single.outline.edges.map(({ name }) => name)).toEqual(['seam', 'front-end', 'outer', 'back-end']);
    const high = (one: typeof folded) =>
      Math.max(...one.outline.edges.map((e) => e.segments.at(-1)!.to.y)) / 1e6;
    expect([high(folded), high(single)]).toEqual([100, 50]);
    expect(folded.marks.map(({ at: { y } }) => y / 1e6)).toEqual([50, 50]);
  });

  test('round an armhole is closed into a ring', () => {
    const outfit = put(plainBody(), biasFrill, { at: { edge: ['front.armhole', 'back.armhole'] } });
    expect(forced(soundOrder(outfit), 'bias-frill-ends/press', 'bias-frill-seam/pin', 'garment')).toBe(true);
    expect(JSON.stringify(outfit.garments[0]!.works)).not.toContain('both ends');
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), biasFrill, { at, entries });
    expect(refused({ fullness: '0.8' })).toEqual(['fullness']);
    expect(refused({ fullness: '8' })).toEqual(['fullness']);
    expect(refused({ depth: '-3' })).toEqual(['depth']);
    expect(refused({ depth: '900' })).toEqual(['cloth.main']);
  });
});
