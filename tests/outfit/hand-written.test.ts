import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readHandWritten } from '../../src/outfit/hand-written.ts';
import { placeWords } from '../../src/outfit/place-words.ts';

const held = (text: string): unknown => {
  const read = readHandWritten(text);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.value;
};
const slip = (text: string): string => {
  const read = readHandWritten(text);
  if (read.ok) throw new Error('it should not be read');
  return `${read.error.line}:${read.error.column} ${read.error.say}`;
};

describe('reading what was written by hand', () => {
  test('reads plain JSON as the platform does', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), fc.constantFrom(undefined, 1, '\t'), (value, space) => {
        const text = JSON.stringify(value, null, space);
        expect(held(text)).toEqual(JSON.parse(text));
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  test('refuses no text that the platform reads, but for names that stand twice', () => {
    const bits = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      '"a"',
      '"b"',
      ':',
      ',',
      '1',
      '-0.5e2',
      'true',
      'null',
      ' ',
      '\n',
      '\\',
      '"',
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 12 }), (some) => {
        const text = some.join('');
        let plain: unknown;
        try {
          plain = JSON.parse(text);
        } catch {
          return;
        }
        const read = readHandWritten(text);
        if (read.ok) expect(read.value.value).toEqual(plain);
        else expect(read.error.say).toMatch(/already/);
      }),
      { seed: 4, numRuns: 5000 },
    );
  });

  test('lets comments and a last comma pass', () => {
    expect(
      held(`\uFEFF// A blouse.\r\n{ /* in\n two lines */ "name": "A // b", // the name
        "list": [1, 2, /* and */ 3,], "more": {"a": "/* kept */",},\r}\n// the end`),
    ).toEqual({ name: 'A // b', list: [1, 2, 3], more: { a: '/* kept */' } });
  });

  test('takes names that mean something to the language for names', () => {
    const found = held('{"__proto__": {"polluted": 1}, "constructor": 2}') as object;
    expect(Object.keys(found)).toEqual(['__proto__', 'constructor']);
    expect('polluted' in found).toBe(false);
  });

  test.each([
    ['', '1:1 There is nothing in the file.'],
    ['// only words', '1:1 There is nothing in the file.'],
    ['{"a": 1 "b": 2}', '1:9 Here `"` stands where a comma or } should.'],
    ['{\n  "a": 1;\n}', '2:9 Here `;` stands where a comma or } should.'],
    ['{"a" 1}', '1:6 Here `1` stands where a colon should.'],
    ['{a: 1}', '1:2 Here `a` stands where a name should, in straight double quotes.'],
    ['{"a": “so”}', '1:7 Put text in straight double quotes: "so".'],
    ["['so']", '1:2 Put text in straight double quotes: "so".'],
    ['[so]', '1:2 `so` stands without quotes; put text in straight double quotes.'],
    ['[12 mm]', '1:5 Here `mm` stands where a comma or ] should.'],
    ['[01]', '1:2 `01` is not a number as JSON has it; write 12 or 0.5, and a length in quotes, "12 mm".'],
    ['[.5]', '1:2 `.5` is not a number as JSON has it; write 12 or 0.5, and a length in quotes, "12 mm".'],
    ['[,]', '1:2 Here `,` stands where a value should.'],
    ['[1,,2]', '1:4 Here `,` stands where a value should.'],
    ['{"a": "b\n"}', '1:7 This text has no end on its line; close it with a straight double quote.'],
    [
      '["\\q"]',
      '1:2 This text has a backslash or a sign in it that JSON does not know; write \\\\ for a backslash.',
    ],
    ['[1] 2', '1:5 Here `2` stands behind the end.'],
    ['{\r\n"a": [1,\r\n2', '3:2 The file ends, but what was opened on line 2 is not closed; add ].'],
    ['{"a": 1,\n\n"a": 2}', '3:1 "a" stands on line 1 already; keep one of the two.'],
    ['[1 /* never', '1:4 This comment has no end; close it with */.'],
    ['["é𝄞" x]', '1:7 Here `x` stands where a comma or ] should.'],
  ])('says where %j cannot be read', (text, words) => {
    expect(slip(text)).toBe(words);
  });

  test('is not hung by brackets without end', () => {
    expect(slip('['.repeat(100_000))).toBe('1:62 Nothing in an outfit lies more than 60 brackets deep.');
    expect(slip('{"a":'.repeat(100_000))).toContain('60 brackets deep');
  });

  test('knows where each part stands, and of a missing one where its surroundings do', () => {
    const read = readHandWritten('{\n  "a/b": [\n    10,\n    { "c~": 2 }\n  ]\n}');
    if (!read.ok) throw new Error('it should be read');
    const at = (pointer: string) => Object.values(read.value.placeOf(pointer)).join(':');
    expect(
      ['', '/a~1b', '/a~1b/0', '/a~1b/1/c~0', '/a~1b/1/missing', '/a~1b/7', '/nothing/there'].map(at),
    ).toEqual(['1:1', '2:3', '3:5', '4:7', '4:5', '2:3', '1:1']);
  });
});

describe('a pointer in words', () => {
  const whole = { garments: [{ name: 'Blouse', pieces: [{ id: 'front' }, {}], works: 3 }] };
  test.each([
    ['', ''],
    ['/garments/0', 'garments: Blouse'],
    ['/garments/0/pieces/0/cloth', 'garments: Blouse, pieces: front, cloth'],
    ['/garments/0/pieces/1/outline/edges', 'garments: Blouse, pieces: 2, outline, edges'],
    ['/garments/0/works/constructor', 'garments: Blouse, works, constructor'],
  ])('%s', (at, words) => {
    expect(placeWords(whole, at)).toBe(words);
  });
});
