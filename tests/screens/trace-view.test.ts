import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { crossAt, halfWay, pathOf, snapped, viewOf } from '../../src/screens/describe/trace-view.ts';
import type { Point } from '../../src/shape/outline.ts';
import { drawn, inMm } from '../traced/read.ts';

const at = (x: number, y: number): Point => ({ x: mm(x), y: mm(y) });
const [square, curve] = drawn(inMm('<path d="M0 0H40V30H0Z"/><path d="M0 0C0 10 30 10 30 0"/>')).lines;

describe('a drawing as our own drawing', () => {
  it('is written from its data, in millimetres', () => {
    expect(pathOf(square!.start, square!.segments, true)).toBe('M0 0L40 0L40 30L0 30L0 0Z');
    expect(pathOf(curve!.start, curve!.segments)).toBe('M0 0C0 10 30 10 30 0');
    expect(crossAt(at(5, 6), 2)).toBe('M3 6h4M5 4v4');
  });

  it('has room round it, and a pixel of its own', () => {
    const { box, pixel } = viewOf({ left: mm(0), top: mm(10), right: mm(140), bottom: mm(80) });
    expect(box).toBe('-10 0 160 90');
    expect(pixel).toBeCloseTo(140 / 330);
    expect(viewOf({ left: mm(0), top: mm(0), right: mm(0), bottom: mm(0) }).pixel).toBeGreaterThan(0);
  });

  it('gives the middle of an edge by its length', () => {
    expect(halfWay(square!.start, square!.segments.slice(0, 2))).toEqual(at(35, 0));
    expect(halfWay(curve!.start, curve!.segments).x).toBeCloseTo(mm(15), -4);
    expect(halfWay(at(3, 3), [])).toEqual(at(3, 3));
  });

  it('takes a touch for the end of a stretch that is near, of open lines both ends', () => {
    const lines = [square!, curve!];
    expect(snapped(lines, at(39, 29), mm(3))).toEqual(at(40, 30));
    expect(snapped(lines, at(29, 1), mm(3))).toEqual(at(30, 0));
    expect(snapped([curve!], at(1, 1), mm(3))).toEqual(at(0, 0));
    expect(snapped(lines, at(20, 15), mm(3))).toEqual(at(20, 15));
  });
});
