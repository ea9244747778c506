import { describe, expect, test } from 'vitest';
import { spell } from '../../../src/outfit/chains.ts';
import { buttonBand } from '../../../src/outfit/units/button-band.ts';
import { standingBand } from '../../../src/outfit/units/standing-band.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, put, refusedAt, soundOrder } from './made-of.ts';
import { changed, NECK, plainBody, RULES } from './plain-body.ts';

const at = { neck: NECK };

describe('a standing band', () => {
  test.each(RULES)('is exactly as long as the neck, with the lap or without, in %s', (units) => {
    for (const closing of ['meets', 'buttoned']) {
      const outfit = put(plainBody(units), standingBand, { at, entries: { closing } });
      expect(differsBy(outfit, 'standing-band-neck')).toBeLessThan(0.5);
      expect(differsBy(outfit, 'standing-band-layers')).toBe(0);
      const running = soundOrder(outfit);
      const steps = [
        'standing-band-turning/press',
        'standing-band-layers/pin',
        'standing-band-layers/press',
        'standing-band-neck/pin',
        'standing-band-neck/cover',
      ];
      for (const [i, step] of steps.slice(1).entries())
        expect([step, forced(running, steps[i]!, step, 'garment')]).toEqual([step, true]);
    }
  });

  test('goes over the lap where the front has one, and has its hole through both layers', () => {
    const { joins, works } = built(plainBody(), standingBand, { at });
    const neck = joins.find(({ id }) => id === 'standing-band-neck')!;
    expect(neck.this.map(spell)).toEqual(['front.lap', ...NECK, 'other:front.lap']);
    expect(works.at(-1)).toMatchObject({ kind: 'buttonholes', through: ['standing-band-inner'], count: 1 });
    const running = soundOrder(put(plainBody(), standingBand, { at }));
    expect(forced(running, 'standing-band-layers/press', 'standing-band-button/mark', 'garment')).toBe(true);
  });

  test('meets in front where nothing laps', () => {
    const plain = changed(plainBody(), ({ pieces }) => ({
      pieces: pieces.map((piece) => ({
        ...piece,
        outline: {
          ...piece.outline,
          edges: piece.outline.edges.map((edge) => (edge.name === 'lap' ? { ...edge, name: 'step' } : edge)),
        },
      })),
    }));
    expect(built(plain, standingBand, { at }).works.map(({ kind }) => kind)).not.toContain('buttonholes');
    expect(refusedAt(plain, standingBand, { at, entries: { closing: 'buttoned' } })).toEqual(['closing']);
  });

  test('meets where the top of a front band is closed, and goes over one that was left for it', () => {
    const banded = (end: string) =>
      put(plainBody(), buttonBand, { at: { opening: ['front.opening'] }, entries: { end } });
    const closing = (end: string) => built(banded(end), standingBand, { at }).proposed.closing?.value;
    expect([closing('closed'), closing('open')]).toEqual(['meets', 'buttoned']);
    const entries = { closing: 'buttoned' };
    expect(refusedAt(banded('closed'), standingBand, { at, entries })).toEqual(['closing']);
    expect(refusedAt(banded('open'), standingBand, { at, entries })).toEqual([]);
    soundOrder(put(banded('open'), standingBand, { at }));
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), standingBand, { at, entries });
    expect(refused({ height: '0' })).toEqual(['height']);
    expect(refused({ height: '200' })).toEqual(['height']);
    expect(refused({ rise: '-2' })).toEqual(['rise']);
    expect(refused({ rise: '120' })).toEqual(['rise']);
    expect(refused({ diameter: '40' })).toEqual(['diameter']);
    expect(refused({ diameter: '0' })).toEqual(['diameter']);
    expect(refused({ thickness: '-1' })).toEqual(['thickness']);
  });
});
