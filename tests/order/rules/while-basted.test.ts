import { describe, expect, it } from 'vitest';
import { forced, foundBy, gate, join, orderOf, pair, piece } from '../make.ts';

const front = pair('front', 'neck shoulder armhole side hem opening');
const back = piece('back', 'neck shoulder armhole side hem', { cut: 'fold' });
const collar = piece('collar', 'neck outer end', { cut: 'fold' });
const seam = (id: string, extra = {}) => join(id, `front.${id}`, `back.${id}`, extra);
const both = { tacked: true };

describe('two seams basted for the same try-on', () => {
  const running = orderOf({
    pieces: [front, back],
    joins: [seam('shoulder', both), seam('side', { ...both, closes: true })],
    gates: [gate('try', 'shoulder side')],
  });

  it('are both basted for it and both stitched after it', () => {
    for (const one of ['shoulder', 'side']) {
      expect(forced(running, `${one}/baste`, 'try/fit')).toBe(true);
      expect(forced(running, 'try/fit', `${one}/stitch`)).toBe(true);
    }
  });

  it('keep their turn, among the bastings and among the stitchings', () => {
    expect(forced(running, 'shoulder/baste', 'side/pin')).toBe(true);
    expect(forced(running, 'shoulder/press', 'side/stitch')).toBe(true);
  });

  it('keep it whole where only one of them is basted', () => {
    const one = orderOf({
      pieces: [front, back],
      joins: [seam('shoulder'), seam('side', { ...both, closes: true })],
      gates: [gate('try', 'shoulder side')],
    });
    expect(forced(one, 'shoulder/press', 'side/pin')).toBe(true);
  });
});

describe('what is only easier flat', () => {
  const neck = join(
    'neck',
    'front.neck back.neck other:back.neck other:front.neck',
    'collar.neck other:collar.neck',
  );

  it('gives way where it would close a ring: a collar over shoulders that are basted with the sides', () => {
    const running = orderOf({
      pieces: [front, back, collar],
      joins: [seam('shoulder', both), seam('side', { ...both, closes: true }), neck],
      gates: [gate('try', 'shoulder side')],
    });
    expect(forced(running, 'shoulder/press', 'neck/pin')).toBe(true);
    expect(forced(running, 'neck/press', 'side/pin')).toBe(false);
    expect(foundBy(running, 'flat before tube')).not.toContain('neck/press → side/pin');
  });

  it('holds everywhere else', () => {
    const running = orderOf({
      pieces: [front, back, collar],
      joins: [seam('shoulder'), seam('side', { ...both, closes: true }), neck],
      gates: [gate('try', 'side')],
    });
    expect(forced(running, 'neck/press', 'side/pin')).toBe(true);
  });
});
