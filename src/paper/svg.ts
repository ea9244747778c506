import { type Length, mm, nm } from '../length/length.ts';
import type { Box } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { AT_FULL_SIZE, CHECK_IN, checkLines } from './foot.ts';
import { boxOf, type Ink, type InkWords, inkMoved, inkOf, inkWords, type Page } from './ink.ts';
import type { PatternSheet } from './pattern-sheet.ts';
import { PENS } from './pens.ts';

const ESCAPED: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that XML 1.0 allows in no way at all, escaped or not. Source: W3C, XML 1.0, production 2 (from memory). */
// biome-ignore lint/suspicious/noControlCharactersInRegex: those are the ones to take out
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/** Words made safe to stand in an XML file. */
export const escaped = (words: string): string =>
  words
    .replace(/\p{Surrogate}/gu, '') // halves of a letter
    .replace(NOT_XML, '')
    .replace(/[&<>"']/g, (sign) => ESCAPED[sign] ?? sign);

/** Millimetres to the micrometre, without zeros that say nothing. */
export const num = (length: number): string => String(Math.round(length / 1000) / 1000 + 0);

/** A place in millimetres, its two figures with a blank between. */
export const pair = ({ x, y }: Point): string => `${num(x)} ${num(y)}`;

const path = (points: readonly Point[], closed: boolean): string =>
  `M${points.map(pair).join('L')}${closed ? 'Z' : ''}`;

function wordsSvg({ words, at, from, high, turn, bold }: InkWords): string {
  const middle = from === 'middle' ? ' text-anchor="middle"' : '';
  const turned = turn === 0 ? '' : ` transform="rotate(${turn} ${pair(at)})"`;
  const weight = bold ? ' font-weight="bold"' : '';
  return `<text x="${num(at.x)}" y="${num(at.y)}" font-size="${num(high)}"${weight}${middle}${turned}>${escaped(words)}</text>`;
}

function inkSvg(ink: Ink): string {
  if (ink.kind === 'words') return wordsSvg(ink);
  if (ink.kind === 'fill') return `<path d="${path(ink.points, true)}"/>`;
  const { wide, dash } = PENS[ink.pen];
  const dashes = dash.length === 0 ? '' : ` stroke-dasharray="${dash.map(num).join(' ')}"`;
  const phase = dash.length === 0 || ink.phase === 0 ? '' : ` stroke-dashoffset="${num(ink.phase)}"`;
  return `<path class="${ink.pen}" d="${path(ink.points, ink.closed)}" fill="none" stroke="#000" stroke-width="${num(wide)}"${dashes}${phase}/>`;
}

/** One SVG at true size: a unit of its coordinates is a millimetre. */
export function svg(name: string, box: Box, body: readonly string[]): string {
  const [wide, high] = [num(box.right - box.left), num(box.bottom - box.top)];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}mm" height="${high}mm" viewBox="${num(box.left)} ${num(box.top)} ${wide} ${high}" font-family="sans-serif" stroke-linejoin="round">`,
    `<title>${escaped(name)}</title>`,
    ...body,
    '</svg>',
    '',
  ].join('\n');
}

const GAP: Length = mm(10);
const NAME: Length = mm(6);
const NOTE: Length = mm(4);

/**
 * Whole sheets, one below the other and not cut into tiles, as one SVG at true size: for a printer of wide rolls or a
 * drawing program. Above each its name and notes, above all two check lines.
 */
export function sheetsSvg(name: string, sheets: readonly PatternSheet[]): string {
  const head: readonly Ink[] = [
    ...checkLines(0, 0),
    inkWords(AT_FULL_SIZE, { x: nm(CHECK_IN + mm(8)), y: mm(5) }, NOTE),
  ];
  const all: Ink[] = [...head];
  const body: string[] = [`<g>\n${head.map(inkSvg).join('\n')}\n</g>`];
  let y: number = mm(18) + GAP;
  for (const sheet of sheets) {
    const words: Ink[] = [];
    y += NAME;
    words.push(inkWords(sheet.name, { x: nm(0), y: nm(y) }, NAME, { bold: true }));
    for (const note of sheet.notes) {
      y += NOTE * 1.4;
      words.push(inkWords(note, { x: nm(0), y: nm(y) }, NOTE));
    }
    y += mm(4);
    const ink = inkOf(sheet.drawn);
    const box = boxOf(ink);
    const placed = ink.map((one) => inkMoved(one, -box.left, y - box.top));
    all.push(...words, ...placed);
    body.push(
      `<g>\n<title>${escaped(sheet.name)}</title>\n${[...words, ...placed].map(inkSvg).join('\n')}\n</g>`,
    );
    y += box.bottom - box.top + GAP;
  }
  const { left, top, right, bottom } = boxOf(all);
  const box = {
    left: nm(left - GAP),
    top: nm(top - GAP),
    right: nm(right + GAP),
    bottom: nm(bottom + GAP),
  };
  return svg(name, box, body);
}

/** One laid page as an SVG at true size. */
export function pageSvg(name: string, page: Page): string {
  const box = { left: nm(0), top: nm(0), right: page.wide, bottom: page.high };
  const clips = page.windows.map(
    ({ area }, i) =>
      `<clipPath id="w${i}"><rect x="${num(area.left)}" y="${num(area.top)}" width="${num(area.right - area.left)}" height="${num(area.bottom - area.top)}"/></clipPath>`,
  );
  return svg(name, box, [
    ...(clips.length > 0 ? [`<defs>${clips.join('')}</defs>`] : []),
    ...page.windows.map(({ ink }, i) => `<g clip-path="url(#w${i})">\n${ink.map(inkSvg).join('\n')}\n</g>`),
    `<g>\n${page.ink.map(inkSvg).join('\n')}\n</g>`,
  ]);
}
