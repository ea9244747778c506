import { describe, expect, it } from 'vitest';
import { STYLE, safeMarkup } from '../../src/traced/markup.ts';

const made = (text: string): string => {
  const found = safeMarkup(text);
  return found.ok ? found.value : `refused: ${found.error}`;
};

describe('markup before any parser sees it', () => {
  it('loses its DOCTYPE, notes and instructions, and keeps plain text', () => {
    expect(
      made(
        '<?xml version="1.0"?><!DOCTYPE svg><!-- a > b --><svg> <title>a &amp; b<![CDATA[<b>]]></title></svg>\n',
      ),
    ).toBe('<svg> <title>a &amp; b<![CDATA[<b>]]></title></svg>\n');
  });

  it('has short texts put in, their quotes made safe', () => {
    const head = `<!DOCTYPE svg PUBLIC "x" "y.dtd" [ <!-- note --> <!ENTITY a 'say "A"'> <!ENTITY b "it's"> ]>`;
    expect(made(`${head}<svg id="&a;" class='&b;'>&a;&c;</svg>`)).toBe(
      `<svg id="say &quot;A&quot;" class='it&apos;s'>say &quot;A&quot;&c;</svg>`,
    );
  });

  it('has nothing left that a browser would style by or run on an event', () => {
    const quiet = made(
      '<svg style="a:b" onload = "x()"\n\tonClick="y"><svg:style>s</svg:style><style/><g font-style="c" id="style=1"/></svg>',
    );
    expect(quiet).toBe(
      `<svg ${STYLE}="a:b" data-as-written-onload = "x()"\n\tdata-as-written-onClick="y"><svg:metadata>s</svg:metadata><metadata/><g font-style="c" id="style=1"/></svg>`,
    );
  });

  it('may have signs of tags in quotes', () => {
    expect(made(`<svg a="1 > 2" b='"/>'><g/></svg>`)).toBe(`<svg a="1 > 2" b='"/>'><g/></svg>`);
  });

  it.each([
    ['<svg><g></svg>', /do not fit/],
    ['<svg></svg></g>', /do not fit/],
    ['<svg><g>', /do not fit/],
    ['<svg a="<g>', /does not end/],
    ['<svg><!-- <g/></svg>', /does not end/],
    ['<svg><!ELEMENT g></svg>', /does not end/],
    ['<!DOCTYPE svg [<!ENTITY a "b"><svg/>', /not read here/],
    ['<!DOCTYPE svg [<!ATTLIST svg a CDATA "b">]><svg/>', /not read here/],
    [`<!DOCTYPE svg [${'<!ENTITY a "b">'.repeat(50)}]><svg/>`, /not read here/],
    ['<html></html>', /not an SVG/],
  ])('%s is refused', (text, words) => {
    expect(made(text)).toMatch(/^refused/);
    expect(made(text)).toMatch(words);
  });
});
