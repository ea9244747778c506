import { describe, expect, it } from 'vitest';
import {
  OPENED_AT_A_CROSSING,
  OPENED_AT_LEAST,
  UNPICKED_IN_A_MINUTE,
} from '../../../src/order/undoing/paces.ts';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import { anew, demo, moved, prepared, upTo } from './demo.ts';

const { running, prepared: looked } = prepared(demo('harbour-clockmaker'));
const undo = (alterations: Parameters<typeof undoing>[1], done: readonly string[] = running.sequence) =>
  undoing(looked, alterations, { done, id: 'r1', say: '' });

describe('minutes of unpicking', () => {
  const done = upTo(running, 'shirt/side/press');
  const side = [moved('shirt', 'side-front', 'side')];

  it('are by the length of every row of stitches that holds, on both sides of the body', () => {
    const found = undo(side, done);
    const long = found.opened.find(({ id }) => id === 'side')?.length ?? 0;
    // Stitched and overlocked; the basting is out already.
    expect(found.rework.undo[0]?.minutes).toBeCloseTo((2 * 2 * long) / UNPICKED_IN_A_MINUTE.value, 1);
    const basted = undo(
      side,
      done.filter((step) => step !== 'shirt/side/unbaste'),
    );
    expect(basted.rework.undo[0]?.minutes).toBeCloseTo((2 * 3 * long) / UNPICKED_IN_A_MINUTE.value, 1);
  });

  it('are never fewer than it takes to find the place and to fasten the ends', () => {
    for (const { garment, piece } of looked.outfit.garments.flatMap(({ id, pieces }) =>
      pieces.map((one) => ({ garment: id, piece: one })),
    ))
      for (const { name } of piece.outline.edges)
        for (const { action, minutes, say } of undo([moved(garment, piece.id, name)]).rework.undo)
          if (action === 'open' || action === 'unpick')
            expect(minutes, say).toBeGreaterThanOrEqual(OPENED_AT_LEAST.value);
    // A little of one seam inside each sleeve takes less to unpick than to begin.
    const [band] = undo([moved('sleeves', 'upper-band', 'lower')]).rework.undo.filter(
      ({ of }) => of.id === 'sleeve-seam',
    );
    expect(OPENED_AT_A_CROSSING.value / UNPICKED_IN_A_MINUTE.value).toBeLessThan(OPENED_AT_LEAST.value);
    expect(band?.minutes).toBe(2 * OPENED_AT_LEAST.value);
  });
});

describe('gathering rows', () => {
  it('come out with the seam that holds them, and are sewn again', () => {
    const { undo: out, again } = undo([moved('sleeves', 'sleeve', 'lower')]).rework;
    expect(out.map(({ of }) => of.id)).toContain('cuff-seam');
    expect(out.map(({ of }) => of.id)).not.toContain('lower-gathers');
    expect(again.map(({ step }) => step)).toContain('sleeves/lower-gathers/rows');
  });
});

describe('the part of a step that is done again', () => {
  it('is all of an elastic, which is one piece, where a part of its casing is opened', () => {
    const left = undo([anew('hose', 'thigh', { side: 'left' })]).rework.again;
    const [turn, elastic] = ['turn', 'elastic'].map((action) =>
      left.find(({ step }) => step === `hose/waist-casing/${action}`),
    );
    expect(turn?.only).toMatch(/^only along the left thigh/);
    expect(elastic).toEqual({
      step: 'hose/waist-casing/elastic',
      minutes: running.steps.get('hose/waist-casing/elastic')?.minutes,
    });
  });

  it('is none of what cannot be taken back, where a seam only crosses', () => {
    const again = undo([moved('shirt', 'centre-front', 'shoulder')]).rework.again.map(({ step }) => step);
    expect(again).toContain('shirt/neck/bind');
    expect(again).not.toContain('shirt/neck/clip');
    const casing = undo([moved('sleeves', 'upper-band', 'front-seam')]).rework.again.map(({ step }) => step);
    expect(casing).toContain('sleeves/band-casing/stitch');
    expect(casing).not.toContain('sleeves/band-casing/elastic');
  });
});
