import { describe, expect, it } from 'vitest';
import { candidatesFor } from '../../src/fitting/gates-candidates.ts';
import { demo } from '../outfit/demo-files.ts';

const { garments } = demo('harbour-clockmaker');
const garment = (id: string) => garments.find((one) => one.id === id)!;
const inTurn = (id: string) => (join: string) => garment(id).joins.findIndex((one) => one.id === join);

describe('try-ons that could be put in', () => {
  it('tack the seams that give the shape, and leave the collar and what is turned alone', () => {
    const [first] = candidatesFor(garment('shirt'), inTurn('shirt'), () => false);
    expect(first!.after).toEqual([]);
    expect(first!.tack).toEqual(['centre-shoulder', 'side-shoulder', 'panel', 'side']);
  });

  it('hold every such seam once, tacked or sewn', () => {
    for (const id of ['shirt', 'hose']) {
      const all = candidatesFor(garment(id), inTurn(id), () => false);
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
    for (const { id, tack } of candidatesFor(taken, inTurn('shirt'), (join) => begun.has(join))) {
      expect(id).not.toBe('try-plain');
      expect(tack.some((join) => begun.has(join))).toBe(false);
    }
  });

  it('are not what the garment has already, and none where nothing gives it a shape', () => {
    const sleeves = candidatesFor(garment('sleeves'), inTurn('sleeves'), () => false);
    const [there] = garment('sleeves').gates;
    expect(sleeves.every(({ tack }) => tack.length < there!.tack.length)).toBe(true);
    expect(
      candidatesFor(
        garment('neckcloth'),
        () => 0,
        () => false,
      ),
    ).toEqual([]);
  });
});
