import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { insetFrill } from '../../../src/outfit/units/inset-frill.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, garmentOf, put, refusedAt, soundOrder } from './made-of.ts';
import { changed, plainBody, RULES } from './plain-body.ts';

const at = { seam: ['shoulder'] };

describe('an inset frill', () => {
  test.each(RULES)('is finished, gathered and basted before its seam is sewn deeper, in %s', (units) => {
    const outfit = put(plainBody(units), insetFrill, { at });
    const [caught] = garmentOf(outfit).joins.find(({ id }) => id === 'shoulder')!.catches;
    expect(caught).toMatchObject({ trim: { piece: 'inset-frill', edge: 'seam' }, basteTo: 'this' });
    expect(caught!.depth).toBeLessThan(mm(15));
    const running = soundOrder(outfit);
    const turn = [
      'inset-frill-binding/fasten',
      'inset-frill-edges/own-2',
      'inset-frill-gathers/rows',
      'shoulder/baste-trim',
      'shoulder/stitch',
    ];
    for (const [i, step] of turn.slice(1).entries())
      expect([step, forced(running, turn[i]!, step, 'garment')]).toEqual([step, true]);
  });

  test('is as long as its seam times its fullness, a left and a right', () => {
    const { pieces, works } = built(plainBody(), insetFrill, { at, entries: { fullness: '2', marks: '4' } });
    const shoulder = Math.hypot(125, 45);
    expect(edgeLengths(pieces[0]!.outline).get('seam')! / 1e6).toBeCloseTo(2 * shoulder, 3);
    expect(pieces[0]).toMatchObject({ cut: 'pair', allowance: mm(15), grain: 90 });
    expect(works.at(-1)).toMatchObject({ kind: 'gather', fullness: 2, divide: 4 });
  });

  test('is basted to the side that is not gathered, and as long as that', () => {
    const gathers = {
      kind: 'gather',
      id: 'g',
      name: 'G',
      on: 'front',
      edge: 'shoulder',
      fullness: 2,
      divide: 4,
      marker: 'chalk',
    } as const;
    const outfit = changed(plainBody(), () => ({ works: [gathers] }));
    expect(built(outfit, insetFrill, { at }).catches[0]?.caught.basteTo).toBe('to');
  });

  test('joined into a ring where its seam is one has no ends to hem', () => {
    const ring = changed(plainBody(), ({ joins }) => ({
      joins: joins.map((one) => ({ ...one, ring: one.id === 'side' })),
    }));
    const says = (outfit: typeof ring) =>
      JSON.stringify(built(outfit, insetFrill, { at: { seam: ['side'] }, entries: { finish: 'hem' } }).works);
    expect(says(ring)).toContain('Join the two ends');
    expect(says(ring)).not.toContain('both ends');
    expect(says(plainBody())).toContain('the outer edge and both ends');
  });

  test('needs a seam that is deeper than its basting', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), insetFrill, { at, entries });
    expect(refused({ baste: '15' })).toEqual(['baste']);
    expect(refused({ baste: '14.9' })).toEqual([]);
    expect(refused({ baste: '0' })).toEqual(['baste']);
    const shallow = changed(plainBody(), ({ joins }) => ({
      joins: joins.map((one) => ({ ...one, depth: mm(6) })),
    }));
    expect(refusedAt(shallow, insetFrill, { at })).toEqual(['at.seam']);
  });

  test('says which figure cannot be sewn', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), insetFrill, { at, entries });
    expect(refused({ fullness: '0.9' })).toEqual(['fullness']);
    expect(refused({ fullness: '6.5' })).toEqual(['fullness']);
    expect(refused({ depth: '0' })).toEqual(['depth']);
    expect(refused({ depth: '1500' })).toEqual(['cloth.main']);
    expect(refusedAt(plainBody(), insetFrill, { at: { seam: ['sholder'] } })).toEqual(['at.seam']);
  });
});
