import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/ui/ground.css', 'utf8');

function colours(block: string): Map<string, string> {
  return new Map(
    [...block.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name!, value!]),
  );
}

const blockAfter = (opening: string): string => {
  const start = css.indexOf(opening);
  expect(start).toBeGreaterThanOrEqual(0);
  return css.slice(start, css.indexOf('}', start));
};

const paper = colours(blockAfter(':root {'));
const cloth = colours(blockAfter(':root[data-ground="cloth"]'));
const clothByDevice = colours(blockAfter(':root:not([data-ground="paper"])'));

/** Relative luminance and contrast. Source: WCAG 2.2 (W3C, 2023), definitions of both terms. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
const contrast = (a: string, b: string): number => {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
};

describe.each([
  ['paper', paper],
  ['cloth', cloth],
])('on %s', (_name, ground) => {
  const of = (name: string): string => ground.get(name)!;

  test.each([
    ['ink', 'ground'],
    ['ink', 'raised'],
    ['ink', 'caution'],
    ['ink', 'ground-mark'],
    ['soft', 'ground'],
    ['soft', 'ground-mark'],
    ['soft', 'raised'],
    ['thread', 'ground'],
    ['thread', 'raised'],
    ['pad-text', 'pad'],
    ['tape-ink', 'tape'],
    ['ink', 'piece'],
  ])('text %s on %s has 7:1', (text, under) => {
    expect(contrast(of(text), of(under))).toBeGreaterThanOrEqual(7);
  });

  test.each([
    ['line', 'ground'],
    ['line', 'raised'],
    ['chalk', 'ground'],
    ['chalk', 'raised'],
    ['thread', 'piece'],
    ['selvedge', 'pad'],
  ])('line %s on %s has 3:1', (line, under) => {
    expect(contrast(of(line), of(under))).toBeGreaterThanOrEqual(3);
  });

  test('the weave of the pad leaves its text at 7:1', () => {
    expect(contrast(of('pad-text'), of('pad-weave'))).toBeGreaterThanOrEqual(7);
  });
});

test('the dark cloth is the same whether the device or the maker asks for it', () => {
  expect(clothByDevice).toEqual(cloth);
  expect([...cloth.keys()]).toEqual([...paper.keys()]);
});
