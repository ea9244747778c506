import { describe, expect, it } from 'vitest';
import { OPENED_AT_A_CROSSING } from '../../../src/order/undoing/paces.ts';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import { join, outfit, piece } from '../make.ts';
import { anew, demo, moved, prepared } from './demo.ts';

const { running, prepared: looked } = prepared(demo('harbour-clockmaker'));
const undo = (garment: string, piece: string, edge: string) =>
  undoing(looked, [moved(garment, piece, edge)], { done: running.sequence, id: 'r1', say: '' });

describe('what lies over an opened seam', () => {
  it('is opened as far to either side wherever on a ring the seam ends in it', () => {
    for (const edge of ['front-seam', 'back-seam'])
      expect(
        undo('sleeves', 'upper-band', edge).opened.find(({ id }) => id === 'band-casing'),
        edge,
      ).toMatchObject({
        extent: { kind: 'crossing' },
        length: 2 * OPENED_AT_A_CROSSING.value,
      });
  });

  it('keeps its trims untouched, and without a word, where it is only crossed', () => {
    const found = undo('shirt', 'side-front', 'shoulder');
    expect(found.opened.find(({ id }) => id === 'panel')?.extent).toEqual({
      kind: 'crossing',
      joins: ['side-shoulder'],
    });
    expect(found.stays).toEqual([]);
    expect(found.rework.again.map(({ step }) => step)).not.toContain('shirt/panel/baste-trim');
  });

  it('comes off only where the seam under it is opened', () => {
    const of = prepared(
      outfit({
        pieces: [
          piece('one', 'top right bottom left'),
          piece('two', 'top right bottom left'),
          piece('skirt', 'top right bottom left'),
          piece('braid', 'upper end lower begin'),
        ],
        joins: [
          join('middle', 'one.left', 'two.right'),
          join('waist', 'one.bottom two.bottom', 'skirt.top'),
          join('trim', 'braid.upper', 'one.bottom two.bottom', { seam: 'laid-on' }),
        ],
      }),
    );
    const found = undoing(of.prepared, [anew('a', 'one')], {
      done: of.running.sequence,
      id: 'r1',
      say: '',
    }).opened.filter(({ id }) => id !== 'middle');
    expect(found.map(({ id }) => id).sort()).toEqual(['trim', 'waist']);
    for (const { extent } of found)
      expect(extent).toMatchObject({ kind: 'along', edges: [{ piece: 'one', edge: 'bottom' }] });
  });
});
