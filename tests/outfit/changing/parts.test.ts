import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { partOf, putPart, removePart, renameEdge, takeReady } from '../../../src/outfit/changing/parts.ts';
import { changeUnit, makeAnew } from '../../../src/outfit/changing/units.ts';
import type { Gate, Join, Outfit } from '../../../src/outfit/outfit.ts';
import { garmentOf, idsOf, made, only, wrongWith } from './shirt.ts';

const shirt = (): Outfit => garmentOf('plain-front', 'plain-back', 'stand-and-collar', 'plain-sleeve');
const joinOf = (outfit: Outfit, id: string): Join => only(outfit).joins.find((join) => join.id === id)!;
const gateOf = (outfit: Outfit, id: string): Gate => only(outfit).gates.find((gate) => gate.id === id)!;
const useOf = (outfit: Outfit, id: string) => only(outfit).units.find((use) => use.id === id)!;
const kinds = (also: readonly { kind: string; id: string }[]) => also.map(({ kind, id }) => `${kind} ${id}`);

describe('putting a part in by hand', () => {
  const pocket = {
    ...only(garmentOf('plain-front')).pieces[0]!,
    id: 'pocket',
    name: 'Pocket',
    cut: 'one' as const,
  };

  test('adds one of the maker’s own, which no unit brought and making anew leaves alone', () => {
    const outfit = made(putPart(shirt(), 'shirt', 'pieces', pocket));
    expect(only(outfit).pieces.at(-1)).toEqual(pocket);
    expect(partOf(only(outfit), 'pocket')).toEqual({});
    const deeper = made(changeUnit(outfit, 'shirt', 'front', { entries: { neckDeep: '90 mm' } })).outfit;
    expect(only(deeper).pieces.at(-1)).toEqual(pocket);
    expect(wrongWith(deeper)).toEqual([]);
  });

  test('is refused with everything that would not agree, each at its place', () => {
    const seam = { ...joinOf(shirt(), 'back-side-seam'), id: 'my-seam', name: 'My seam' };
    const refusal = putPart(shirt(), 'shirt', 'joins', {
      ...seam,
      this: [{ piece: 'front', edge: 'sidde', other: false }],
      to: [{ piece: 'bakc', edge: 'side', other: false }],
    });
    const problems = refusal.ok ? [] : refusal.error;
    expect(problems.map(({ wrong }) => wrong)).toEqual([
      'join `My seam`: edge `front.sidde` does not exist',
      'join `My seam`: edge `bakc.side` does not exist',
    ]);
    expect(problems[0]?.at).toMatch(/^\/garments\/0\/joins\/\d+\/this\/0$/);
    expect(putPart(shirt(), 'coat', 'joins', seam).ok).toBe(false);
  });

  test('a ready-made part changed by hand stays so when its unit is made anew, until it is taken back', () => {
    const before = shirt();
    const changed = { ...joinOf(before, 'back-side-seam'), finish: 'none' as const, depth: mm(25) };
    const outfit = made(putPart(before, 'shirt', 'joins', changed));
    expect(partOf(only(outfit), 'back-side-seam').unit?.id).toBe('back');
    expect(useOf(outfit, 'back').own).toEqual(['back-side-seam']);
    const anew = made(changeUnit(outfit, 'shirt', 'back', { entries: { allowance: '20 mm' } })).outfit;
    expect(joinOf(anew, 'back-side-seam')).toEqual(changed);
    expect(joinOf(anew, 'back-shoulder-seam').depth).toBe(mm(20));
    expect(made(takeReady(outfit, 'shirt', 'back-side-seam'))).toEqual(before);
    expect(made(takeReady(outfit, 'shirt', 'back'))).toEqual(before);
    expect(made(takeReady(outfit, 'shirt', 'front'))).toEqual(outfit);
  });

  test('a trim basted otherwise by hand stays so when its unit is made anew', () => {
    const before = garmentOf('panelled-bodice', 'inset-frill');
    const seam = joinOf(before, 'panelled-bodice-panel-seam');
    const [caught] = seam.catches;
    const changed = { ...seam, catches: [{ ...caught!, basteTo: 'to' as const }] };
    const outfit = made(putPart(before, 'shirt', 'joins', changed));
    const anew = made(changeUnit(outfit, 'shirt', 'inset-frill', { entries: { depth: '50 mm' } })).outfit;
    expect(joinOf(anew, seam.id).catches).toEqual(changed.catches);
    expect(made(takeReady(outfit, 'shirt', seam.id))).toEqual(before);
  });
});

describe('taking a part out', () => {
  test('leaves its unit without it, also when that is made anew', () => {
    const before = shirt();
    const { outfit, also } = removePart(before, 'shirt', 'front-neck-stay');
    expect(also).toEqual([]);
    expect(idsOf(outfit)).toEqual(idsOf(before).filter((id) => id !== 'front-neck-stay'));
    expect(useOf(outfit, 'front').own).toEqual(['front-neck-stay']);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
    expect(made(takeReady(outfit, 'shirt', 'front-neck-stay'))).toEqual(before);
  });

  test('takes with it what cannot be without it, and only mentions go from a try-on', () => {
    const before = shirt();
    const { outfit, also } = removePart(before, 'shirt', 'back-shoulder-seam');
    expect(wrongWith(outfit)).toEqual([]);
    // The neck no longer lies end to end, so the collar cannot be put on it; the armhole still meets at the side.
    expect(kinds(also)).toEqual(['unit shirt-collar']);
    expect(gateOf(before, 'back-try').after).toContain('back-shoulder-seam');
    expect(gateOf(outfit, 'back-try').after).toEqual(['back-side-seam']);
    expect(useOf(outfit, 'back').own.toSorted()).toEqual(['back-shoulder-seam', 'back-try']);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
  });

  test('a piece takes its works, its seams and the units that were put on it', () => {
    const { outfit, also } = removePart(shirt(), 'shirt', 'back');
    expect(wrongWith(outfit)).toEqual([]);
    expect(
      kinds(also)
        .filter((one) => one.startsWith('unit'))
        .toSorted(),
    ).toEqual(['unit plain-sleeve', 'unit shirt-collar']);
    expect(kinds(also)).toContain('join back-side-seam');
    expect(kinds(also)).toContain('work back-neck-stay');
    expect(kinds(also)).toContain('try-on back-try');
    expect(only(outfit).pieces.map(({ id }) => id)).toEqual(['front']);
  });

  test('a trim taken out leaves the seam it was caught in, also when that is made anew', () => {
    const before = garmentOf('panelled-bodice', 'inset-frill');
    const { outfit } = removePart(before, 'shirt', 'inset-frill');
    expect(wrongWith(outfit)).toEqual([]);
    expect(joinOf(outfit, 'panelled-bodice-panel-seam').catches).toEqual([]);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
  });

  test.each(idsOf(shirt()))('whatever it is, what is left can be read and made anew: %s', (id) => {
    const { outfit } = removePart(shirt(), 'shirt', id);
    expect(idsOf(outfit)).not.toContain(id);
    expect(wrongWith(outfit)).toEqual([]);
    // Figures may follow what is gone: the parts are the same.
    expect(idsOf(made(makeAnew(outfit, 'shirt')))).toEqual(idsOf(outfit));
  });
});

describe('renaming an edge', () => {
  test('renames it wherever it is named, and units put on it follow', () => {
    const outfit = made(renameEdge(shirt(), 'shirt', 'front', 'armhole', 'arm'));
    expect(wrongWith(outfit)).toEqual([]);
    expect(JSON.stringify(only(outfit))).not.toContain('"front.armhole"');
    expect(useOf(outfit, 'plain-sleeve').at.armhole).toEqual(['front.arm', 'back.armhole']);
    expect(useOf(outfit, 'plain-sleeve').own).toEqual([]);
    expect(joinOf(outfit, 'plain-sleeve-armhole').this[0]?.edge).toBe('arm');
    expect(useOf(outfit, 'front').own).toEqual(['front']);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
  });

  test('is refused where the edge is not there, the name is taken or cannot be one', () => {
    const wrong = (was: string, now: string): string => {
      const result = renameEdge(shirt(), 'shirt', 'front', was, now);
      return result.ok ? '' : (result.error[0]?.wrong ?? '');
    };
    expect(wrong('armhol', 'arm')).toContain('no edge `armhol`');
    expect(wrong('armhole', 'side')).toContain('two edges are called `side`');
    expect(wrong('armhole', 'The arm')).toContain('cannot be the name of an edge');
  });
});
