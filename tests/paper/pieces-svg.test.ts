import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { piecesSvg } from '../../src/paper/pieces-svg.ts';
import { flattenOutline } from '../../src/shape/flatten.ts';
import { boundingBox } from '../../src/shape/measure.ts';
import type { Outline, Point } from '../../src/shape/outline.ts';
import { traceOutline } from '../../src/traced/piece-outline.ts';
import { demo, demos } from '../outfit/demo-files.ts';
import { drawn, possible } from '../traced/read.ts';

/** All points that an outline is made of, with the names of its edges, turned so that it begins with a given edge. */
function pointsOf({ start, edges }: Outline, begins: string): readonly (readonly [string, Point])[] {
  const i = edges.findIndex(({ name }) => name === begins);
  const turned = [...edges.slice(i), ...edges.slice(0, i)];
  return [
    ['start', edges[i - 1]?.segments.at(-1)?.to ?? start],
    ...turned.flatMap(({ name, segments }) =>
      segments.flatMap((one) =>
        (one.kind === 'curve' ? [one.first, one.second, one.to] : [one.to]).map((p) => [name, p] as const),
      ),
    ),
  ];
}

describe.each(demos)('the pieces of %s written for a drawing program', (name) => {
  const { garments } = demo(name);

  it('come back with the same outlines within 0.01 mm, and the names of their edges', () => {
    for (const garment of garments) {
      const { lines, trueSize, left } = drawn(piecesSvg(garment));
      expect([trueSize, left.filter((one) => !/words/.test(one))]).toEqual([true, []]);
      const back = lines.filter(({ known }) => known !== undefined);
      expect(back.map((line) => line.name)).toEqual(garment.pieces.map((piece) => piece.name));
      for (const [i, piece] of garment.pieces.entries()) {
        const { known, ...run } = back[i]!;
        expect([known!.cut, known!.grain]).toEqual([piece.cut, piece.grain ?? 0]);
        const starts = known!.edges.map((_, k) =>
          known!.edges.slice(0, k).reduce((sum, { count }) => sum + count, 0),
        );
        const corners = new Map(known!.edges.map((edge, k) => [starts[k]!, edge.name]));
        const fold = [...corners].find(([, edge]) => edge === 'fold')?.[0];
        const { outline } = possible(
          traceOutline({
            run,
            corners: [...corners.keys()],
            named: (at) => corners.get(at) ?? '',
            scale: 1,
            ...(piece.cut === 'fold' && fold !== undefined ? { fold } : {}),
          }),
        );
        const begins = piece.outline.edges[0]!.name;
        const [was, now] = [pointsOf(piece.outline, begins), pointsOf(outline, begins)];
        expect(now.map(([edge]) => edge)).toEqual(was.map(([edge]) => edge));
        // The drawing lies elsewhere on the sheet; only where its corner is may differ.
        const [a, b] = [boundingBox(flattenOutline(piece.outline)), boundingBox(flattenOutline(outline))];
        for (const [k, [, p]] of now.entries()) {
          const q = was[k]![1];
          expect(Math.abs(p.x - b.left - (q.x - a.left))).toBeLessThan(mm(0.01));
          expect(Math.abs(p.y - b.top - (q.y - a.top))).toBeLessThan(mm(0.01));
        }
      }
    }
  });

  it('have their cutting line, seam line, grain and marks in groups of their own, inside the sheet', () => {
    for (const garment of garments) {
      const text = piecesSvg(garment);
      for (const piece of garment.pieces) {
        expect(text).toContain(`<g id="${piece.id}-seam-line">`);
        expect(text).toContain(`<g id="${piece.id}-cut-line">`);
        expect(text).toContain(`<g id="${piece.id}-grain">`);
      }
      const box = /viewBox="([^"]*)"/.exec(text)![1]!.split(' ').map(Number);
      for (const { start, segments } of drawn(text).lines) {
        const { left, top, right, bottom } = boundingBox([start, ...segments.map(({ to }) => to)]);
        expect(Math.min(left, top)).toBeGreaterThan(0);
        expect(right).toBeLessThan(mm(box[2]!));
        expect(bottom).toBeLessThan(mm(box[3]!));
      }
    }
  });
});
