import { DOMParser, type Element } from '@xmldom/xmldom';
import type { ReadPage, ReadPath } from './read-pdf.ts';

type Matrix = readonly [number, number, number, number, number, number];

const PER_UNIT: Readonly<Record<string, number>> = { mm: 1, pt: 25.4 / 72, '': 25.4 / 96, px: 25.4 / 96 };

/** A length with its unit in millimetres. */
function inMm(text: string): number {
  const [, number = '', unit = ''] = /^([\d.]+)(\w*)$/.exec(text) ?? [];
  const per = PER_UNIT[unit];
  if (per === undefined) throw new Error(`“${text}” is not a length`);
  return Number(number) * per;
}

function matrixOf(text: string | null): Matrix {
  if (!text) return [1, 0, 0, 1, 0, 0];
  const found = /^matrix\(([^)]*)\)$/.exec(text);
  const parts = (found?.[1] ?? '').split(/[\s,]+/).map(Number);
  if (parts.length !== 6) throw new Error(`“${text}” is not expected here`);
  return parts as unknown as Matrix;
}

/** Subpaths of straight lines; a part of any other kind is an error. */
function pathsIn(d: string): [number, number][][] {
  const paths: [number, number][][] = [];
  for (const [, code, rest = ''] of d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const numbers =
      rest.trim() === ''
        ? []
        : rest
            .trim()
            .split(/[\s,]+/)
            .map(Number);
    if (code === 'Z') {
      const path = paths.at(-1);
      if (path?.[0]) path.push(path[0]);
    } else if (code === 'M' || code === 'L') {
      if (code === 'M') paths.push([]);
      for (let i = 0; i < numbers.length; i += 2) paths.at(-1)?.push([numbers[i]!, numbers[i + 1]!]);
    } else throw new Error(`“${code}” in a path is not a straight line`);
  }
  return paths;
}

/** Reads an SVG with a general XML parser that refuses what is not well formed; all in millimetres from its left upper corner. */
export function readSvg(text: string): ReadPage {
  const fail = (level: string, say: string): never => {
    throw new Error(`${level}: ${say}`);
  };
  const root = new DOMParser({ onError: fail }).parseFromString(text, 'image/svg+xml').documentElement;
  if (root?.localName !== 'svg') throw new Error('no svg');
  const [wide, high] = [inMm(root.getAttribute('width') ?? ''), inMm(root.getAttribute('height') ?? '')];
  const [left, top, across, down] = (root.getAttribute('viewBox') ?? '').split(' ').map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const place = (x: number, y: number): readonly [number, number] => [
    ((x - left) * wide) / across,
    ((y - top) * high) / down,
  ];
  const all = (name: string): Element[] => [...root.getElementsByTagName(name)];
  const shown = (one: Element): boolean => {
    for (let at = one.parentNode; at; at = at.parentNode) {
      if (['defs', 'clipPath', 'symbol'].includes((at as Element).localName ?? '')) return false;
    }
    return true;
  };
  const paths = all('path')
    .filter(shown)
    .filter(
      (one) => one.getAttribute('fill') === 'none' || one.getAttribute('style')?.startsWith('fill:none'),
    )
    .flatMap((one) => {
      const [a, b, c, d, e, f] = matrixOf(one.getAttribute('transform'));
      return pathsIn(one.getAttribute('d') ?? '').map(
        (path): ReadPath => path.map(([x, y]) => place(a * x + c * y + e, b * x + d * y + f)),
      );
    });
  const words = all('text').map((one) => {
    const [x, y] = place(Number(one.getAttribute('x')), Number(one.getAttribute('y')));
    return { words: one.textContent ?? '', x, y };
  });
  return { wide, high, paths, words };
}
