import { describe, expect, it } from 'vitest';
import { cardFor } from '../../../src/order/card.ts';
import type { Rework, Running } from '../../../src/order/running-types.ts';
import { prepareUndoing, undoing } from '../../../src/order/undoing/undoing.ts';
import type { Alteration, Undoing } from '../../../src/order/undoing/undoing-types.ts';
import { orderOf } from '../../fitting/at-a-try-on.ts';
import { anew, demo, moved } from './demo.ts';

const outfit = demo('harbour-clockmaker');
const { sequence } = orderOf(outfit);
const tried = sequence.indexOf('shirt/try-shirt/fit');

/** Where things stand once some cures are accepted one after another. */
interface Stand {
  readonly done: readonly string[];
  readonly reworks: readonly Rework[];
}

const orderAt = ({ done, reworks }: Stand): Running => orderOf(outfit, { done, reworks });

function accept(stand: Stand, ...alterations: readonly Alteration[]): Stand & { readonly undone: Undoing } {
  const undone = undoing(prepareUndoing(outfit, orderAt(stand)), alterations, {
    done: stand.done,
    id: `r${stand.reworks.length + 1}`,
    say: '',
  });
  const again = new Set(undone.rework.again.map(({ step }) => step));
  return {
    done: stand.done.filter((step) => !again.has(step)),
    reworks: [...stand.reworks, undone.rework],
    undone,
  };
}

/** Everything done that is left. */
const finished = (stand: Stand): Stand => ({ ...stand, done: orderAt(stand).sequence });

const begin: Stand = { done: sequence.slice(0, tried), reworks: [] };
const say = (stand: Stand, step: string): string => orderAt(stand).steps.get(step)?.say ?? '';
const ticks = (stand: Stand, step: string): readonly string[] => {
  const readout = cardFor(outfit, orderAt(stand), step)?.readout;
  return readout?.kind === 'ticks' ? readout.items.map(({ item }) => item) : [];
};
const left = anew('shirt', 'centre-front', { side: 'left' });
const right = anew('shirt', 'centre-front', { side: 'right' });

describe('what is cut again on one side', () => {
  it('asks on its cards for that side alone', () => {
    const stand = accept(begin, left);
    expect(ticks(stand, 'shirt/front-tucks/pin')).toEqual(['left']);
    expect(ticks(stand, 'shirt/front-tucks/stitch').every((item) => item.startsWith('left/'))).toBe(true);
    const marks = cardFor(outfit, orderAt(stand), 'shirt/front-tucks/mark')?.readout;
    expect(marks?.kind === 'marks' && marks.sets.map(({ name }) => name.split(' ')[0])).toEqual(['left']);
    expect(ticks(stand, 'shirt/side/stitch')).toEqual(['left', 'right']);
  });
});

describe('a second cure while the cards of the first are not done', () => {
  it('leaves nothing open that the first has opened: one side and then the other are both sewn again', () => {
    const first = accept(begin, left);
    const both = accept(first, right);
    expect(say(both, 'shirt/front-tucks/pin')).toBe(say(begin, 'shirt/front-tucks/pin'));
    expect(ticks(both, 'shirt/front-tucks/pin')).toEqual(['left', 'right']);
    expect(say(both, 'shirt/panel/stitch')).toMatch(/, only along the centre front$/);
    expect(ticks(both, 'shirt/panel/stitch')).toEqual(['left', 'right']);
    const minutes = (stand: Stand): number => orderAt(stand).steps.get('shirt/panel/stitch')?.minutes ?? 0;
    expect(minutes(both)).toBeCloseTo(2 * minutes(first), 5);
    expect(minutes(both)).toBeLessThanOrEqual(minutes(begin));
  });

  it('says another stretch of the same seam besides the first', () => {
    const both = accept(accept(begin, moved('shirt', 'side-front', 'panel')), left);
    const only = both.undone.rework.again.find(({ step }) => step === 'shirt/panel/stitch')?.only;
    expect(only).toMatch(/^only along .*side front.*; along the centre front on the left$/);
  });

  it('says each part once, however many cures come together', () => {
    let stand: Stand = begin;
    for (const one of [left, right, left, right, left]) stand = accept(stand, one);
    expect(say(stand, 'shirt/panel/stitch')).toMatch(/[^;]*basting, only along the centre front$/);
  });

  it('asks for the whole of it where all of it has come out meanwhile', () => {
    const both = accept(accept(begin, left), anew('shirt', 'centre-front'));
    expect(ticks(both, 'shirt/front-tucks/pin')).toEqual(['left', 'right']);
    expect(both.undone.rework.again.find(({ step }) => step === 'shirt/front-tucks/pin')).not.toHaveProperty(
      'only',
    );
  });
});

describe('a second cure once the cards of the first are done', () => {
  it('does again only what it has opened itself', () => {
    const over = finished(accept(begin, left));
    const second = accept(over, right);
    expect(ticks(second, 'shirt/front-tucks/pin')).toEqual(['right']);
    expect(say(second, 'shirt/panel/stitch')).toMatch(/only along the centre front on the right$/);
  });
});

describe('a card of one side', () => {
  it('says that its figures are those of the other side', () => {
    const cured = accept(begin, left);
    const running = orderAt(cured);
    const advice = (step: string): string =>
      cardFor(outfit, running, step)!
        .advice.map((one) => one.say)
        .join(' ');
    expect(advice('shirt/front-tucks/mark')).toContain('those of the right side, which stays as it is');
    expect(
      cardFor(outfit, orderAt(begin), 'shirt/front-tucks/mark')!
        .advice.map((one) => one.say)
        .join(),
    ).not.toContain('stays as it is');
  });
});
