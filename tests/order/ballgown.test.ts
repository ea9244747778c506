import { describe, expect, it } from 'vitest';
import { demo } from '../outfit/demo-files.ts';
import { forced, order } from './make.ts';

const dress = order(demo('glasshouse-astronomer'));

/** Pairs of steps that are not forced to come in this order, whatever the arrangement. */
const notForced = (...pairs: readonly (readonly [before: string, after: string])[]): readonly string[] =>
  pairs
    .filter(([before, after]) => !forced(dress, before, after, 'ballgown'))
    .map((pair) => pair.join(' before '));

describe('a ballroom dress of ready-made parts', () => {
  it('has its decoration done while the pieces lie flat', () => {
    expect(
      notForced(
        ['lattice/mark', 'lattice/bead'],
        ['lattice/cluster', 'front-panel-seam/pin'],
        ['leaves-work/own-9', 'sleeve-widest/pin'],
        ['rolled-edge-of-the-floats/own-1', 'rolled-edge-of-the-floats/own-2'],
        ['hem-frill-1-stay/stitch', 'hem-frill-1-clips/own-1'],
      ),
    ).toEqual([]);
  });

  it('has its bodice fitted while the sides are basted, and its tubes closed before they are joined', () => {
    expect(
      notForced(
        ['back-side-seam/baste', 'back-try/fit'],
        ['back-try/fit', 'back-side-seam/stitch'],
        ['back-side-seam/press', 'skirt-waist-seam/pin'],
        ['skirt-side-seam/press', 'skirt-waist-seam/pin'],
        ['sleeve-seam/press', 'sleeve-armhole/pin'],
        ['sleeve-armhole/baste', 'sleeve-try/fit'],
      ),
    ).toEqual([]);
  });

  it('has its frill and its floats sewn on in the round, its facing after the shoulders, and is danced in before the hem', () => {
    expect(
      notForced(
        ['sleeve-seam/press', 'float-seam/pin'],
        ['hem-frill-ends-2/press', 'hem-frill-seam/pin'],
        ['skirt-side-seam/press', 'hem-frill-seam/pin'],
        ['back-shoulder-seam/press', 'neck-facing-seam/pin'],
        ['neck-facing-back-shoulder-seam/press', 'neck-facing-seam/pin'],
        ['hem-frill-seam/press', 'the-dress-with-its-frill-danced-in/fit'],
        ['hem-frill-seam/press', 'hem-frill-hem/level'],
        ['bow-seam/press', 'bow-making/own-1'],
      ),
    ).toEqual([]);
  });

  it('says nothing of corners or of an open rest where a facing goes all along a neck', () => {
    const said = (action: string): string =>
      dress.steps.get(`ballgown/neck-facing-seam/${action}`)?.say ?? '';
    expect(said('stitch')).toBe('Stitch the neck facing seam');
    expect(said('turn')).not.toContain('corners');
    expect(dress.steps.get('ballgown/bow-seam/stitch')?.say).toContain('leaving the rest open');
  });
});
