import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type InterfacingInput, interfacing } from '../../src/cloth/interfacing.ts';
import { pressLimit } from '../../src/cloth/press-heat.ts';
import { made } from './good.ts';

const collar: InterfacingInput = { weight: 'medium', knit: false, care: 3, part: 'collar' };

describe('interfacing', () => {
  test('fused where the cloth bears it, and cooled flat', () => {
    expect(made(interfacing(collar))).toMatchObject({
      held: 'fused',
      structure: 'woven',
      weight: 'medium',
      fusing: { degrees: 150, limit: 200, coolFlat: true },
    });
  });

  test('sewn in where the care label forbids the heat, and says why', () => {
    const { held, fusing, because } = made(interfacing({ ...collar, care: 1 }));
    expect([held, fusing]).toEqual(['sewn in', undefined]);
    expect(because).toContain('110');
    expect(made(interfacing({ ...collar, care: 0 })).held).toBe('sewn in');
  });

  test.each(['pile', 'see-through', 'beaded'] as const)('sewn in on a surface that is %s', (surface) => {
    expect(made(interfacing({ ...collar, surface })).held).toBe('sewn in');
    const asked = made(interfacing({ ...collar, surface, held: 'fused' }));
    expect(asked.held).toBe('fused');
    expect(asked.advice.length).toBe(made(interfacing({ ...collar, held: 'fused' })).advice.length + 1);
  });

  test('the maker’s instructions go above ours', () => {
    const low = { degrees: 105, seconds: 15 };
    expect(made(interfacing({ ...collar, care: 1, instructions: low })).fusing).toMatchObject(low);
  });

  test('never fuses hotter than the label, never heavier than the cloth, always a sample first', () => {
    const weights = ['sheer', 'light', 'medium', 'heavy', 'very heavy'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...weights),
        fc.constantFrom(0, 1, 2, 3),
        fc.constantFrom('collar', 'cuff', 'band', 'buttonholes', 'facing', 'hem'),
        fc.option(fc.integer({ min: 80, max: 230 }), { nil: undefined }),
        fc.boolean(),
        (weight, care, part, degrees, knit) => {
          const instructions = degrees === undefined ? {} : { instructions: { degrees, seconds: 12 } };
          const chosen = made(interfacing({ weight, care, part, knit, ...instructions }));
          const limit = pressLimit([care]);
          if (chosen.fusing) expect(limit.ok && chosen.fusing.degrees <= limit.value).toBe(true);
          expect(weights.indexOf(chosen.weight)).toBeLessThanOrEqual(weights.indexOf(weight));
          expect(chosen.advice[0]?.say).toContain('sample');
        },
      ),
    );
  });

  test.each<[Partial<InterfacingInput>, string]>([
    [{ held: 'fused', care: 1 }, 'held'],
    [{ held: 'fused', care: 0 }, 'held'],
    [{ held: 'fused', care: 2, instructions: { degrees: 165, seconds: 12 } }, 'held'],
    [{ instructions: { degrees: 20, seconds: 12 } }, 'instructions'],
    [{ instructions: { degrees: 150, seconds: 0 } }, 'instructions'],
    [{ instructions: { degrees: Number.NaN, seconds: 10 } }, 'instructions'],
  ])('refuses %j', (change, field) => {
    expect(interfacing({ ...collar, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
