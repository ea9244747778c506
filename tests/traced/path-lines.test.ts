import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { mm, toMm } from '../../src/length/length.ts';
import { flattenEdge } from '../../src/shape/flatten.ts';
import { pathLength, signedArea } from '../../src/shape/measure.ts';
import { readTransform, STILL } from '../../src/traced/matrix.ts';
import { pathLines, type Run } from '../../src/traced/path-lines.ts';

const points = ({ start, segments }: Run) => flattenEdge(start, { name: '', segments }, mm(0.001));
const lengthOf = (run: Run): number => toMm(pathLength(points(run)));

/** Length by two other libraries: one turns everything into cubic curves, the other measures those. */
function lengthByOthers(data: string, transform = ''): number {
  let sum = 0;
  let [x, y, sx, sy] = [0, 0, 0, 0];
  svgpath(data)
    .transform(transform)
    .abs()
    .unshort()
    .unarc()
    .iterate((segment) => {
      const [code, ...n] = segment as [string, ...number[]];
      const to = (a: number, b: number): void => {
        sum += Math.hypot(a - x, b - y);
        [x, y] = [a, b];
      };
      if (code === 'M') [x, y, sx, sy] = [n[0]!, n[1]!, n[0]!, n[1]!];
      else if (code === 'L') to(n[0]!, n[1]!);
      else if (code === 'H') to(n[0]!, y);
      else if (code === 'V') to(x, n[0]!);
      else if (code === 'Z' || code === 'z') to(sx, sy);
      else {
        const along = new Bezier([x, y, ...n]).getLUT(1000);
        for (const [i, p] of along.entries())
          sum += Math.hypot(p.x - (along[i - 1] ?? p).x, p.y - (along[i - 1] ?? p).y);
        [x, y] = n.slice(-2) as [number, number];
      }
    });
  return sum;
}

const figure = fc.integer({ min: -3000, max: 3000 }).map((n) => n / 10);
const some = (code: string, count: number) =>
  fc.array(figure, { minLength: count, maxLength: count }).map((n) => `${code}${n.join(' ')}`);
const arc = (code: string) =>
  fc
    .tuple(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 0, max: 180 }),
      fc.boolean(),
      fc.boolean(),
      figure,
      figure,
    )
    .map(
      ([rx, ry, turn, large, sweep, x, y]) =>
        `${code}${rx} ${ry} ${turn} ${large ? 1 : 0}${sweep ? 1 : 0}${x} ${y}`,
    );
const anyPath = fc
  .tuple(
    some('M', 2),
    fc.array(
      fc.oneof(
        some('L', 2),
        some('l', 2),
        some('h', 1),
        some('V', 1),
        some('C', 6),
        some('c', 6),
        some('s', 4),
        some('Q', 4),
        some('q', 4),
        some('t', 2),
        some('T', 2),
        arc('A'),
        arc('a'),
      ),
      { minLength: 1, maxLength: 12 },
    ),
    fc.constantFrom('', 'z'),
  )
  .map(([m, rest, z]) => m + rest.join('') + z);

describe('path data read into lines', () => {
  it('is as long as two other libraries say', () => {
    fc.assert(
      fc.property(anyPath, (data) => {
        const runs = pathLines(data, STILL, 1000);
        const ours = (runs ?? []).reduce((sum, run) => sum + lengthOf(run), 0);
        const theirs = lengthByOthers(data);
        // An arc as cubic curves is off by less than three parts in ten thousand; the libraries cut it differently.
        expect(Math.abs(ours - theirs)).toBeLessThan(0.05 + theirs * 3e-4);
      }),
      { numRuns: 400, seed: 7_311 },
    );
  });

  it('lies where another library puts it under nested transforms', () => {
    const part = fc.oneof(
      fc.tuple(figure, figure).map(([x, y]) => `translate(${x},${y})`),
      fc.tuple(figure, figure, figure).map(([d, x, y]) => `rotate(${d} ${x} ${y})`),
      fc
        .tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: -30, max: -1 }))
        .map(([x, y]) => `scale(${x / 10} ${y / 10})`),
      fc.integer({ min: -60, max: 60 }).map((d) => `skewX(${d})`),
      fc.integer({ min: -60, max: 60 }).map((d) => `skewY(${d})`),
      fc.tuple(figure, figure).map(([e, f]) => `matrix(0.8 0.6 -0.6 0.8 ${e} ${f})`),
    );
    fc.assert(
      fc.property(fc.array(part, { maxLength: 4 }), some('M0 0C', 6), (parts, data) => {
        const transform = parts.join(' ');
        const [run] = pathLines(data, readTransform(transform)!, 10) ?? [];
        const there = svgpath(data).transform(transform).abs();
        const found: number[] = [];
        there.iterate(([, ...n]) => void found.push(...(n as number[])));
        if (!run) return;
        const one = run.segments[0]!;
        const ours = one.kind === 'curve' ? [run.start, one.first, one.second, one.to] : [run.start, one.to];
        const theirs = one.kind === 'curve' ? found : [...found.slice(0, 2), ...found.slice(-2)];
        for (const [i, value] of ours.flatMap((p) => [toMm(p.x), toMm(p.y)]).entries())
          expect(Math.abs(value - theirs[i]!)).toBeLessThan(1e-5 + Math.abs(theirs[i]!) * 1e-9);
      }),
      { numRuns: 300, seed: 88 },
    );
  });

  it('a circle of arcs has the area of a circle to three parts in ten thousand', () => {
    const [run] = pathLines('M-100 0A100 100 0 0 1 100 0A100 100 0 0 1-100 0Z', STILL, 10)!;
    expect(Math.abs(signedArea(points(run!).slice(1)) / (Math.PI * 10_000) - 1)).toBeLessThan(3e-4);
    expect(Math.abs(lengthOf(run!) / (Math.PI * 200) - 1)).toBeLessThan(3e-4);
  });

  it('every move begins a line, and what follows a close begins at the same place', () => {
    const runs = pathLines('m10 10h10v10zl5 5m100 0l1 1h9', STILL, 100)!;
    expect(runs.map(({ closed, segments }) => [closed, segments.length])).toEqual([
      [true, 3],
      [false, 1],
      [false, 2],
    ]);
    expect(runs[1]!.start).toEqual({ x: mm(10), y: mm(10) });
  });

  it('is nothing where it cannot be read, is too long or lies far off', () => {
    for (const data of ['L1 1', 'M0 0L', 'M0 0X9', 'M0 0L1 1e400', 'M0 0L9999999 0', 'M0 0A-1 1 0 0 0 5 5'])
      expect(pathLines(data, STILL, 100)).toBeUndefined();
    expect(pathLines('M0 0h1h1h1h1', STILL, 3)).toBeUndefined();
  });
});
