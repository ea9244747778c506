import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { flattenEdge } from '../../src/shape/flatten.ts';
import { boundingBox } from '../../src/shape/measure.ts';
import { textOf } from '../../src/traced/drawing.ts';
import type { Run } from '../../src/traced/path-lines.ts';
import { drawn, fileOf, inMm, named, read } from './read.ts';

const size = ({ start, segments }: Run): readonly [number, number] => {
  const { left, right, top, bottom } = boundingBox(flattenEdge(start, { name: '', segments }, mm(0.001)));
  return [(right - left) / 1e6, (bottom - top) / 1e6];
};

describe('drawings as general vector programs write them', () => {
  it('layers with a page in millimetres: true size, names of layers, nothing of styles, definitions and hidden layers', () => {
    const { lines, trueSize, left } = drawn(fileOf('layers-in-mm'));
    expect(trueSize).toBe(true);
    expect(lines.map(({ name, closed }) => [name, closed])).toEqual([
      ['Front', true],
      ['grain', false],
      ['Dart point', true],
      ['Sleeve', true],
    ]);
    expect(left).toEqual(['1 hidden part', '1 line of words', '1 picture']);
    expect(lines[0]!.start).toEqual({ x: mm(10), y: mm(40) });
    expect(size(lines[1]!)).toEqual([0, 140]);
    // The circle of 4 mm across.
    expect(size(lines[2]!)[0]).toBeCloseTo(4, 2);
  });

  it('a page in inches with 72 units to the inch, and short texts in its DOCTYPE', () => {
    const lines = named(fileOf('inches'));
    expect(size(lines.get('Square')!)).toEqual([25.4, 25.4]);
    expect(size(lines.get('Cuff')!)[1]).toBeCloseTo(50.8, 3);
    expect([...lines.keys()]).toContain('Collar stand');
    expect(drawn(fileOf('inches')).trueSize).toBe(true);
  });

  it('bare units: 96 to the inch, said to be taken; nested transforms, symbols used twice, nested outlines', () => {
    const { lines, trueSize, left } = drawn(fileOf('bare-units'));
    expect(trueSize).toBe(false);
    expect(left).toEqual(['1 part from elsewhere']);
    const band = lines.find(({ name }) => name === 'Band')!;
    const [wide, high] = size(band);
    expect([wide, high]).toEqual([expect.closeTo((40 * 25.4) / 96, 3), expect.closeTo((100 * 25.4) / 96, 3)]);
    const gussets = lines.filter(({ segments, name }) => name === '' && segments.length === 4);
    expect(gussets.map((one) => size(one)[0])).toEqual([
      expect.closeTo(15.875, 3),
      expect.closeTo(15.875, 3),
    ]);
    expect(lines.filter(({ name }) => name === 'two')).toHaveLength(2);
    expect(lines.filter(({ closed }) => !closed)).toHaveLength(1);
  });

  it('a box of another shape than its page is fitted both ways alike, unless the file says otherwise', () => {
    const file = (more: string): string =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 100 100" ${more}><rect width="10" height="10"/></svg>`;
    expect(size(drawn(file('')).lines[0]!)).toEqual([10, 10]);
    expect(size(drawn(file('preserveAspectRatio="xMidYMid slice"')).lines[0]!)).toEqual([20, 20]);
    expect(size(drawn(file('preserveAspectRatio="none"')).lines[0]!)).toEqual([20, 10]);
  });

  it('lines that all but close are closed; others stay open', () => {
    const lines = named(
      inMm(
        '<path id="Near" d="M0 0L100 0 100 100 0.004 0.003"/><path id="Far" d="M0 0L100 0 100 100 0 1"/><path id="Shut" d="M0 0L100 0 100 100z"/>',
      ),
    );
    expect(lines.get('Near')).toMatchObject({ closed: true, start: { x: 0, y: 0 } });
    expect(lines.get('Near')!.segments.at(-1)!.to).toEqual({ x: 0, y: 0 });
    expect(lines.get('Far')!.closed).toBe(false);
    expect(lines.get('Shut')!.segments).toHaveLength(3);
  });

  it('takes UTF-16 by its mark', () => {
    const text = inMm('<path id="Šev" d="M0 0h9v9z"/>');
    const wide = new Uint8Array([
      0xff,
      0xfe,
      ...new Uint8Array(new Uint16Array([...text].map((c) => c.charCodeAt(0))).buffer),
    ]);
    expect(named(textOf(wide)).has('Šev')).toBe(true);
    expect(named(textOf(new TextEncoder().encode(text))).has('Šev')).toBe(true);
  });
});

describe('files that are hostile or broken', () => {
  const svg = (inner: string, head = ''): string =>
    `<?xml version="1.0"?>${head}<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="100mm" height="100mm" viewBox="0 0 100 100">${inner}</svg>`;
  const square = '<path id="Square" d="M0 0H50V50H0Z"/>';
  const laughs = `<!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;">]>`;
  const useLaughs = [...Array(6).keys()]
    .map(
      (i) =>
        `<g id="u${i}">${`<use xlink:href="#u${i - 1}"/>`.repeat(i === 0 ? 0 : 40)}${i === 0 ? square : ''}</g>`,
    )
    .join('');
  const refused: readonly (readonly [string, string, RegExp])[] = [
    ['an empty file', '  \n ', /empty/],
    ['a letter', 'Dear aunt, thank you for the cloth.', /not an SVG/],
    ['a PDF', '%PDF-1.7 <svg>', /PDF/],
    ['a packed drawing', '\u001f\u008b\b<svg >', /not compressed/],
    ['bytes', `\u0089PNG\0\0<svg ${'\0'.repeat(99)}`, /not an SVG/],
    ['texts inside each other', svg('<title>&c;</title>', laughs), /not read here/],
    [
      'a text from another file',
      svg('&x;', '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>'),
      /not read here/,
    ],
    ['a parameter text', svg('', '<!DOCTYPE svg [<!ENTITY % x "y"> %x;]>'), /not read here/],
    [
      'short texts put in too often',
      svg('&a;'.repeat(300_000), `<!DOCTYPE svg [<!ENTITY a "${'x'.repeat(200)}">]>`),
      /too much of it/,
    ],
    ['a file of 6 MB', svg(square.padEnd(6_000_000)), /larger than 5 MB/],
    ['very many parts', svg('<g/>'.repeat(30_000)), /more than 20000 parts/],
    ['groups very deep', svg('<g>'.repeat(50_000)), /60 groups/],
    ['groups too deep and closed', svg(`${'<g>'.repeat(200)}${square}${'</g>'.repeat(200)}`), /60 groups/],
    ['parts that repeat parts', svg(useLaughs), /1500 lines|repeat/],
    ['a part that repeats itself', svg('<g id="me"><use xlink:href="#me"/></g>'), /repeat/],
    ['tags that do not fit', svg('<g><path d="M0 0h9v9z"></g>'), /do not fit/],
    ['a tag that does not end', `${svg(square).slice(0, -30)}<path d="M0`, /does not end/],
    ['a quote that does not end', svg('<a b="'.repeat(100_000)), /does not end/],
    ['a second DOCTYPE', svg('<!DOCTYPE svg>'), /does not end/],
    ['a name that nothing defines', svg('<title>&nbsp;</title>'), /do not fit/],
    ['no outline', svg('<text>neck</text>'), /no outline/],
    [
      'figures that are none',
      svg('<path d="M0 0LNaN 5 9 9z"/><rect width="NaN" height="5"/><circle r="1e999"/>'),
      /no outline/,
    ],
    ['one huge path', svg(`<path d="M0 0${'l1 1'.repeat(1_000_000)}"/>`), /no outline/],
    ['many stretches', svg(`<path d="M0 0${'l1 1-1 0'.repeat(20_000)}"/>`.repeat(3)), /60000 stretches/],
    ['many lines', svg('<path d="M0 0h9v9z"/>'.repeat(2000)), /1500 lines/],
  ];
  it.each(refused)('%s is refused in words, soon', (_, text, words) => {
    const begun = performance.now();
    const found = read(text);
    expect(performance.now() - begun).toBeLessThan(4000);
    expect(found.ok ? found.value.lines.length : found.error).toMatch(words);
  });

  it('what could run or fetch is left alone, and the outline read', () => {
    const { lines, left } = drawn(
      svg(
        `<script>globalThis.broken = true</script><foreignObject><iframe xmlns="http://www.w3.org/1999/xhtml" src="https://example.org"/></foreignObject>
        <style>@import "https://example.org/a.css"</style><g onload="globalThis.broken = true">${square}</g><image href="https://example.org/a.png"/><use href="//example.org/a#b"/>
        <animate attributeName="d"/><set/><constructor/>`,
      ),
    );
    expect(lines.map(({ name }) => name)).toEqual(['Square']);
    expect(left).toEqual(['1 script', '1 part that is no drawing', '1 picture', '1 part from elsewhere']);
    expect('broken' in globalThis).toBe(false);
  });

  it('a line that cannot be read is left out and counted', () => {
    const { lines, left } = drawn(
      svg(
        `${square}<path d="M0 0L9"/><path d="L5 5z"/><path d="M0 0h1e300"/><g transform="rotate(x)">${square}</g><polygon points="1 2 z"/>`,
      ),
    );
    expect(lines).toHaveLength(1);
    expect(left).toEqual(['5 lines that cannot be read']);
  });

  it('letters changed at random never throw and never hang', () => {
    const good = fileOf('inches');
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.nat(good.length - 1),
            fc.constantFrom('<', '>', '"', '&', ';', '/', 'e', '-', '0', ' ', '\0', 'M', 'Z', ']'),
          ),
          {
            minLength: 1,
            maxLength: 12,
          },
        ),
        (changes) => {
          let text = good;
          for (const [at, sign] of changes) text = text.slice(0, at) + sign + text.slice(at + 1);
          const begun = performance.now();
          const found = read(text);
          expect(performance.now() - begun).toBeLessThan(1000);
          if (!found.ok) expect(found.error).toMatch(/[.]$/);
        },
      ),
      { numRuns: 300, seed: 20_241 },
    );
  });
});
