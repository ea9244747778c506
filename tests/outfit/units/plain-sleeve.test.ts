import { describe, expect, test } from 'vitest';
import { plainSleeve } from '../../../src/outfit/units/plain-sleeve.ts';
import { faults, forcedPairs, longerTo, measured, put, sleeveless } from './bodies.ts';

const armhole = { at: { armhole: ['front.armhole', 'back.armhole'] } };
const called = { ...armhole, id: 'sleeve', name: 'Sleeve' };

describe('a plain sleeve', () => {
  test.each(['in', 'mm'] as const)(
    'is as much longer than its armhole as it is to be eased, in %s',
    (units) => {
      for (const wearer of [undefined, measured]) {
        const { garment } = put({ ...sleeveless(wearer), units }, plainSleeve, called);
        expect(longerTo(garment, 'sleeve-armhole')).toBeCloseTo(19.05, 1);
        expect(longerTo(garment, 'sleeve-seam')).toBeCloseTo(0, 3);
      }
    },
  );

  test('has the shoulder mark where front and back of the armhole meet it', () => {
    const { garment } = put(sleeveless(), plainSleeve, { ...called, entries: { ease: '0' } });
    const sleeve = garment.pieces.find(({ id }) => id === 'sleeve')!;
    const crown = sleeve.marks[0]!;
    expect(crown.name).toBe('shoulder');
    expect(crown.at.y).toBe(0);
    expect(longerTo(garment, 'sleeve-armhole')).toBeCloseTo(0, 1);
  });

  test('is set in the round after side and sleeve are closed, and tried on while basted', () => {
    const { outfit } = put(sleeveless(), plainSleeve, { ...called, entries: { ends: 'hem' } });
    expect(
      forcedPairs(
        outfit,
        ['shoulder/press', 'sleeve-armhole/pin'],
        ['side/press', 'sleeve-armhole/pin'],
        ['sleeve-seam/press', 'sleeve-armhole/pin'],
        ['sleeve-ease/own-1', 'sleeve-seam/pin'],
        ['sleeve-armhole/baste', 'sleeve-try/fit'],
        ['sleeve-try/fit', 'sleeve-armhole/stitch'],
        ['sleeve-seam/press', 'sleeve-hem/level'],
      ),
    ).toEqual([]);
  });

  test('goes in flat before the side seam where the maker wants it so', () => {
    const { outfit } = put(sleeveless(), plainSleeve, {
      ...called,
      entries: { setting: 'flat', ease: '6 mm' },
    });
    expect(
      forcedPairs(
        outfit,
        ['sleeve-armhole/press', 'side/pin'],
        ['sleeve-armhole/press', 'sleeve-seam/pin'],
        ['sleeve-seam/baste', 'sleeve-try/fit'],
        ['side/baste', 'sleeve-try/fit'],
        ['sleeve-try/fit', 'sleeve-seam/stitch'],
      ),
    ).toEqual([]);
  });

  test('leaves an opening where a cuff follows', () => {
    const { garment } = put(sleeveless(), plainSleeve, { ...called, entries: { ends: 'cuff' } });
    expect(garment.joins.find(({ id }) => id === 'sleeve-seam')?.stopsAt).toContain('65 mm');
    expect(garment.works.some(({ kind, on }) => kind === 'hem' && on === 'sleeve')).toBe(false);
    expect(garment.works.find(({ id }) => id === 'sleeve-opening')?.kind).toBe('own');
  });

  test('says which figure cannot be sewn', () => {
    const [wide] = faults(sleeveless(), plainSleeve, { ...called, entries: { wide: '700' } });
    expect(wide).toMatch(/^wide: .*flat/);
    const [narrow] = faults(sleeveless(), plainSleeve, { ...called, entries: { wide: '150' } });
    expect(narrow).toMatch(/^wide: .*high/);
    expect(faults(sleeveless(), plainSleeve, { ...called, entries: { length: '90' } })[0]).toMatch(
      /^length: /,
    );
    expect(faults(sleeveless(), plainSleeve)).toEqual(['at.armhole: Choose the armhole.']);
  });
});
