import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { buttonsFront } from '../../../src/reckon/buttons/buttons-front.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

const even = { length: '20', first: '1', last: '1', count: '7' };

describe('buttons down a front', () => {
  test('seven over eighteen inches stand three inches apart; upright holes reach an eighth above', () => {
    const given = reckoned(buttonsFront, even);
    expect(figures(given)).toMatchObject({
      'From button to button': inches(3),
      'First, from the top': inches(1),
      'Last, from the top': inches(19),
      'Cloth beyond centre front, least': inches(1, 2),
      'Hole begins above its button': inches(1, 8),
    });
    expect(places(given, 0)).toEqual([1, 4, 7, 10, 13, 16, 19].map((n) => inches(n)));
    expect(places(given, 1).slice(0, 2)).toEqual([inches(7, 8), inches(3, 2)]);
    expect(places(given, 1)).toHaveLength(14);
  });

  test('level holes lie at the buttons and begin an eighth past the centre', () => {
    const given = reckoned(buttonsFront, { ...even, direction: 'horizontal' });
    expect(places(given, 1)).toEqual(places(given, 0));
    expect(figures(given)['Hole begins past centre front']).toBe(inches(1, 8));
  });

  test('one at the bust and one at the waist', () => {
    const given = reckoned(buttonsFront, { ...even, bust: '8', waist: '15' });
    expect(places(given, 0)).toContain(inches(8));
    expect(places(given, 0)).toContain(inches(15));
    expect(places(given, 0)).toHaveLength(7);
    expect(figures(given)['Spaces at the top']).toBe(inches(7, 2));
  });

  test('the sheet has a slit for every hole, of its length, at true size', () => {
    const given = reckoned(buttonsFront, { first: '20', last: '70' }, 'mm');
    const slits = given.sheets[0]?.drawn.flatMap((d) =>
      d.kind === 'path' && d.stroke === 'cut' && !d.closed ? [d.points] : [],
    );
    expect(slits).toHaveLength(7);
    for (const [from, to] of slits ?? []) expect(to!.y - from!.y).toBe(mm(15));
  });

  test.each([
    [{ length: '0' }, 'length'],
    [{ length: '1000 m' }, 'length'],
    [{ diameter: '0' }, 'diameter'],
    [{ diameter: '30' }, 'diameter'],
    [{ hole: '1/4' }, 'hole'],
    [{ count: '0' }, 'count'],
    [{ count: '60' }, 'count'],
    [{ last: '22' }, 'last'],
    [{ first: '0' }, 'first'],
    [{ bust: '30' }, 'bust'],
    [{ waist: '1/8' }, 'waist'],
    [{ count: '3', bust: '8', waist: '15' }, 'count'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(buttonsFront, entries)).toEqual([field]);
  });

  test('every hole stays on the opening', () => {
    const sizes = fc.tuple(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 3, max: 60 }));
    fc.assert(
      fc.property(sizes, fc.constantFrom('vertical', 'horizontal'), ([count, edge], direction) => {
        const entries = { length: '600', count: String(count), first: String(edge), last: '20', direction };
        const result = buttonsFront.reckon(entries, 'mm');
        if (!result.ok) return;
        for (const strip of result.value.strips) {
          for (const { at } of strip.marks) expect(at >= 0 && at <= mm(600)).toBe(true);
        }
      }),
    );
  });
});
