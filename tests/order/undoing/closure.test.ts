import { describe, expect, it } from 'vitest';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import { order, outfit, pair, work } from '../make.ts';
import { againIn, anew, demo, moved, prepared, upTo } from './demo.ts';

const named = { id: 'r1', say: '' };

describe('how far an alteration reaches', () => {
  const own = (id: string, when: string) =>
    work('own', id, 'front', { when, steps: [{ say: `Embroider ${id}`, station: 'hand', minutes: 20 }] });
  const of = prepared(
    outfit({ pieces: [pair('front', 'neck side hem')], works: [own('free', 'free'), own('late', 'late')] }),
  );
  const again = (alterations: Parameters<typeof undoing>[1]) =>
    againIn(undoing(of.prepared, alterations, { done: of.running.sequence, ...named }));

  it('takes in late work of the maker’s own where an edge moves, for it lies over all; other work stays', () => {
    expect(again([moved('a', 'front', 'side')])).toEqual(['late/own-1']);
    expect(again([anew('a', 'front')])).toEqual(expect.arrayContaining(['free/own-1', 'late/own-1']));
  });

  it('asks nothing of a piece that is not cut yet', () => {
    const { running } = of;
    const early = running.sequence.slice(0, running.sequence.indexOf('a/cut-cotton/cut'));
    expect(undoing(of.prepared, [anew('a', 'front')], { done: early, ...named }).rework.undo).toEqual([]);
    expect(order(of.outfit).sequence).toEqual(running.sequence);
  });
});

describe('holes on the left and buttons on the right', () => {
  const { running, prepared: looked } = prepared(demo('harbour-clockmaker'));
  const again = (side: 'left' | 'right') =>
    undoing(looked, [anew('shirt', 'centre-front', { side })], { done: running.sequence, ...named })
      .rework.again.map(({ step }) => step)
      .filter((step) => step.startsWith('shirt/front-buttons/'))
      .map((step) => step.slice('shirt/front-buttons/'.length));

  it('are each done again with the side that they are on', () => {
    const [left, right] = [again('left'), again('right')];
    expect(left).toEqual(expect.arrayContaining(['mark', 'stitch', 'slit']));
    expect(left).not.toContain('buttons');
    expect(right).toEqual(expect.arrayContaining(['mark-buttons', 'buttons']));
    expect(right).not.toContain('slit');
  });

  it('are done again on both where a piece that is to be moved on the one is forced on the other', () => {
    const found = undoing(
      looked,
      [
        { ...moved('sleeves', 'cuff-inner', 'upper'), side: 'left' },
        anew('sleeves', 'cuff-outer', { side: 'right' }),
      ],
      { done: upTo(running, 'sleeves/cuff-buttons/slit'), ...named },
    );
    expect(found.alterations.map(({ piece, how, side }) => [piece, how, side])).toEqual([
      ['cuff-inner', 'anew', 'both'],
      ['cuff-outer', 'anew', 'right'],
    ]);
  });
});
