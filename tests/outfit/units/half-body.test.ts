import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, toMm, zero } from '../../../src/length/length.ts';
import { panelOutlines, wholeOutline } from '../../../src/outfit/units/body-outlines.ts';
import { drawHalf } from '../../../src/outfit/units/half-body.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { edgeLengths, outlineArea } from '../../../src/shape/measure.ts';
import { sidesCross } from '../../../src/shape/offset-crossing.ts';

const length = (min: number, max: number) => fc.integer({ min, max }).map(mm);
/** Figures of bodies from a child's to a very large one's, in millimetres. */
const bodies = fc.record({
  chest: length(200, 420),
  waist: fc.option(length(150, 400), { nil: undefined }),
  hem: fc.option(length(180, 500), { nil: undefined }),
  neckWide: length(50, 100),
  neckDeep: length(15, 120),
  shoulder: length(80, 160),
  slope: length(0, 60),
  armhole: length(170, 330),
  across: fc.constant(undefined),
  side: length(400, 900),
  below: length(0, 300),
  allowance: fc.constant(mm(15)),
});
const necks = fc.constantFrom('front' as const, 'back' as const);

describe('half a body drawn from measured lengths', () => {
  it('is as long at shoulder and side as was asked, closes, and never crosses itself', () => {
    fc.assert(
      fc.property(bodies, necks, length(0, 30), (body, neck, lap) => {
        const drawn = drawHalf(body, neck, lap);
        if (!drawn.ok) return;
        const outline = wholeOutline(drawn.value, { name: 'opening', lap });
        const lengths = edgeLengths(outline);
        expect(toMm(lengths.get('side')!)).toBeCloseTo(toMm(body.side), 3);
        expect(toMm(lengths.get('shoulder')!)).toBeCloseTo(toMm(body.shoulder), 4);
        expect(outline.edges.at(-1)?.segments.at(-1)?.to).toEqual(outline.start);
        expect(sidesCross(flattenOutline(outline))).toBe(false);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('is mostly not refused for such bodies', () => {
    const taken = fc
      .sample(bodies, { seed: 7, numRuns: 300 })
      .filter((body) => drawHalf(body, 'front', zero).ok);
    expect(taken.length).toBeGreaterThan(270);
  });

  it('is the same cloth in one piece and in two, and both edges of the panel seam are equally long', () => {
    fc.assert(
      fc.property(
        bodies,
        necks,
        fc.constantFrom('shoulder' as const, 'armhole' as const),
        (body, neck, from) => {
          const straight = { ...body, waist: undefined };
          const drawn = drawHalf(straight, neck, zero);
          if (!drawn.ok) return;
          const centre = { name: 'fold', lap: zero } as const;
          const out = mm(toMm(body.chest) * 0.42);
          const panels = panelOutlines(drawn.value, centre, { from, along: 0.45, out, takes: zero });
          expect(edgeLengths(panels.centre).get('panel')).toBe(edgeLengths(panels.side).get('panel'));
          const whole = outlineArea(wholeOutline(drawn.value, centre));
          expect((outlineArea(panels.centre) + outlineArea(panels.side)) / whole).toBeCloseTo(1, 4);
          const shaped = panelOutlines(drawn.value, centre, { from, along: 0.45, out, takes: mm(12) });
          const [one, other] = [shaped.centre, shaped.side].map((each) => edgeLengths(each).get('panel')!);
          expect(toMm(one!)).toBeCloseTo(toMm(other!), 3);
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });
});
