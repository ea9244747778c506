import { describe, expect, it } from 'vitest';
import { seeingAt } from '../../src/fitting/gates-shown.ts';
import { type GateBasis, gatesWorth, type Seeable } from '../../src/fitting/gates-worth.ts';
import { fresh, runningOrder } from '../../src/order/running.ts';
import type { Running, Standing } from '../../src/order/running-types.ts';
import { costOfFindingLate } from '../../src/order/undoing/late.ts';
import { prepareUndoing, undoingMinutes } from '../../src/order/undoing/undoing.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { demo } from '../outfit/demo-files.ts';

const outfit = demo('harbour-clockmaker');

const orderOf = (of: Outfit, standing: Standing = fresh): Running => {
  const found = runningOrder(of, standing);
  if (!found.ok) throw new Error(found.error.say);
  return found.value;
};

const misfit = (garment: string, piece: string, chance: number, more: Partial<Seeable> = {}): Seeable => ({
  id: `${garment}/${piece}`,
  name: `${piece} wrong`,
  seen: `The ${piece} is wrong`,
  chance,
  alterations: [{ garment, piece, how: 'anew', edges: [], side: 'both', say: '' }],
  ...more,
});

const basisOf = (misfits: readonly Seeable[], standing: Standing = fresh, of = outfit): GateBasis => {
  const running = orderOf(of, standing);
  const curve = costOfFindingLate(prepareUndoing(of, running), misfits);
  return { outfit: of, running, standing, misfits, curve };
};

const front = misfit('shirt', 'centre-front', 0.5);

describe('try-ons that would save more than they cost', () => {
  it('tacks the shirt before its seams are sewn, in an order that exists, and says what that saves', () => {
    const basis = basisOf([front]);
    const [best] = gatesWorth(basis, 'shirt');
    const after = orderOf(best!.after);
    const fit = `shirt/${best!.gate.id}/fit`;
    expect(after.sequence.indexOf(fit)).toBe(best!.place);
    expect(best!.gate.tack).toContain('panel');
    const first = (running: Running, join: string): number =>
      running.sequence.findIndex((id) => id.startsWith(`shirt/${join}/`));
    for (const join of best!.gate.tack) expect(first(after, join)).toBeGreaterThan(best!.place);

    const old = basis.running.sequence.indexOf('shirt/try-shirt/fit');
    const cost = (running: Running, of: Outfit, done: number): number =>
      0.5 *
      undoingMinutes(prepareUndoing(of, running), front.alterations, {
        done: running.sequence.slice(0, done),
      });
    expect(best!.late).toBeCloseTo(cost(basis.running, outfit, old), 6);
    expect(best!.soon).toBeCloseTo(cost(after, best!.after, best!.place), 6);
    const minutes = [...after.steps.values()]
      .filter((step) => step.of.id === best!.gate.id)
      .reduce((sum, step) => sum + step.minutes, 0);
    expect(best!.minutes).toBe(minutes);
    expect(best!.saves).toBeCloseTo(best!.late - best!.soon - minutes, 6);
    expect(best!.saves).toBeGreaterThan(0);
    expect(best!.gate.checks).toContain('Look for this: the centre-front is wrong');
  });

  it('comes after the tucks of a piece that is cut to its outline when they are sewn', () => {
    const cut = { ...fresh, done: ['shirt/cut-lawn/cut'] };
    const [best] = gatesWorth(basisOf([front], cut), 'shirt');
    const after = orderOf(best!.after, cut).sequence;
    expect(after.findLastIndex((id) => id.startsWith('shirt/front-tucks/'))).toBeLessThan(best!.place);
  });

  it('is a trial in cheap cloth, before the tucks, as long as the good cloth is not cut', () => {
    const [best] = gatesWorth(basisOf([front]), 'shirt');
    expect(best!.gate.trial).toBe(true);
    expect(best!.soon).toBe(0);
    const after = orderOf(best!.after).sequence;
    expect(after.findIndex((id) => id.startsWith('shirt/cut-lawn/'))).toBeGreaterThan(best!.place);
  });

  it('is not offered for what is too unlikely to earn its minutes, nor where nothing can fit badly', () => {
    expect(gatesWorth(basisOf([misfit('shirt', 'centre-front', 0.01)]), 'shirt')).toEqual([]);
    expect(gatesWorth(basisOf([front]), 'neckcloth')).toEqual([]);
    expect(gatesWorth(basisOf([front]), 'none')).toEqual([]);
  });

  it('offers no second one that finds only what the first has found, and none once it is put in', () => {
    const offers = gatesWorth(basisOf([front]), 'shirt');
    expect(offers).toHaveLength(1);
    expect(gatesWorth(basisOf([front], fresh, offers[0]!.after), 'shirt')).toEqual([]);
  });

  it('asks no more of seams that have begun, and nothing where a try-on is over', () => {
    const { sequence } = orderOf(outfit);
    const begun = sequence.findIndex((id) => id.startsWith('shirt/centre-shoulder/')) + 1;
    const part = gatesWorth(basisOf([front], { ...fresh, done: sequence.slice(0, begun) }), 'shirt');
    for (const { gate, place } of part) {
      expect(gate.tack).not.toContain('centre-shoulder');
      expect(place).toBeGreaterThanOrEqual(begun);
    }
    const tried = sequence.indexOf('shirt/try-shirt/fit') + 1;
    expect(gatesWorth(basisOf([front], { ...fresh, done: sequence.slice(0, tried) }), 'shirt')).toEqual([]);
  });

  it('does not count on seeing how a frill lies before it is sewn in', () => {
    const frill = misfit('shirt', 'centre-front', 0.9, { needs: 'trim' });
    expect(gatesWorth(basisOf([frill]), 'shirt').every(({ gate }) => gate.after.includes('panel'))).toBe(
      true,
    );
  });
});

describe('what a try-on lets the maker see', () => {
  it('is what is worn at it, and not what is made by itself', () => {
    const running = orderOf(outfit);
    const shirt = outfit.garments.find(({ id }) => id === 'shirt')!;
    const seeing = seeingAt(running, shirt, 'try-shirt')!;
    expect(seeing.place).toBe(running.sequence.indexOf('shirt/try-shirt/fit'));
    expect(seeing.sees(front.alterations, undefined)).toBe(true);
    const sleeves = outfit.garments.find(({ id }) => id === 'sleeves')!;
    const plain = seeingAt(running, sleeves, 'try-plain-sleeve')!;
    expect(plain.sees(misfit('sleeves', 'sleeve', 1).alterations, undefined)).toBe(true);
    expect(plain.sees(misfit('sleeves', 'sleeve', 1).alterations, 'beads')).toBe(false);
    expect(plain.sees(misfit('sleeves', 'cuff-outer', 1).alterations, undefined)).toBe(false);
    expect(seeingAt(running, shirt, 'no-such-try-on')).toBeUndefined();
  });
});
