import { describe, expect, test } from 'vitest';
import { type Effect, effectOf } from '../../src/order/effect.ts';
import type { Standing } from '../../src/order/running-types.ts';
import type { StepId } from '../../src/order/step.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { change, look } from '../outfit/spoil.ts';
import { data, gate, join, order, outfit, type Parts, pair, piece, twoTucks, work } from './make.ts';

const parts: Parts = {
  pieces: [
    pair('front', 'neck shoulder armhole side hem opening'),
    piece('back', 'neck shoulder armhole side hem', { cut: 'fold' }),
  ],
  works: [work('tucks', 'tucks', 'front', { from: 'opening', marker: 'chalk', family: twoTucks })],
  joins: [join('shoulder', 'front.shoulder', 'back.shoulder'), join('side', 'front.side', 'back.side')],
  gates: [gate('try', 'side')],
};
const G = '/garments/0';

const read = (raw: unknown): Outfit => {
  const found = readOutfit(raw);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};
const before = outfit(parts);
/** The same outfit with one place of its file changed. */
const changed = (at: string, value?: unknown): Outfit =>
  read(change(structuredClone(data(parts)), at, value));

function effect(now: Outfit, done: readonly StepId[] = [], was: Outfit | undefined = before): Effect {
  const standing: Partial<Standing> = { done };
  return effectOf(
    was && { outfit: was, running: order(was, standing) },
    { outfit: now, running: order(now, standing) },
    done,
  );
}
const ids = (steps: readonly { readonly id: StepId }[]): readonly StepId[] => steps.map(({ id }) => id);
const hows = (list: Effect['changed']): Readonly<Record<StepId, string>> =>
  Object.fromEntries(list.map(({ step, how }) => [step.id, how]));

const withoutSide = { ...parts, joins: [parts.joins![0]!], gates: [] };

describe('what a change does to the order of making', () => {
  test('nothing where nothing changed', () => {
    const found = effect(outfit(parts), ['a/shoulder/pin']);
    expect({ ...found, minutes: undefined }).toEqual({
      added: [],
      gone: [],
      changed: [],
      doneGone: [],
      doneChanged: [],
      doneBack: [],
      minutes: undefined,
      touchesDone: false,
    });
    expect(found.minutes.after).toBe(found.minutes.before);
  });

  test('steps that come and steps that go, with the minutes still to do', () => {
    const less = outfit(withoutSide);
    const gone = effect(less);
    expect(ids(gone.gone)).toContain('a/side/stitch');
    expect(gone.gone.every(({ of }) => of.id === 'side' || of.id === 'try')).toBe(true);
    expect(gone.added).toEqual([]);
    const saved = gone.gone.reduce((sum, step) => sum + step.minutes, 0);
    expect(saved).toBeGreaterThan(0);
    expect(gone.minutes.before - gone.minutes.after).toBe(saved);

    const added = effect(before, [], less);
    expect(ids(added.added).toSorted()).toEqual(ids(gone.gone).toSorted());
    expect(added.touchesDone).toBe(false);
  });

  test('everything is added where there was no order yet', () => {
    const found = effectOf(undefined, { outfit: before, running: order(before) }, []);
    expect(ids(found.added)).toEqual(order(before).sequence);
    expect(found.minutes.before).toBe(0);
  });

  test('a step with another figure on its card, named with both figures', () => {
    const deeper = hows(effect(changed(`${G}/joins/1/depth`, '10 mm')).changed);
    expect(deeper['a/side/stitch']).toBe('seam, from the edge: 15 mm → 10 mm');
    expect(deeper['a/shoulder/stitch']).toBeUndefined();
  });

  test('a step whose marks lie elsewhere, and one that marks more of them', () => {
    const moved = hows(effect(changed(`${G}/works/0/family/spacing`, '25 mm')).changed);
    expect(moved['a/tucks/mark']).toMatch(/^[^:]+: \d+ mm → \d+ mm/);
    const more = hows(effect(changed(`${G}/works/0/family/depths`, ['5 mm', '5 mm', '5 mm'])).changed);
    expect(more['a/tucks/mark']).toMatch(/\d+ → \d+ marks/);
    expect(more['a/tucks/stitch']).toContain('another list to tick');
  });

  test('a cutting of another shape or seam allowance', () => {
    const [cutting] = effect(changed(`${G}/pieces/0/allowance`, '10 mm')).changed;
    expect(cutting?.step.action).toBe('cut');
    expect(cutting?.how).toBe('Front: another seam allowance');
    // The corner after the first edge, 10 mm further out.
    const { outline } = look(data(parts), `${G}/pieces/0`) as { outline: { edges: { to: number[] }[] } };
    const [x = 0, y = 0] = outline.edges[0]?.to ?? [];
    const wider = effect(changed(`${G}/pieces/0/outline/edges/0/to`, [x + 10, y]));
    expect(wider.changed.find(({ step }) => step.action === 'cut')?.how).toBe('Front: another shape');
    expect(wider.changed.every(({ step }) => step.of.kind === 'piece' || step.of.id === 'tucks')).toBe(true);
  });

  test('a step that says something else, with what it said', () => {
    const found = hows(effect(changed(`${G}/joins/1/name`, 'Underarm seam')).changed);
    expect(found['a/side/stitch']).toMatch(/^was “.*[Ss]ide.*”$/);
  });

  test('a step with another thread or needle', () => {
    const found = hows(effect(changed('/cloths/0/thread', 'scarlet')).changed);
    expect(found['a/side/stitch']).toBe('thread: white → scarlet');
  });

  test('done steps are told apart from those still to do, and their minutes are not counted again', () => {
    const done = ['a/shoulder/pin', 'a/side/pin', 'a/side/stitch'];
    const found = effect(outfit(withoutSide), done);
    expect(ids(found.doneGone).toSorted()).toEqual(['a/side/pin', 'a/side/stitch']);
    expect(ids(found.gone)).not.toContain('a/side/stitch');
    expect(found.touchesDone).toBe(true);
    const undone = effect(outfit(withoutSide)).minutes;
    expect(found.minutes.before).toBeLessThan(undone.before);

    const deeper = effect(changed(`${G}/joins/1/depth`, '10 mm'), done);
    expect(hows(deeper.doneChanged)['a/side/stitch']).toContain('15 mm → 10 mm');
    expect(hows(deeper.changed)['a/side/stitch']).toBeUndefined();
    expect(deeper.touchesDone).toBe(true);
  });

  test('a change that touches only what is still to do does not touch what is done', () => {
    const found = effect(changed(`${G}/joins/1/depth`, '10 mm'), ['a/shoulder/pin', 'a/shoulder/stitch']);
    expect(found.changed.length).toBeGreaterThan(0);
    expect(found.touchesDone).toBe(false);
  });

  test('a long list of differences is cut short, with how many more there are', () => {
    const tucks = { depths: Array.from({ length: 9 }, () => '5 mm'), spacing: '20 mm', first: '10 mm' };
    const many = (spacing: string) =>
      outfit({
        ...parts,
        works: [
          work('tucks', 'tucks', 'front', {
            from: 'opening',
            marker: 'chalk',
            family: { ...tucks, spacing },
          }),
        ],
      });
    const found = effect(many('24 mm'), [], many('20 mm'));
    expect(hows(found.changed)['a/tucks/mark']).toMatch(/; and \d+ more$/);
  });
});

describe('steps that are done and no longer exist', () => {
  const done = ['a/shoulder/pin', 'a/side/pin', 'a/side/stitch'];

  test('do not count in the order, and nothing else is disturbed', () => {
    const running = order(outfit(withoutSide), { done });
    expect(running.doneCount).toBe(1);
    expect(running.sequence[0]).toBe('a/shoulder/pin');
    expect(running.sequence).not.toContain('a/side/pin');
    expect(new Set(running.sequence).size).toBe(running.steps.size);
  });

  test('count again as soon as what they were about is there again', () => {
    const back = effect(before, done, outfit(withoutSide));
    expect(ids(back.doneBack).toSorted()).toEqual(['a/side/pin', 'a/side/stitch']);
    expect(ids(back.added)).not.toContain('a/side/pin');
    expect(back.touchesDone).toBe(false);
    expect(order(before, { done }).doneCount).toBe(3);
    expect(order(before, { done }).sequence.slice(0, 3)).toEqual(done);
  });
});
