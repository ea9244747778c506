import { describe, expect, test } from 'vitest';
import { crossedTucks } from '../../../src/outfit/units/crossed-tucks.ts';
import { forced } from '../../order/make.ts';
import { built, emptyOutfit, put, refusedAt, soundOrder } from './made-of.ts';
import { changed, plainBody, RULES } from './plain-body.ts';

const at = { on: ['back'] };

describe('crossed tucks', () => {
  test.each(RULES)('are sewn one way and pressed, then the other, in %s', (units) => {
    const running = soundOrder(put(plainBody(units), crossedTucks, { at }));
    expect(forced(running, 'crossed-tucks/press-1', 'crossed-tucks/stitch-2', 'garment')).toBe(true);
    expect(forced(running, 'crossed-tucks/press-2', 'shoulder/pin', 'garment')).toBe(true);
  });

  test('fill the piece as far as it reaches, and no more', () => {
    const [work] = built(plainBody(), crossedTucks, { at }).works;
    const [one, two] = work!.kind === 'crossed-tucks' ? work!.families : [];
    expect(one?.angle).toBe(45);
    expect(two?.angle).toBe(-45);
    const more = (field: string, many: number) =>
      refusedAt(plainBody(), crossedTucks, { at, entries: { [field]: String(many) } });
    expect(more('count', one!.depths.length)).toEqual([]);
    expect(more('count', one!.depths.length + 1)).toEqual(['count']);
    expect(more('across', two!.depths.length + 1)).toEqual(['across']);
  });

  test('lie level where the others stand upright', () => {
    const entries = { angle: '0', count: '3', across: '3' };
    const [work] = built(plainBody(), crossedTucks, { at, entries }).works;
    expect(work?.kind === 'crossed-tucks' && work.families.map(({ angle }) => angle)).toEqual([0, 90]);
  });

  test('of a piece cut after its work need no opened outline', () => {
    const say = (cutAfterWork: boolean) => {
      const outfit = changed(plainBody(), ({ pieces }) => ({
        pieces: pieces.map((p) => ({ ...p, cutAfterWork })),
      }));
      return built(outfit, crossedTucks, { at }).advice.some((one) => one.say.startsWith('Tuck a block'));
    };
    expect([say(false), say(true)]).toEqual([true, false]);
  });

  test('say which figure cannot be sewn', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), crossedTucks, { at, entries });
    expect(refused({ angle: '88' })).toEqual(['angle']);
    expect(refused({ spacing: '2' })).toEqual(['spacing']);
    expect(refused({ depth: '0' })).toEqual(['depth']);
    expect(refused({ count: '0' })).toEqual(['count']);
    expect(refused({ across: '0' })).toEqual(['across']);
    expect(refused({ across: '900' })).toEqual(['across']);
    expect(refused({ first: '2000' })).toEqual(['first']);
    expect(refusedAt(emptyOutfit(), crossedTucks)).toEqual(['at.on']);
  });
});
