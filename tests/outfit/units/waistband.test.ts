import { describe, expect, it } from 'vitest';
import { gatheredSkirt } from '../../../src/outfit/units/gathered-skirt.ts';
import { hem } from '../../../src/outfit/units/hem.ts';
import { waistband } from '../../../src/outfit/units/waistband.ts';
import {
  differsBy,
  emptyOutfit,
  garmentOf,
  MIDDLING,
  outOfOrder,
  put,
  refusedAt,
  soundOrder,
} from './made-of.ts';
import { waistOf } from './skirts.ts';

const skirt = (opens = 'back') =>
  put(emptyOutfit('in', MIDDLING, 'Skirt'), gatheredSkirt, { entries: { opens } });
const at = { waist: waistOf('gathered-skirt') };

describe('a waistband', () => {
  it('is as long as the gathered waist and an overlap more, stiffened, and sewn over by its inner layer', () => {
    for (const entries of [{}, { closes: 'hook', stiffening: 'fused' }]) {
      const outfit = put(skirt(), waistband, { at, entries });
      expect(differsBy(outfit, 'waistband-seam')).toBeLessThan(0.01);
      expect(
        outOfOrder(soundOrder(outfit), [
          'gathered-skirt-centre-seam/press',
          'waistband-seam/pin',
          'waistband-seam/stitch',
          'waistband-seam/cover',
        ]),
      ).toEqual([]);
      expect(outOfOrder(soundOrder(outfit), ['waistband-turning/press', 'waistband-layers/stitch'])).toEqual(
        [],
      );
    }
    const hooked = put(skirt(), waistband, { at, entries: { closes: 'hook' } });
    expect(outOfOrder(soundOrder(hooked), ['waistband-seam/cover', 'waistband-hook/own-1'])).toEqual([]);
  });

  it('begins at the opening, wherever the run was begun', () => {
    const [one, two, three, four] = at.waist as [string, string, string, string];
    const outfit = put(skirt(), waistband, { at: { waist: [two, three, four, one] } });
    const [first, ...rest] = garmentOf(outfit).joins.at(-1)!.this;
    expect([first?.piece, rest.at(-1)?.piece]).toEqual(['gathered-skirt-back', 'gathered-skirt-back']);
    soundOrder(outfit);
  });

  it('refuses a waist that is closed all round, and a button that has no room', () => {
    expect(refusedAt(skirt('closed'), waistband, { at })).toEqual(['at.waist']);
    const entered = (entries: Record<string, string>) => refusedAt(skirt(), waistband, { at, entries });
    expect(entered({ diameter: '2' })).toEqual(['diameter']);
    expect(entered({ overlap: '1/2' })).toEqual(['overlap']);
    expect(entered({ depth: '0' })).toEqual(['depth']);
    const hemmed = put(skirt(), hem, { at: { edges: at.waist } });
    expect(refusedAt(hemmed, waistband, { at })).toEqual(['at.waist']);
  });
});
