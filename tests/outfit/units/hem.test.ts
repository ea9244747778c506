import { describe, expect, it } from 'vitest';
import { circleSkirt } from '../../../src/outfit/units/circle-skirt.ts';
import { hem } from '../../../src/outfit/units/hem.ts';
import { built, emptyOutfit, garmentOf, outOfOrder, put, refusedAt, soundOrder } from './made-of.ts';
import { bodyToWaist, LOWER } from './skirts.ts';

describe('a hem', () => {
  it('runs all round, a ring only where the garment is closed', () => {
    for (const [opens, ring] of [['opening', false] as const, ['fold', true] as const]) {
      const outfit = put(bodyToWaist(opens), hem, { at: { edges: LOWER } });
      expect(garmentOf(outfit).works.at(-1)).toMatchObject({ kind: 'hem', ring });
      expect(
        outOfOrder(soundOrder(outfit), [
          'plain-back-try/fit',
          'plain-back-side-seam/press',
          'hem/level',
          'hem/stitch',
        ]),
      ).toEqual([]);
    }
  });

  it('waits a day on a skirt of circles, unless the maker says otherwise', () => {
    const skirt = put(emptyOutfit(), circleSkirt);
    const at = { edges: ['circle-skirt-back.hem', 'circle-skirt-front.hem'] };
    expect(built(skirt, hem, { at }).works[0]).toMatchObject({ hang: 24 });
    expect(built(skirt, hem, { at, entries: { hang: '0' } }).works[0]).toMatchObject({ hang: 0 });
    expect(built(bodyToWaist('fold'), hem, { at: { edges: LOWER } }).works[0]).toMatchObject({ hang: 0 });
  });

  it('refuses no turning, no such time, and an edge that is hemmed', () => {
    const body = bodyToWaist('fold');
    const at = { edges: LOWER };
    expect(refusedAt(body, hem, { at, entries: { turn: '0' } })).toEqual(['turn']);
    expect(refusedAt(body, hem, { at, entries: { hang: '500' } })).toEqual(['hang']);
    expect(refusedAt(put(body, hem, { at }), hem, { id: 'again', at })).toEqual(['at.edges']);
    expect(refusedAt(body, hem)).toEqual(['at.edges']);
  });
});
