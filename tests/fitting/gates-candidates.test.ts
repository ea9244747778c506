import { describe, expect, it } from 'vitest';
import { candidatesFor } from '../../src/fitting/gates-candidates.ts';
import { demo } from '../outfit/demo-files.ts';

const { garments } = demo('harbour-clockmaker');
const garment = (id: string) => garments.find((one) => one.id === id)!;
const inTurn = (id: string) => (join: string) => garment(id).joins.findIndex((one) => one.id === join);
/** Everything is cut. */
const cut = (): boolean => true;

describe('try-ons that could be put in', () => {
  it('tack the seams that give the shape, and leave the collar and what is turned alone', () => {
    const [first] = candidatesFor(garment('shirt'), inTurn('shirt'), () => false, cut);
    expect(first!.after).toEqual([]);
    expect(first!.tack).toEqual(['centre-shoulder', 'side-shoulder', 'panel', 'side']);
  });

  it('hold every such seam once, tacked or sewn', () => {
    for (const id of ['shirt', 'hose']) {
      const all = candidatesFor(garment(id), inTurn(id), () => false, cut);
      const [whole] = all.map(({ tack }) => tack.length).toSorted((a, b) => b - a);
      for (const { after, tack } of all) {
        expect(new Set([...after, ...tack]).size).toBe(whole);
        expect(after.length + tack.length).toBe(whole);
      }
    }
  });

  it('do not tack what has begun, and have a name that is not taken', () => {
    const begun = new Set(['centre-shoulder', 'side-shoulder']);
    const shirt = garment('shirt');
    const taken = { ...shirt, gates: [...shirt.gates, { ...shirt.gates[0]!, id: 'try-plain' }] };
    for (const { id, tack } of candidatesFor(taken, inTurn('shirt'), (join) => begun.has(join), cut)) {
      expect(id).not.toBe('try-plain');
      expect(tack.some((join) => begun.has(join))).toBe(false);
    }
  });

  it('are not what the garment has already, and none where nothing gives it a shape', () => {
    const sleeves = candidatesFor(garment('sleeves'), inTurn('sleeves'), () => false, cut);
    const [there] = garment('sleeves').gates;
    expect(sleeves.every(({ tack }) => tack.length < there!.tack.length)).toBe(true);
    expect(
      candidatesFor(
        garment('neckcloth'),
        () => 0,
        () => false,
        cut,
      ),
    ).toEqual([]);
  });

  it('are also tried in cheap cloth, as long as none of their pieces is cut', () => {
    const shirt = garment('shirt');
    const trials = (isCut: (piece: string) => boolean) =>
      candidatesFor(shirt, inTurn('shirt'), () => false, isCut).filter(({ trial }) => trial);
    const [trial] = trials(() => false);
    expect(trial).toMatchObject({
      trial: true,
      after: [],
      tack: ['centre-shoulder', 'side-shoulder', 'panel', 'side'],
    });
    expect(trials((piece) => piece === 'side-back')).toEqual([]);
    const having = { ...shirt, gates: [{ ...trial!, checks: ['It hangs straight'] }] };
    const again = candidatesFor(
      having,
      inTurn('shirt'),
      () => false,
      () => false,
    );
    expect(again.some((one) => one.trial)).toBe(false);
    // Tacking the good cloth is another thing, and is still offered.
    expect(again.some(({ tack }) => tack.length === 4)).toBe(true);
  });
});
