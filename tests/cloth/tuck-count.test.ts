import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tuckCount } from '../../src/cloth/tuck-count.ts';
import { tucks } from '../../src/cloth/tucks.ts';
import { inches, mm, nm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const asked = {
  width: inches(8),
  margin: inches(1),
  depth: inches(1, 4),
  showing: inches(1, 2),
  round: 'nearest' as const,
};

describe('how many tucks fill a width', () => {
  test('eight spaces of three quarters in six inches make nine tucks', () => {
    expect(made(tuckCount(asked))).toEqual({
      count: 9,
      spacesWanted: 8,
      spacing: inches(3, 4),
      showing: inches(1, 2),
      takeUp: inches(9, 2),
      flat: inches(25, 2),
    });
  });

  test('a number that is not whole goes the way that is asked, one that is whole stays', () => {
    const count = (round: 'nearest' | 'up' | 'down', showing = mm(16)) =>
      made(tuckCount({ ...asked, width: mm(140), margin: mm(20), depth: mm(4), round, showing })).count;
    expect([count('nearest'), count('up'), count('down')]).toEqual([6, 6, 6]);
    expect([count('nearest', mm(19)), count('up', mm(19)), count('down', mm(19))]).toEqual([5, 6, 5]);
  });

  test.each([
    [{ width: zero }, 'width'],
    [{ margin: mm(-1) }, 'margin'],
    [{ margin: inches(4) }, 'margin'],
    [{ depth: zero }, 'depth'],
    [{ depth: mm(0.01), showing: zero }, 'depth'],
    [{ showing: mm(-1) }, 'showing'],
    [{ showing: zero, round: 'up' as const, depth: mm(7) }, 'round'],
  ])('refuses %j', (change, field) => {
    expect(tuckCount({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('the tucks can be sewn, and the last lies one margin from the far edge', () => {
    const input = fc.record({
      width: fc.integer({ min: 50, max: 1500 }),
      margin: fc.integer({ min: 0, max: 40 }),
      depth: fc.integer({ min: 1, max: 30 }),
      showing: fc.integer({ min: 0, max: 60 }),
      round: fc.constantFrom('nearest' as const, 'up' as const, 'down' as const),
    });
    let sewn = 0;
    fc.assert(
      fc.property(input, (o) => {
        const given = {
          width: mm(o.width),
          margin: mm(o.margin),
          depth: mm(o.depth),
          showing: mm(o.showing),
        };
        const found = tuckCount({ ...given, round: o.round });
        if (!found.ok) return;
        sewn++;
        const { count, spacing, flat, takeUp, spacesWanted } = found.value;
        const group = made(
          tucks({ count, depth: given.depth, spacing, first: given.margin, pressed: 'away' }),
        );
        const last = group.tucks.at(-1)!;
        expect(Math.abs(given.width - given.margin - last.finished)).toBeLessThanOrEqual(count);
        expect(group.takeUp).toBe(takeUp);
        expect(flat).toBe(nm(given.width + takeUp));
        expect(Math.abs(count - 1 - spacesWanted)).toBeLessThan(1);
      }),
    );
    expect(sewn).toBeGreaterThan(20);
  });
});
