import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tucks } from '../../src/cloth/tucks.ts';
import { add, inches, type Length, mm, nm, subtract, times, zero } from '../../src/length/index.ts';

const made = (input: Parameters<typeof tucks>[0]) => {
  const result = tucks(input);
  if (!result.ok) throw new Error(`${result.error.field}: ${result.error.wrong}`);
  return result.value;
};

describe('tucks', () => {
  test('five of a quarter inch, an inch apart, the first an inch from the datum', () => {
    const { tucks: all, takeUp } = made({
      count: 5,
      depth: inches(1, 4),
      spacing: inches(1),
      first: inches(1),
      pressed: 'away',
    });
    expect(takeUp).toBe(inches(5, 2));
    expect(all.map((t) => t.firstStitching)).toEqual([1, 2.5, 4, 5.5, 7].map((n) => inches(n)));
    expect(all[2]).toMatchObject({
      fold: inches(17, 4),
      secondStitching: inches(9, 2),
      finished: inches(3),
      foldFinished: inches(13, 4),
      showing: inches(3, 4),
      meets: 'spaced',
    });
    expect(all[4]).toMatchObject({ meets: 'alone', showing: undefined });
  });

  test('as deep as they are apart they are blind; deeper is refused', () => {
    const group = { count: 3, spacing: inches(1, 2), first: zero, pressed: 'away' as const };
    expect(made({ ...group, depth: inches(1, 2) }).tucks.map((t) => t.meets)).toEqual([
      'blind',
      'blind',
      'alone',
    ]);
    expect(tucks({ ...group, depth: nm(inches(1, 2) + 1) })).toMatchObject({
      ok: false,
      error: { field: 'depth' },
    });
  });

  test('graded tucks each use their own depth, and only the neighbour they lie over matters', () => {
    const depth = [inches(1, 8), inches(1, 4), inches(3, 8)];
    const away = made({ depth, spacing: inches(1, 4), first: inches(1), pressed: 'away' });
    expect(away.takeUp).toBe(inches(3, 2));
    expect(away.tucks.map((t) => t.meets)).toEqual(['spaced', 'blind', 'alone']);
    expect(tucks({ depth, spacing: inches(1, 4), first: inches(1), pressed: 'toward' })).toMatchObject({
      ok: false,
      error: { wrong: expect.stringContaining('tuck 3') },
    });
  });

  test('pin tucks of a sixteenth come with advice, of an eighth without', () => {
    const group = { count: 2, spacing: inches(1), first: zero, pressed: 'away' as const };
    expect(made({ ...group, depth: inches(1, 16) }).advice).toHaveLength(1);
    expect(made({ ...group, depth: inches(1, 8) }).advice).toEqual([]);
  });

  test('says what it assumed', () => {
    expect(made({ depth: mm(3), spacing: mm(10), first: mm(1), pressed: 'toward' }).assumed).toHaveLength(2);
  });

  test.each([
    [{ count: 0 }, 'count'],
    [{ count: 2.5 }, 'count'],
    [{ count: Number.NaN }, 'count'],
    [{ depth: [] as Length[] }, 'count'],
    [{ depth: [mm(2)], count: 3 }, 'count'],
    [{ depth: zero }, 'depth'],
    [{ depth: mm(-2) }, 'depth'],
    [{ spacing: zero }, 'spacing'],
    [{ first: mm(-1) }, 'first'],
  ])('refuses %j', (change, field) => {
    const input = {
      count: 3,
      depth: mm(2),
      spacing: mm(10),
      first: zero,
      pressed: 'away' as const,
      ...change,
    };
    expect(tucks(input)).toMatchObject({ ok: false, error: { field } });
  });

  const group = fc
    .array(
      fc.integer({ min: 1, max: 20 }).map((n) => mm(n)),
      { minLength: 1, maxLength: 30 },
    )
    .chain((depth) =>
      fc.record({
        depth: fc.constant(depth),
        spacing: fc.integer({ min: 20, max: 60 }).map((n) => mm(n)),
        first: fc.nat(50).map((n) => mm(n)),
        pressed: fc.constantFrom('away' as const, 'toward' as const),
      }),
    );

  test('flat marks stand as far apart as finished ones, and twice the depth more', () => {
    fc.assert(
      fc.property(group, (input) => {
        const { tucks: all, takeUp } = made(input);
        all.forEach((t, i) => {
          const next = all[i + 1];
          expect(subtract(t.secondStitching, t.firstStitching)).toBe(times(t.depth, 2));
          expect(subtract(t.fold, t.firstStitching)).toBe(t.depth);
          if (next) expect(subtract(next.firstStitching, t.secondStitching)).toBe(input.spacing);
        });
        const last = all.at(-1)!;
        expect(subtract(last.secondStitching, last.finished)).toBe(takeUp);
        expect(takeUp).toBe(times(add(...input.depth), 2));
      }),
    );
  });
});
