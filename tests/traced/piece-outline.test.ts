import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, toMm } from '../../src/length/length.ts';
import { flattenOutline } from '../../src/shape/flatten.ts';
import { boundingBox, edgeLengths, outlineArea, signedArea } from '../../src/shape/measure.ts';
import { cornersOf } from '../../src/traced/corners.ts';
import type { DrawnLine } from '../../src/traced/drawing.ts';
import { asLine, lieOf, type Traced, traceOutline } from '../../src/traced/piece-outline.ts';
import { drawn, inMm } from './read.ts';

const first = (parts: string): DrawnLine => drawn(inMm(parts)).lines[0]!;
const traced = (run: DrawnLine, more: { scale?: number; fold?: number } = {}): Traced => {
  const made = traceOutline({ run, corners: cornersOf(run), named: (at) => `edge-${at}`, scale: 1, ...more });
  if (!made.ok) throw new Error(made.error);
  return made.value;
};
const wrong = (d: string, more: object = {}): string => {
  const run = first(`<path d="${d}"/>`);
  const made = traceOutline({ run, corners: cornersOf(run), named: String, scale: 1, ...more });
  return made.ok ? 'no fault' : made.error;
};
const span = (t: Traced) => boundingBox(flattenOutline(t.outline));

describe('a line of a drawing made a piece', () => {
  it('lies at the datum, clockwise, whichever way it was drawn', () => {
    for (const d of ['M30 40h100v50h-100z', 'M30 40v50h100v-50z']) {
      const { outline } = traced(first(`<path d="${d}"/>`));
      expect(outline.edges).toHaveLength(4);
      expect(signedArea(flattenOutline(outline))).toBeCloseTo(5000);
      expect(boundingBox(flattenOutline(outline))).toEqual({
        left: 0,
        top: 0,
        right: mm(100),
        bottom: mm(50),
      });
      expect(outline.edges.at(-1)!.segments.at(-1)!.to).toEqual(outline.start);
    }
  });

  it('is as large as a known length says', () => {
    const { outline, at } = traced(first('<path d="M0 0h100v50h-100z"/>'), { scale: 2.54 });
    expect([...edgeLengths(outline).values()].map(toMm)).toEqual([254, 127, 254, 127]);
    expect(at({ x: mm(10), y: mm(20) })).toEqual({ x: mm(25.4), y: mm(50.8) });
  });

  it('turned at random, half a piece comes to lie with its fold on x = 0 and keeps every length and its area', () => {
    const half = 'M0 0H60C50 20 70 40 90 50L80 160Q40 170 0 165Z';
    const plain = first(`<path d="${half}"/>`);
    const was = traced(plain, { fold: 4 });
    expect(span(was).left).toBe(0);
    fc.assert(
      fc.property(fc.integer({ min: -179, max: 180 }), fc.boolean(), (degrees, mirror) => {
        const run = first(
          `<g transform="translate(500 500) rotate(${degrees}) scale(${mirror ? -1 : 1} 1)"><path d="${half}"/></g>`,
        );
        const made = traced(run, { fold: 4 });
        const fold = made.outline.edges.find(({ name }) => name === 'edge-4')!;
        expect(fold.segments).toHaveLength(1);
        expect(fold.segments[0]!.to.x).toBe(0);
        const box = span(made);
        expect(box.left).toBeGreaterThan(-mm(0.01));
        expect(Math.abs(box.right - span(was).right)).toBeLessThan(mm(0.01));
        expect(Math.abs(outlineArea(made.outline) - outlineArea(was.outline))).toBeLessThan(1);
        for (const [name, long] of edgeLengths(made.outline))
          expect(Math.abs(long - edgeLengths(was.outline).get(name)!)).toBeLessThan(mm(0.01));
        expect(signedArea(flattenOutline(made.outline))).toBeGreaterThan(0);
        // What ran along the fold still does, and a place on the fold lies on it.
        expect(Math.abs(made.turned(degrees))).toBeLessThan(1e-6);
        expect(Math.abs(made.at(run.start).x)).toBeLessThan(mm(0.001));
      }),
      { numRuns: 150, seed: 31 },
    );
  });

  it('half a piece drawn left of its fold is mirrored and stays upright', () => {
    const made = traced(first('<path d="M100 0V80H40L60 0Z"/>'), { fold: 0 });
    const box = span(made);
    expect([box.left, box.right]).toEqual([0, mm(60)]);
    expect(made.at({ x: mm(60), y: mm(0) })).toEqual({ x: mm(40), y: mm(0) });
    expect(made.turned(30)).toBeCloseTo(-30);
  });

  it('is refused in words where no piece can be made of it', () => {
    expect(wrong('M0 0h100v50h-100z', { corners: [0, 1] })).toMatch(/three corners/);
    expect(wrong('M0 0L100 0L100 50')).toMatch(/does not close/);
    expect(wrong('M0 0h100v50h-100z', { scale: 0.001 })).toMatch(/smaller than 5 mm/);
    expect(wrong('M0 0h100v50h-100z', { scale: 1000 })).toMatch(/larger than 30 m/);
    expect(wrong('M0 0h100v50h-100z', { scale: Number.NaN })).toMatch(/true size/);
    expect(wrong('M0 0h100v50h-100z', { fold: 7 })).toMatch(/Touch the edge/);
    expect(wrong('M0 0h100v50Q50 90 0 50z', { fold: 2 })).toMatch(/not straight/);
    expect(wrong('M0 0H50V-50H100V50H0Z', { fold: 0 })).toMatch(/both sides/);
    expect(wrong('M0 0L100 0L0 50L100 50Z')).toMatch(/crosses itself/);
    const long = Array.from({ length: 2100 }, (_, i) => `L${i / 10} ${(i % 2) / 1000}`).join('');
    expect(wrong(`M0 0${long}V100H0Z`, { corners: [0, 2101, 2102] })).toMatch(/2000/);
  });
});

describe('the lie of a line', () => {
  it('is in degrees clockwise from the upright, either way along it', () => {
    const lie = (d: string) => lieOf(first(`<path d="${d}"/>`));
    expect([lie('M0 0V50'), lie('M0 50V0'), lie('M0 50L50 0'), lie('M0 0L50 50')]).toEqual(
      [0, 0, 45, -45].map((n) => expect.closeTo(n)),
    );
    expect(lie('M0 0H9')).toBeCloseTo(90);
    expect(lie('M0 0H9V9Z')).toBeUndefined();
    expect([asLine(270), asLine(-100), asLine(180)]).toEqual([90, 80, 0]);
  });
});
