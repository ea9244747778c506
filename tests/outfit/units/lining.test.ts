import { describe, expect, it } from 'vitest';
import { facing } from '../../../src/outfit/units/facing.ts';
import { gatheredSkirt } from '../../../src/outfit/units/gathered-skirt.ts';
import { hem } from '../../../src/outfit/units/hem.ts';
import { lining } from '../../../src/outfit/units/lining.ts';
import { panelledBodice } from '../../../src/outfit/units/panelled-bodice.ts';
import {
  built,
  differsBy,
  emptyOutfit,
  garmentOf,
  outOfOrder,
  put,
  refusedAt,
  soundOrder,
} from './made-of.ts';
import { waistOf } from './skirts.ts';

const bodice = put(emptyOutfit('in', undefined, 'Bodice'), panelledBodice);
const PIECES = garmentOf(bodice).pieces.map((piece) => piece.id);
const NECK = ['panelled-bodice-centre-front.neck', 'panelled-bodice-back.neck'];

describe('a lining', () => {
  it('copies the pieces and their seams in its own cloth, and is set in when both are made up', () => {
    const outfit = put(bodice, lining, { at: { pieces: PIECES, edges: NECK }, cloths: { lining: 'lining' } });
    const copies = garmentOf(outfit).pieces.filter((piece) => piece.id.startsWith('lining-'));
    expect(copies.map((piece) => piece.cloth)).toEqual(PIECES.map(() => 'lining'));
    for (const join of garmentOf(outfit).joins) expect(differsBy(outfit, join.id)).toBeLessThan(0.01);
    expect(
      outOfOrder(soundOrder(outfit), [
        'lining-panelled-bodice-panel-seam/stitch',
        'lining-panelled-bodice-side-seam/press',
        'lining-seam/pin',
        'lining-seam/turn',
      ]),
    ).toEqual([]);
    expect(
      outOfOrder(soundOrder(outfit), [
        'panelled-bodice-try/fit',
        'panelled-bodice-side-seam/press',
        'lining-seam/pin',
      ]),
    ).toEqual([]);
  });

  it('takes all pieces that hang together where none are chosen, and no facing', () => {
    const made = built(bodice, lining, { at: { edges: NECK } });
    expect(made.pieces.map((piece) => piece.id)).toEqual(PIECES.map((piece) => `lining-${piece}`));
    const faced = put(bodice, facing, {
      at: { edges: ['panelled-bodice-side-front.armhole', 'panelled-bodice-side-back.armhole'] },
    });
    expect(built(faced, lining, { at: { edges: NECK } }).pieces).toHaveLength(PIECES.length);
  });

  it('is hemmed where it hangs, and sewn down inside where the garment ends, when both are together', () => {
    const outfit = put(bodice, lining, { at: { edges: NECK } });
    const own = garmentOf(outfit).works.flatMap((work) => (work.kind === 'own' ? [work] : []));
    const finished = (id: string) =>
      new Set(own.find((work) => work.id === id)?.finishes?.map(({ edge }) => edge));
    expect(finished('lining-lower-edge')).toEqual(new Set(['hem']));
    expect(finished('lining-inside-edges')).toEqual(new Set(['lap', 'opening', 'armhole']));
    expect(
      outOfOrder(soundOrder(outfit), [
        'panelled-bodice-side-seam/press',
        'lining-seam/press',
        'lining-inside-edges/own-1',
        'lining-inside-edges/own-2',
      ]),
    ).toEqual([]);
  });

  it('is gathered where the outside is', () => {
    const skirt = put(emptyOutfit(), gatheredSkirt);
    const at = {
      pieces: ['gathered-skirt-front', 'gathered-skirt-back'],
      edges: waistOf('gathered-skirt'),
    };
    const outfit = put(skirt, lining, { at });
    expect(garmentOf(outfit).works.filter((work) => work.kind === 'gather')).toHaveLength(4);
    expect(
      garmentOf(outfit).joins.find((join) => join.id === 'lining-gathered-skirt-centre-seam'),
    ).toMatchObject({
      stopsAt: 'the opening, 8 in below the waist',
    });
    soundOrder(outfit);
  });

  it('refuses to be set in where nothing is lined, or over a hem', () => {
    const at = { pieces: PIECES.slice(0, 2), edges: NECK };
    expect(refusedAt(bodice, lining, { at })).toEqual(['at.edges']);
    expect(
      refusedAt(bodice, lining, { at: { pieces: PIECES, edges: NECK }, entries: { setIn: '0' } }),
    ).toEqual(['setIn']);
    const hemmed = put(bodice, hem, { at: { edges: NECK } });
    expect(refusedAt(hemmed, lining, { at: { pieces: PIECES, edges: NECK } })).toEqual(['at.edges']);
    expect(refusedAt(bodice, lining)).toEqual(['at.edges']);
  });
});
