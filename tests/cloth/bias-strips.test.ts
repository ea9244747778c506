import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BiasPiece, biasCloth, biasStrips } from '../../src/cloth/bias-strips.ts';
import { mm, nm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const scarf = { across: mm(900), along: mm(300), strip: mm(40), join: mm(6), shortest: mm(100) };

/** Area of the band between two lines, by adding up thin slices. */
function slices(piece: BiasPiece, across: number, along: number): number {
  const [near, far] = piece.lines.map(([a]) => a.across + a.along) as [number, number];
  const n = 2000;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const s = near + ((far - near) * (i + 0.5)) / n;
    const chord = Math.SQRT2 * Math.min(s, across, along, across + along - s);
    sum += chord * ((far - near) / n / Math.SQRT2);
  }
  return sum;
}

describe('bias strips from a rectangle', () => {
  test('strips in the middle are as long as the short side allows', () => {
    const { pieces, joins } = made(biasStrips(scarf));
    expect(toMm(pieces[0]!.middle)).toBeCloseTo(300 * Math.SQRT2, 4);
    expect(joins).toBe(pieces.length - 1);
  });

  test('only as many as needed, the longest first', () => {
    const all = made(biasStrips(scarf));
    const some = made(biasStrips({ ...scarf, needed: mm(1200) }));
    expect(some.pieces.length).toBe(3);
    expect(some.total).toBeGreaterThanOrEqual(mm(1200));
    expect(some.total).toBeLessThan(all.total);
    expect(toMm(some.total)).toBeCloseTo(3 * 300 * Math.SQRT2 - 2 * 2 * 6 * Math.SQRT2, 3);
  });

  test('no piece claims more cloth than lies between its lines, and none is too short', () => {
    const side = fc.integer({ min: 150, max: 1500 });
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 10, max: 60 }),
        fc.integer({ min: 20, max: 120 }),
        (w, h, s, m) => {
          const [across, along, strip, shortest] = [mm(w), mm(h), mm(s), mm(m)];
          const result = biasStrips({ across, along, strip, shortest, join: zero });
          if (!result.ok) return;
          for (const piece of result.value.pieces) {
            expect(piece.short).toBeGreaterThanOrEqual(shortest - 2);
            expect(piece.middle * strip).toBeLessThanOrEqual(slices(piece, across, along) * 1.001);
            for (const at of piece.lines.flat()) {
              expect(at.across >= 0 && at.across <= across && at.along >= 0 && at.along <= along).toBe(true);
              const edge = [0, across].includes(at.across) || [0, along].includes(at.along);
              expect(edge).toBe(true);
            }
          }
        },
      ),
    );
  });

  test('turning the cloth round changes nothing', () => {
    const turned = made(biasStrips({ ...scarf, across: scarf.along, along: scarf.across }));
    expect(turned.total).toBe(made(biasStrips(scarf)).total);
  });

  test.each([
    [{ across: zero }, 'across'],
    [{ along: zero }, 'along'],
    [{ strip: zero }, 'strip'],
    [{ join: mm(-1) }, 'join'],
    [{ shortest: mm(16) }, 'shortest'],
    [{ shortest: mm(600) }, 'shortest'],
    [{ needed: zero }, 'needed'],
    [{ needed: mm(100_000) }, 'needed'],
    [{ strip: nm(1000) }, 'strip'],
  ])('refuses %j', (change, field) => {
    expect(biasStrips({ ...scarf, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});

describe('cloth for a bias strip', () => {
  test('is enough, and a hair less is not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 8000 }),
        fc.integer({ min: 15, max: 60 }),
        fc.integer({ min: 400, max: 1500 }),
        (n, s, w) => {
          const want = { across: mm(w), strip: mm(s), join: mm(6), shortest: mm(80), needed: mm(n) };
          const { along, total } = made(biasCloth(want));
          expect(total).toBeGreaterThanOrEqual(want.needed);
          expect(biasStrips({ ...want, along })).toMatchObject({ ok: true });
          expect(biasStrips({ ...want, along: nm(along - mm(0.1)) })).toMatchObject({ ok: false });
        },
      ),
      { numRuns: 40 },
    );
  });

  test.each([
    [{ needed: zero }, 'needed'],
    [{ strip: zero }, 'strip'],
    [{ strip: mm(0.1), needed: mm(100_000_000) }, 'needed'],
    [{ across: mm(60) }, 'shortest'],
  ])('refuses %j', (change, field) => {
    const want = { across: mm(900), strip: mm(40), join: mm(6), shortest: mm(100), needed: mm(2000) };
    expect(biasCloth({ ...want, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
