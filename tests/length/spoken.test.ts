import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, mm } from '../../src/length/length.ts';
import { readLength } from '../../src/length/reading.ts';
import { asWritten, readSaid } from '../../src/length/spoken.ts';
import { sayLength, writeLength } from '../../src/length/writing.ts';

describe('a length as it is spoken', () => {
  it.each([
    ['five eighths', '5/8'],
    ['Five eighths of an inch.', '5/8 in'],
    ['one and a half inches', '1 1/2 in'],
    ['an inch and a half', '1 1/2 in'],
    ['half an inch', '1/2 in'],
    ['a half', '1/2'],
    ['half inch', '1/2 in'],
    ['an eighth of an inch', '1/8 in'],
    ['three quarters', '3/4'],
    ['quarter of an inch', '1/4 in'],
    ['two and three eighths', '2 3/8'],
    ['two inches and three eighths', '2 3/8 in'],
    ['two inches three eighths of an inch', '2 3/8 in'],
    ['twelve millimetres', '12 mm'],
    ['twenty-five mil', '25 mm'],
    ['one point five centimetres', '1.5 cm'],
    ['two centimetres and a half', '2 1/2 cm'],
    ['about forty two millimeters', '42 mm'],
    ['5 eighths', '5/8'],
    ['5/8ths', '5/8'],
    ['1 and 1/2 of an inch', '1 1/2 in'],
    ['3 16ths', '3/16'],
    ['five thirty-seconds', '5/32'],
    ['five thirty seconds of an inch', '5/32 in'],
    ['1 and 1/2 inches', '1 1/2 in'],
    ['one foot two inches', '1 ft 2 in'],
    ['to and a quarter inches', '2 1/4 in'],
    ['an inch', '1 in'],
    ['15mm', '15 mm'],
  ])('“%s” is written %s', (said, written) => {
    expect(asWritten(said)).toBe(written);
  });

  it.each([
    '',
    'inches',
    'a lot',
    'twenty five eighths',
    'nine eighths',
    'half a half',
    'five six',
    'one point inches',
    'the tucks hang badly',
    'five eighths and a quarter',
  ])('“%s” is none', (said) => {
    expect(asWritten(said)).toBeUndefined();
  });

  it('is read in the maker’s own units where none is said', () => {
    expect(readSaid('five eighths', 'in')).toEqual({ ok: true, value: inches(5, 8) });
    expect(readSaid('twelve', 'mm')).toEqual({ ok: true, value: mm(12) });
    expect(readSaid('twelve millimetres', 'in')).toEqual({ ok: true, value: mm(12) });
    expect(readSaid('two inches three eighths of an inch', 'mm')).toEqual({ ok: true, value: inches(19, 8) });
  });

  it('is read as before where it is written', () => {
    for (const text of ['4 3/8', '1 and 1/2 inches', '11,1 cm', '3/', 'half', ''])
      if (readLength(text, 'in').ok) expect(readSaid(text, 'in')).toEqual(readLength(text, 'in'));
    const refused = readSaid('rather much', 'in');
    expect(!refused.ok && refused.error).toBe('“rather much” is not a length; write one such as 4 3/8 in.');
  });
});

describe('what this program says itself', () => {
  const words = [
    ...'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen'.split(
      ' ',
    ),
    ...'seventeen eighteen nineteen twenty'.split(' '),
  ];

  it('is understood again, in digits and in words', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 * 16 }), fc.boolean(), (marks, metric) => {
        const marking = metric ? ({ unit: 'mm', step: 1 } as const) : ({ unit: 'in', per: 16 } as const);
        const length = metric ? mm(marks % 20 || 20) : inches(marks, 16);
        const said = sayLength(length, marking);
        expect(readSaid(said, 'in')).toEqual({ ok: true, value: length });
        const spelled = said.replace(/\d+/g, (digits) => words[Number(digits)] ?? digits);
        expect(readSaid(spelled, 'in')).toEqual({ ok: true, value: length });
        // Once written, it needs no more turning.
        expect(readLength(writeLength(length, marking).text, 'in')).toEqual({ ok: true, value: length });
      }),
      { seed: 5_111 },
    );
  });
});
