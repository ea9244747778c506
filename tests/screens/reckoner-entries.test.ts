import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Fields } from '../../src/fields/fields.ts';
import { inches, mm } from '../../src/length/length.ts';
import { readLength } from '../../src/length/reading.ts';
import { readPieces } from '../../src/reckon/cloth/piece-lines.ts';
import {
  blank,
  cleared,
  entryWords,
  keepEntries,
  noteUse,
  recallEntries,
  recent,
  takenBack,
  turned,
  understood,
} from '../../src/screens/reckoner/entries.ts';
import { foldedWords } from '../../src/screens/reckoner/more-fields.tsx';
import { withUnit } from '../../src/screens/reckoner/turn-length.ts';
import { turnLines } from '../../src/screens/reckoner/turn-lines.ts';
import { longWords } from '../../src/screens/reckoner/words.ts';

const fields: Fields = {
  depth: { kind: 'length', label: 'Depth', start: { in: '1/4', mm: '6' } },
  count: { kind: 'number', label: 'How many', whole: true, start: '5', unit: 'tucks' },
  pressed: {
    kind: 'choice',
    label: 'Pressed',
    options: [
      { value: 'away', label: 'away from the edge' },
      { value: 'toward', label: 'towards the edge' },
    ],
    start: 'away',
  },
};

beforeEach(() => localStorage.clear());

describe('under another rule', () => {
  test.each([
    ['6', '6 mm'],
    ['6,5', '6,5 mm'],
    ['6 mm', '6 mm'],
    ['1/4 in', '1/4'],
    ['2 ft 3', '2 ft 3'],
    ['', ''],
    ['4 3/', '4 3/ mm'],
    ['about six', 'about six'],
    ['0', '0'],
  ])('“%s”, written under millimetres, becomes “%s” under inches', (was, now) => {
    expect(turned({ unit: 'mm', entries: { depth: was } }, fields, 'in').entries.depth).toBe(now);
  });

  test('every length that can be written keeps its meaning, there and back', () => {
    const number = fc.oneof(
      fc.integer({ min: 0, max: 500 }).map(String),
      fc
        .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 15 }))
        .map(([w, n]) => `${w} ${n}/16`),
      fc.tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 0, max: 99 })).map(([w, d]) => `${w}.${d}`),
    );
    const unit = fc.constantFrom('', ' in', '"', ' mm', ' cm', ' ft', 'mm');
    fc.assert(
      fc.property(number, unit, fc.constantFrom('in', 'mm'), (n, u, from) => {
        const to = from === 'in' ? 'mm' : 'in';
        const written = { unit: from, entries: { depth: n + u } } as const;
        const over = turned(written, fields, to);
        expect(readLength(over.entries.depth!, to)).toEqual(readLength(n + u, from));
        const back = turned(over, fields, from);
        expect(readLength(back.entries.depth!, from)).toEqual(readLength(n + u, from));
      }),
    );
  });

  test('a bare number comes back as it was written', () => {
    const over = turned({ unit: 'in', entries: { depth: '4 3/8' } }, fields, 'mm');
    expect(over.entries.depth).toBe('4 3/8 in');
    expect(turned(over, fields, 'in').entries.depth).toBe('4 3/8');
  });

  test('lines of pieces keep their sizes, there and back', () => {
    const written =
      '2 x 12 x 24 front\n1 × 24 1/2 x 25, back, on the fold\n2 by 30 cm by 8 collar\nnot yet 3';
    const over = turnLines(written, 'in', 'mm');
    expect(over).toBe(
      '2 x 12 in x 24 in front\n1 × 24 1/2 in x 25 in, back, on the fold\n2 by 30 cm by 8 in collar\nnot yet 3',
    );
    expect(turnLines(over, 'mm', 'in')).toBe(written);
    const sizes = (text: string, unit: 'in' | 'mm') => {
      const read = readPieces(text.split('\n').slice(0, 3).join('\n'), unit);
      return read.ok ? read.value : read.error;
    };
    expect(sizes(over, 'mm')).toEqual(sizes(written, 'in'));
    expect(sizes(written, 'in')).toHaveLength(3);
  });

  test('numbers, choices and fields never touched are left alone', () => {
    expect(turned({ unit: 'in', entries: { count: '7', pressed: 'toward' } }, fields, 'mm')).toEqual({
      unit: 'mm',
      entries: { count: '7', pressed: 'toward' },
    });
  });
});

describe('kept on the device', () => {
  test('right or wrong, as it was typed, with its unit', () => {
    keepEntries('tucks', { unit: 'in', entries: { depth: '4 3/' } });
    expect(recallEntries('tucks', 'mm')).toEqual({ unit: 'in', entries: { depth: '4 3/' } });
    expect(recallEntries('frill', 'mm')).toEqual(blank('mm'));
  });

  test.each(['', '{', '[]', '{"unit":"ell","entries":{}}', '{"unit":"in","entries":null}', '7'])(
    'what cannot be read, “%s”, counts as nothing written',
    (stored) => {
      localStorage.setItem('slipbaste.reckoner.tucks', stored);
      expect(recallEntries('tucks', 'in')).toEqual(blank('in'));
    },
  );

  test('cleared entries come back, and nothing typed after the clearing is lost by that', () => {
    const first = { unit: 'in', entries: { depth: '1/2' } } as const;
    const empty = cleared(first);
    expect(empty.entries).toEqual({});
    expect(takenBack(empty)).toEqual(first);
    const later = { ...empty, entries: { depth: '3/4' } };
    const back = takenBack(later);
    expect(back.entries).toEqual({ depth: '1/2' });
    expect(takenBack(back).entries).toEqual({ depth: '3/4' });
    keepEntries('tucks', empty);
    expect(recallEntries('tucks', 'in')).toEqual(empty);
  });

  test('the last four used, the latest first, each once', () => {
    for (const id of ['a', 'b', 'c', 'a', 'd', 'e']) noteUse(id);
    expect(recent()).toEqual(['e', 'd', 'a', 'c']);
  });
});

test('a length is written down with its unit, a choice by its label', () => {
  const written = { unit: 'in', entries: { depth: '4 3/8' } } as const;
  expect(entryWords(written, 'depth', fields.depth!)).toBe('4 3/8 in');
  expect(entryWords(written, 'count', fields.count!)).toBe('5 tucks');
  expect(entryWords(written, 'pressed', fields.pressed!)).toBe('away from the edge');
  expect(withUnit('4 cm', 'in')).toBe('4 cm');
});

test('how a length was understood is said only where it is not plain', () => {
  const marking = { unit: 'in', per: 16 } as const;
  expect(understood('4 3/8', marking)).toBeUndefined();
  expect(understood('4 3/8 in', marking)).toBeUndefined();
  expect(understood('0.25', marking)).toBe('= 1/4 in');
  expect(understood('6 mm', marking)).toBe('about 1/4 in');
  expect(understood('6', { unit: 'mm', step: 0.5 })).toBeUndefined();
  expect(understood('2,5 cm', { unit: 'mm', step: 0.5 })).toBe('= 25 mm');
  expect(understood('4 3/', marking)).toBeUndefined();
});

describe('what several reckonings share', () => {
  const knee = { kind: 'length', label: 'Knee', shared: 'leg.knee', start: { in: '14', mm: '360' } } as const;
  const calf = { ...knee, label: 'Calf', shared: 'leg.calf' } as const;
  const up = { kind: 'length', label: 'Up', start: { in: '4', mm: '100' } } as const;
  const leg: Fields = { knee, calf };
  const frills: Fields = { up, knee };

  test('is typed once and stands in all of them, each by its own rule', () => {
    keepEntries('leg', { unit: 'in', entries: { knee: '15', calf: '14 1/2' } }, leg);
    expect(recallEntries('frills', 'in', frills)).toEqual({ unit: 'in', entries: { knee: '15' } });
    keepEntries('frills', { unit: 'mm', entries: { up: '80', knee: '370' } }, frills);
    expect(recallEntries('leg', 'mm', leg).entries).toEqual({ knee: '370 mm', calf: '14 1/2' });
    expect(recallEntries('frills', 'in', frills)).toEqual({
      unit: 'mm',
      entries: { up: '80', knee: '370' },
    });
  });

  test('is cleared in all, and comes back in all', () => {
    keepEntries('leg', { unit: 'in', entries: { knee: '15' } }, leg);
    const empty = cleared(recallEntries('leg', 'in', leg));
    keepEntries('leg', empty, leg);
    expect(recallEntries('frills', 'in', frills).entries).toEqual({});
    keepEntries('leg', takenBack(recallEntries('leg', 'in', leg)), leg);
    expect(recallEntries('frills', 'in', frills).entries).toEqual({ knee: '15' });
  });

  test('gives way to entries laid out whole, and can be taken back', () => {
    keepEntries('leg', { unit: 'in', entries: { knee: '15', calf: '13' } }, leg);
    const before: unknown = JSON.parse(localStorage.getItem('slipbaste.reckoner.leg')!);
    const laid = { unit: 'mm', entries: { knee: '400' }, before };
    localStorage.setItem('slipbaste.reckoner.leg', JSON.stringify(laid));
    const came = recallEntries('leg', 'in', leg);
    expect(came).toMatchObject({ unit: 'mm', entries: { knee: '400' } });
    expect(came.before).toEqual({ unit: 'in', entries: { knee: '15', calf: '13' } });
    keepEntries('leg', came, leg);
    expect(recallEntries('leg', 'in', leg)).toEqual(came);
    expect(recallEntries('frills', 'mm', frills).entries).toEqual({ knee: '400' });
    keepEntries('leg', takenBack(came), leg);
    expect(recallEntries('frills', 'in', frills).entries).toEqual({ knee: '15' });
    expect(recallEntries('leg', 'in', leg).entries).toEqual({ knee: '15', calf: '13' });
  });

  test.each(['{', '[]', '{"leg.knee":7}', '{"leg.knee":{"unit":"ell","text":"3"}}'])(
    'counts as nothing where it cannot be read: %s',
    (kept) => {
      localStorage.setItem('slipbaste.reckoner.shared', kept);
      expect(recallEntries('frills', 'in', frills)).toEqual(blank('in'));
    },
  );
});

test('what is folded away is named with what stands there', () => {
  const spare = {
    kind: 'length',
    label: 'After the last',
    start: { in: '', mm: '' },
    optional: true,
  } as const;
  const folded = Object.entries({ ...fields, spare });
  const written = { unit: 'mm', entries: { depth: '8' } } as const;
  expect(foldedWords(folded, written)).toBe(
    'Also: depth 8 mm; how many 5 tucks; pressed: away from the edge. May stay empty: after the last.',
  );
  expect(foldedWords([['spare', spare]], written)).toBe('May stay empty: after the last.');
  expect(foldedWords([['spare', spare]], { unit: 'mm', entries: { spare: '30' } })).toBe(
    'Also: after the last 30 mm.',
  );
  const many = Array.from({ length: 6 }, (_, i) => [`spare ${i}`, spare] as const);
  expect(foldedWords(many, written)).toBe('May stay empty: 6 fields.');
});

describe('a length that is bought by the yard or metre', () => {
  const inch = { unit: 'in', per: 16 } as const;
  const metric = { unit: 'mm', step: 0.5 } as const;
  test('is said so beside its figure, from two yards or metres on', () => {
    expect(longWords(inches(120), inch)).toBe('about 3 3/8 yd');
    expect(longWords(inches(72), inch)).toBeUndefined();
    expect(longWords(mm(2500), metric)).toBe('about 2.50 m');
    expect(longWords(mm(2000), metric)).toBeUndefined();
  });
});
