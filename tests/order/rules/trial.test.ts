import { describe, expect, it } from 'vitest';
import { fresh, runningOrder } from '../../../src/order/running.ts';
import { prepareUndoing, undoing } from '../../../src/order/undoing/undoing.ts';
import { putPart } from '../../../src/outfit/changing/parts.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { writeProblem } from '../../../src/outfit/problem.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import { demo } from '../../outfit/demo-files.ts';

const gate = {
  id: 'trial',
  name: 'The shirt in cheap cloth',
  after: [],
  tack: ['centre-shoulder', 'side-shoulder', 'panel', 'side'],
  trial: true,
  checks: ['The centre front reaches the frill'],
};

const withTrial = (): Outfit => {
  const put = putPart(demo('harbour-clockmaker'), 'shirt', 'gates', gate);
  if (!put.ok) throw new Error(JSON.stringify(put.error));
  return put.value;
};

const orderOf = (outfit: Outfit) => {
  const found = runningOrder(outfit, fresh);
  if (!found.ok) throw new Error(found.error.say);
  return found.value;
};

describe('a trial in cheap cloth', () => {
  it('is cut, tacked and tried on before the good cloth is cut, and before the tucks', () => {
    const { sequence, steps } = orderOf(withTrial());
    const place = (id: string): number => sequence.indexOf(id);
    const own = ['cut-trial', 'tack', 'fit', 'untack'].map((action) => place(`shirt/trial/${action}`));
    expect(own.every((at) => at >= 0)).toBe(true);
    expect(own.toSorted((a, b) => a - b)).toEqual(own);
    expect(own[3]).toBeLessThan(place('shirt/cut-lawn/cut'));
    expect(own[3]).toBeLessThan(place('shirt/front-tucks/mark'));
    expect(steps.get('shirt/trial/cut-trial')).toMatchObject({
      say: 'Cut centre front, back, side front and side back plain from cheap cloth, with wide seam allowances',
      minutes: 26,
      final: false,
    });
  });

  it('says why, with where that stands', () => {
    const { constraints } = orderOf(withTrial());
    const found = constraints.filter(({ rule }) => rule === 'try it in cheap cloth first');
    expect(found.map(({ before, after }) => [before, after])).toEqual([
      ['shirt/trial/untack', 'shirt/cut-lawn/cut'],
    ]);
    expect(found[0]!.source).toMatchObject({ kind: 'published', year: '1907' });
  });

  it('costs nothing to act on, and is not done again when the good cloth is cut anew', () => {
    const outfit = withTrial();
    const running = orderOf(outfit);
    const alterations = [
      { garment: 'shirt', piece: 'centre-front', how: 'anew', edges: [], side: 'both', say: '' },
    ] as const;
    const at = (done: readonly string[]) =>
      undoing(prepareUndoing(outfit, running), alterations, { done, id: 'r-1', say: 'wider' });
    const upTo = running.sequence.slice(0, running.sequence.indexOf('shirt/trial/untack') + 1);
    expect(at(upTo).minutes.total).toBe(0);
    const all = at(running.sequence);
    expect(all.minutes.total).toBeGreaterThan(0);
    expect(all.rework.again.some(({ step }) => step.startsWith('shirt/trial/'))).toBe(false);
  });

  it('is kept in the file, and refused where something is to be sewn for it', () => {
    const outfit = withTrial();
    const back = readOutfit(writeOutfit(outfit));
    expect(back.ok && back.value).toEqual(outfit);
    const wrong = putPart(outfit, 'shirt', 'gates', { ...gate, after: ['panel'] });
    expect(wrong.ok ? '' : wrong.error.map(writeProblem).join(' ')).toContain(
      'comes before anything is sewn',
    );
  });
});
