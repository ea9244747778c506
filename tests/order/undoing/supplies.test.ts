import { describe, expect, it } from 'vitest';
import { toInches, toMm } from '../../../src/length/length.ts';
import { cardFor } from '../../../src/order/card.ts';
import { suppliesAgain } from '../../../src/order/undoing/supplies.ts';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import type { Alteration } from '../../../src/order/undoing/undoing-types.ts';
import { type Data, outfit as made, piece, work } from '../make.ts';
import { anew, demo, moved, prepared, upTo } from './demo.ts';

const { outfit, running, prepared: looked } = prepared(demo('harbour-clockmaker'));
const supplies = (alterations: readonly Alteration[], done: readonly string[] = running.sequence) =>
  suppliesAgain(outfit, running, undoing(looked, alterations, { done, id: 'r1', say: '' }));

describe('what doing it again takes', () => {
  it('is nothing where nothing is undone', () => {
    expect(supplies([])).toEqual({ cloth: [], thread: 0, beads: [] });
    expect(supplies([anew('shirt', 'centre-front')], [])).toEqual({ cloth: [], thread: 0, beads: [] });
  });

  it('is cloth for the pieces that are cut again, of each cloth by itself', () => {
    const found = supplies([anew('shirt', 'centre-front'), anew('sleeves', 'sleeve')]);
    expect(found.cloth.map(({ cloth, pieces }) => [cloth, pieces])).toEqual([
      ['lawn', ['centre-front']],
      ['taffeta', ['sleeve']],
    ]);
    // A front is as long as from shoulder to hem, with its allowances; two lie side by side.
    const front = outfit.garments[0]?.pieces.find(({ id }) => id === 'centre-front');
    const ys = front?.outline.edges.flatMap(({ segments }) => segments.map(({ to }) => to.y)) ?? [];
    const long = Math.max(...ys) - Math.min(...ys) + 2 * (front?.allowance ?? 0);
    expect(found.cloth[0]?.length).toBeGreaterThanOrEqual(long);
    expect(toInches((found.cloth[0]?.length ?? 0) as never)).toBeLessThan(toInches(long as never) + 4);
  });

  it('is cloth for the forced piece too, and none where only a seam moves', () => {
    expect(supplies([anew('shirt', 'collar-upper')]).cloth[0]?.pieces).toEqual([
      'collar-upper',
      'collar-under',
    ]);
    expect(supplies([moved('shirt', 'side-front', 'side')]).cloth).toEqual([]);
  });

  it('is no more cloth or beads for one side than for both', () => {
    const [both, left] = [
      supplies([anew('sleeves', 'sleeve')]),
      supplies([anew('sleeves', 'sleeve', { side: 'left' })]),
    ];
    expect(left.cloth[0]?.length).toBeLessThanOrEqual(both.cloth[0]?.length ?? 0);
    expect(left.beads.map(({ name, count }) => [name, 2 * count])).toEqual(
      both.beads.map(({ name, count }) => [name, count]),
    );
    expect(left.thread).toBeLessThan(both.thread);
    // Two frills are too long to lie side by side.
    const [frills, frill] = (['both', 'left'] as const).map((side) =>
      supplies([anew('shirt', 'frill', { side })]),
    );
    expect(frill?.cloth[0]?.length).toBe((frills?.cloth[0]?.length ?? 0) / 2);
  });

  it('is as many beads as the cards count', () => {
    const card = cardFor(outfit, running, 'sleeves/sleeve-beads/bead');
    if (card?.readout.kind !== 'count') throw new Error('beads are counted');
    const counted = card.readout.lines.reduce((sum, { target }) => sum + target, 0);
    expect(supplies([anew('sleeves', 'sleeve')]).beads).toContainEqual({
      name: card.readout.of,
      count: counted,
    });
    const before = upTo(running, 'sleeves/sleeve-beads/mark');
    expect(supplies([anew('sleeves', 'sleeve')], before).beads).toEqual([]);
  });

  it('is thread for the length that is sewn again', () => {
    // Both side seams: stitched 2.5 times their length, overlocked 14 times, four ends of 3 cm each, and 15 in the hundred.
    const done = upTo(running, 'shirt/side/press');
    const found = undoing(looked, [moved('shirt', 'side-front', 'side')], { done, id: 'r1', say: '' });
    const side = 2 * toMm(found.opened.find(({ id }) => id === 'side')?.length ?? (0 as never));
    const thread = toMm(suppliesAgain(outfit, running, found).thread);
    expect(thread).toBeCloseTo(1.15 * (side * (2.5 + 14) + 4 * 30), 0);
  });

  it('is thread for both rows of gathers', () => {
    const of = prepared(
      made({
        pieces: [piece('frill', 'inner front outer back')],
        works: [
          work('gather', 'gathers', 'frill', { edge: 'inner', fullness: 2, divide: 4, marker: 'thread' }),
        ],
      }),
    );
    const found = undoing(of.prepared, [anew('a', 'frill')], {
      done: of.running.sequence,
      id: 'r1',
      say: '',
    });
    const inner = toMm((of.prepared.rooms.get('a')?.length({ piece: 'frill', edge: 'inner' }) ?? 0) as never);
    expect(toMm(suppliesAgain(of.outfit, of.running, found).thread)).toBeCloseTo(
      1.15 * (2 * 2.5 * inner + 2 * 30),
      0,
    );
  });

  it('is cloth for what a folded band takes up', () => {
    // Two of 690 mm lie side by side on cloth of 1.4 m; 30 mm of turns more, and they do not.
    const block = (works: readonly Data[]) => {
      const outline = {
        unit: 'mm',
        start: [0, 0],
        edges: [
          { name: 'top', to: [660, 0] },
          { name: 'right', to: [660, 500] },
          { name: 'bottom', to: [0, 500] },
          { name: 'left', to: [0, 0] },
        ],
      };
      const of = prepared(
        made({ pieces: [piece('front', '', { cut: 'pair', cutAfterWork: true, outline })], works }),
      );
      const found = undoing(of.prepared, [anew('a', 'front')], {
        done: of.running.sequence,
        id: 'r1',
        say: '',
      });
      return suppliesAgain(of.outfit, of.running, found).cloth[0]?.length ?? 0;
    };
    const band = work('folded-band', 'band', 'front', {
      edge: 'left',
      firstTurn: '10 mm',
      secondTurn: '20 mm',
    });
    expect(block([band])).toBe(2 * block([]));
  });
});
