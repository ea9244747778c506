import { describe, expect, test } from 'vitest';
import { straightFrill } from '../../../src/outfit/units/straight-frill.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, garmentOf, put, refusedAt, soundOrder } from './made-of.ts';
import { HEM, plainBody, RULES } from './plain-body.ts';

const ARMHOLE = ['front.armhole', 'back.armhole'];

describe('a straight frill', () => {
  test.each(RULES)('is gathered to its edge, in %s', (units) => {
    for (const edge of [HEM, ARMHOLE, ['front.neck']]) {
      const outfit = put(plainBody(units), straightFrill, { at: { edge } });
      expect(differsBy(outfit, 'straight-frill-seam')).toBeLessThan(0.001);
      const running = soundOrder(outfit);
      expect(forced(running, 'straight-frill-edges/own-2', 'straight-frill-gathers/rows', 'garment')).toBe(
        true,
      );
      expect(forced(running, 'straight-frill-gathers/rows', 'straight-frill-seam/pin', 'garment')).toBe(true);
    }
  });

  test('goes round where the edge does: a left and a right, closed before they are sewn on', () => {
    const outfit = put(plainBody(), straightFrill, { at: { edge: ARMHOLE } });
    expect(garmentOf(outfit).pieces.at(-1)?.cut).toBe('pair');
    const running = soundOrder(outfit);
    expect(forced(running, 'side/press', 'straight-frill-seam/pin', 'garment')).toBe(true);
    expect(forced(running, 'straight-frill-ends/press', 'straight-frill-seam/pin', 'garment')).toBe(true);
  });

  test('over the side seams is sewn on when they are closed', () => {
    const running = soundOrder(put(plainBody(), straightFrill, { at: { edge: HEM } }));
    expect(forced(running, 'side/press', 'straight-frill-seam/pin', 'garment')).toBe(true);
  });

  test('of strips cut across is joined first, also where it is bound', () => {
    const says = (finish: string) =>
      built(plainBody(), straightFrill, { at: { edge: HEM }, entries: { grain: 'across', finish } })
        .works.flatMap((work) => (work.kind === 'own' ? work.steps.map(({ say }) => say) : [work.kind]))
        .map((say) => say.split(' ').slice(0, 2).join(' '));
    expect(says('hem')).toEqual(['Join the', 'Press the', 'Turn the', 'Press the', 'gather']);
    expect(says('bound')).toEqual([
      'Join the',
      'Press the',
      'Cut the',
      'Bind the',
      'Turn both',
      'Press both',
      'gather',
    ]);
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>, edge: readonly string[] = HEM) =>
      refusedAt(plainBody(), straightFrill, { at: { edge }, entries });
    expect(refused({ goes: 'ring' })).toEqual(['goes']);
    expect(refused({ fullness: '7' })).toEqual(['fullness']);
    expect(refused({ fullness: '0.5' })).toEqual(['fullness']);
    expect(refused({ allowance: '4' })).toEqual(['allowance']);
    expect(refused({ depth: '0' })).toEqual(['depth']);
    expect(refused({}, ['front.hem', 'back.neck'])).toEqual(['at.edge']);
  });
});
