import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { flatCollar } from '../../../src/outfit/units/flat-collar.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, garmentOf, put, refusedAt, soundOrder } from './made-of.ts';
import { changed, NECK, plainBody, RULES } from './plain-body.ts';

const at = { neck: NECK };
const inTurn = (outfit: Parameters<typeof soundOrder>[0], ...steps: readonly string[]) => {
  const running = soundOrder(outfit);
  return steps.slice(1).filter((step, i) => !forced(running, steps[i]!, step, 'garment'));
};

describe('a flat collar', () => {
  test.each(RULES)('is exactly as long as the neck, its layers alike, in %s', (units) => {
    for (const neckBy of ['bound', 'faced', 'inside']) {
      const outfit = put(plainBody(units), flatCollar, { at, entries: { neckBy } });
      expect(differsBy(outfit, 'flat-collar-neck')).toBeLessThan(0.5);
      expect(differsBy(outfit, 'flat-collar-layers')).toBe(0);
    }
  });

  test('is made up, then bound to the neck when the shoulders are pressed', () => {
    const outfit = put(plainBody(), flatCollar, { at });
    expect(
      inTurn(
        outfit,
        'flat-collar-under-stiffening/baste',
        'flat-collar-layers/pin',
        'flat-collar-layers/press',
        'flat-collar-neck/baste',
        'flat-collar-neck/fell',
        'side/pin',
      ),
    ).toEqual([]);
    expect(inTurn(outfit, 'shoulder/press', 'flat-collar-neck/baste')).toEqual([]);
  });

  test('with a facing is basted to the neck between it and the body', () => {
    const outfit = put(plainBody(), flatCollar, { at, entries: { neckBy: 'faced' } });
    expect(
      inTurn(
        outfit,
        'flat-collar-layers/press',
        'flat-collar-neck/baste-trim',
        'flat-collar-neck/stitch',
        'flat-collar-neck/press',
        'flat-collar-facing-tack/own-1',
      ),
    ).toEqual([]);
    expect(inTurn(outfit, 'shoulder/press', 'flat-collar-neck/baste-trim')).toEqual([]);
    const { joins, pieces } = garmentOf(outfit);
    const neck = joins.find(({ id }) => id === 'flat-collar-neck')!;
    expect(neck.catches[0]!.depth).toBeLessThan(neck.depth);
    const facing = pieces.find(({ id }) => id === 'flat-collar-facing')!;
    const under = pieces.find(({ id }) => id === 'flat-collar-under')!;
    expect(edgeLengths(facing.outline).get('neck')! / edgeLengths(under.outline).get('neck')!).toBeCloseTo(
      1,
      6,
    );
  });

  test('inside itself has its upper layer turned in before and sewn down after', () => {
    const outfit = put(plainBody(), flatCollar, { at, entries: { neckBy: 'inside' } });
    expect(
      inTurn(
        outfit,
        'flat-collar-turning/press',
        'flat-collar-layers/pin',
        'flat-collar-layers/press',
        'flat-collar-neck/pin',
        'flat-collar-neck/cover',
      ),
    ).toEqual([]);
  });

  test('rolls more, and has a shorter outer edge, the more its pattern overlaps', () => {
    const outer = (roll: string) =>
      edgeLengths(
        built(plainBody(), flatCollar, { at, entries: { roll, corner: 'square' } }).pieces[0]!.outline,
      ).get('outer')!;
    expect(outer('30')).toBeLessThan(outer('12'));
    expect(outer('12')).toBeLessThan(outer('0'));
  });

  test('goes on over the fold where only one half was chosen', () => {
    const half = built(plainBody(), flatCollar, { at: { neck: ['front.neck', 'back.neck'] } });
    expect(half.pieces).toEqual(built(plainBody(), flatCollar, { at }).pieces);
  });

  test('takes its seam allowance from the front', () => {
    expect(built(plainBody(), flatCollar, { at }).pieces[0]?.allowance).toBe(mm(15));
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>, neck: readonly string[] = NECK) =>
      refusedAt(plainBody(), flatCollar, { at: { neck }, entries });
    expect(refused({ width: '0' })).toEqual(['width']);
    expect(refused({ roll: '-1' })).toEqual(['roll']);
    expect(refused({ roll: '120' })).toEqual(['roll']);
    expect(refused({ allowance: '2' })).toEqual(['allowance']);
    expect(refused({}, ['front.neck'])).toEqual(['at.neck']);
    const gathers = {
      kind: 'gather',
      id: 'g',
      name: 'G',
      on: 'front',
      edge: 'neck',
      fullness: 2,
      divide: 4,
      marker: 'chalk',
    } as const;
    expect(
      refusedAt(
        changed(plainBody(), () => ({ works: [gathers] })),
        flatCollar,
        { at },
      ),
    ).toEqual(['at.neck']);
  });
});
