import { describe, expect, it } from 'vitest';
import { darts } from '../../../src/outfit/units/darts.ts';
import { plainFront } from '../../../src/outfit/units/plain-front.ts';
import { princessFront } from '../../../src/outfit/units/princess-front.ts';
import { built, emptyOutfit, outOfOrder, put, refusedAt, soundOrder } from './made-of.ts';

const front = put(emptyOutfit(), plainFront);
const at = { edge: ['plain-front.hem'] };
const said = (entries: Record<string, string>, edge: string) => {
  const [work] = built(front, darts, { entries, at: { edge: [edge] } }).works;
  return work?.kind === 'own' ? work.steps[0]?.say : undefined;
};

describe('darts', () => {
  it('are marked from the end of the edge that lies nearest the middle, or from its upper end', () => {
    expect(said({ count: '2' }, 'plain-front.hem')).toBe(
      'Mark on each front the middle of the darts 3 1/2 in, 5 in along the hem from its opening end, 3/4 in wide there, and their points 5 in into the piece',
    );
    expect(said({ from: '2' }, 'plain-front.side')).toBe(
      'Mark on each front the middle of the dart 2 in along the side from its armhole end, 3/4 in wide there, and its point 5 in into the piece',
    );
    expect(said({ from: '2 1/2' }, 'plain-front.shoulder')).toContain('from its neck end');
  });

  it('are sewn while the piece is flat, and say what the edge measures closed', () => {
    const panels = put(emptyOutfit(), princessFront);
    const outfit = put(panels, darts, { at: { edge: ['princess-front-side.side'] } });
    expect(
      outOfOrder(soundOrder(outfit), [
        'darts/own-1',
        'darts/own-3',
        'darts/own-4',
        'princess-front-panel-seam/pin',
      ]),
    ).toEqual([]);
    expect(built(front, darts, { at }).advice[0]?.say).toContain('10 1/2 in; closed it is 9 3/4 in');
  });

  it('refuse to run past the edge or into each other', () => {
    const entered = (entries: Record<string, string>) => refusedAt(front, darts, { at, entries });
    expect(entered({ from: '10 1/4' })).toEqual(['from']);
    expect(entered({ from: '1/4' })).toEqual(['from']);
    expect(entered({ count: '2', apart: '1/2' })).toEqual(['apart']);
    expect(entered({ count: '0' })).toEqual(['count']);
    expect(entered({ width: '0' })).toEqual(['width']);
    expect(refusedAt(front, darts, { at: { edge: ['plain-front.hem', 'plain-front.side'] } })).toEqual([
      'at.edge',
    ]);
  });
});
