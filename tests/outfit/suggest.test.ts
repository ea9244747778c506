import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edits, nearest } from '../../src/outfit/suggest.ts';

// Few letters, so that words are often near each other.
const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', '-'), maxLength: 7 });
const FAR = 99;

/** Every word that one edit makes of another: the definition itself, with no arithmetic in common with `edits`. */
function oneEditFrom(from: string): Set<string> {
  const made = new Set<string>();
  for (let i = 0; i <= from.length; i += 1) {
    const [head, tail] = [from.slice(0, i), from.slice(i)];
    if (tail !== '') made.add(head + tail.slice(1));
    if (tail.length > 1) made.add(head + tail.charAt(1) + tail.charAt(0) + tail.slice(2));
    for (const letter of 'abc-') {
      made.add(head + letter + tail);
      if (tail !== '') made.add(head + letter + tail.slice(1));
    }
  }
  made.delete(from);
  return made;
}

describe('edits between words', () => {
  test.each([
    ['back.sidde', 'back.side', 1],
    ['bakc', 'back', 1],
    ['hem', 'seam', 2],
    ['', 'cuff', 4],
    ['sleeve', 'sleeve', 0],
  ])('%s and %s', (a, b, count) => {
    expect(edits(a, b, FAR)).toBe(count);
  });

  test('none exactly where the words are the same, and as many one way as the other', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(edits(a, b, FAR)).toBe(edits(b, a, FAR));
        expect(edits(a, b, FAR) === 0).toBe(a === b);
      }),
    );
  });

  test('one exactly where one edit makes the other word', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(edits(a, b, FAR) === 1).toBe(oneEditFrom(a).has(b));
      }),
    );
    fc.assert(
      fc.property(word, (a) => {
        for (const b of oneEditFrom(a)) expect(edits(a, b, FAR)).toBe(1);
      }),
      { numRuns: 20 },
    );
  });

  test('never fewer than the difference in letters, never more than the longer word has', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        const count = edits(a, b, FAR);
        expect(count).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
        expect(count).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });

  test('never more than twice the way round by a third word', () => {
    // Not simply the way round: a swapped pair is not edited again, but a swap is at most two changes.
    fc.assert(
      fc.property(word, word, word, (a, b, c) => {
        expect(edits(a, c, FAR)).toBeLessThanOrEqual(2 * (edits(a, b, FAR) + edits(b, c, FAR)));
      }),
    );
  });

  test('past the limit it only says that it is past', () => {
    fc.assert(
      fc.property(word, word, fc.nat({ max: 4 }), (a, b, limit) => {
        const count = edits(a, b, FAR);
        if (count <= limit) expect(edits(a, b, limit)).toBe(count);
        else expect(edits(a, b, limit)).toBeGreaterThan(limit);
      }),
    );
  });
});

describe('the nearest known name', () => {
  test('is the nearest one, the first of several, and none where all are far', () => {
    expect(nearest('shoulde', ['side', 'shoulder', 'should'])).toBe('shoulder');
    expect(nearest('fornt', ['back', 'front'])).toBe('front');
    expect(nearest('gusset', ['side', 'hem', 'shoulder'])).toBeUndefined();
    expect(nearest('side', [])).toBeUndefined();
  });

  test('is never further off than a third of the letters (or four), and never further than another', () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 6 }), (wanted, known) => {
        const near = nearest(wanted, known);
        const least = Math.min(...known.map((name) => edits(wanted, name, FAR)));
        const limit = Math.max(1, Math.floor(wanted.length / 3));
        if (near === undefined) expect(least).toBeGreaterThan(limit);
        else expect(edits(wanted, near, FAR)).toBe(least);
      }),
    );
  });
});
