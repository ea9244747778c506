import { describe, expect, it } from 'vitest';
import { forced, foundBy, join, orderOf, pair } from '../make.ts';

const leg = [
  pair('upper', 'top inner knee outer'),
  pair('lower', 'knee inner foot outer'),
  pair('frill', 'edge end free start'),
];
const knee = join('knee', 'upper.knee', 'lower.knee', { seam: 'stretch' });

describe('the seam, then what lies over it', () => {
  it('sews and presses the seam before a frill is laid over it', () => {
    const laid = join('frill', 'frill.edge', 'lower.knee', { id: 'laid', seam: 'laid-on' });
    const running = orderOf({ pieces: leg, joins: [laid, knee] });
    expect(forced(running, 'knee/press', 'laid/pin')).toBe(true);
  });

  it('says nothing of a frill that lies elsewhere', () => {
    const laid = join('frill', 'frill.edge', 'lower.foot', { id: 'laid', seam: 'laid-on' });
    const running = orderOf({ pieces: leg, joins: [laid, knee] });
    expect(foundBy(running, 'the seam, then what lies over it')).toEqual([]);
  });
});

describe('a trim caught where both sides run over the same seam', () => {
  it('is basted after that seam, without a ring', () => {
    const inseam = join('inseam', 'upper.inner lower.inner', 'upper.outer lower.outer', {
      catches: [{ trim: 'frill.end', basteTo: 'this', depth: '6 mm' }],
    });
    const running = orderOf({ pieces: leg, joins: [inseam, knee] });
    expect(forced(running, 'knee/press', 'inseam/baste-trim')).toBe(true);
  });
});
