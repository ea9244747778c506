import { expect, test } from 'vitest';
import { stretchLeg } from '../../../src/cloth/stretch-leg.ts';
import { mm, nm, toMm } from '../../../src/length/index.ts';
import {
  across,
  inUnit,
  legNotes,
  levelsDrawn,
  linesOf,
  readable,
  seamAndCut,
  sidesDrawn,
} from '../../../src/reckon/legs/leg-drawing.ts';
import { boundingBox, holds } from '../../../src/shape/index.ts';
import { made } from '../../cloth/good.ts';
import { bodies, legOf } from '../../outside/stretch-bodies.ts';

const gauge = {
  round: { rest: mm(100), stretched: mm(190) },
  along: { rest: mm(100), stretched: mm(150) },
};
const legs = bodies.slice(0, 10).map((body) => made(stretchLeg({ gauge, measures: legOf(body) })));
const allowances = { seam: mm(10), hem: mm(25) };

test('the cut line lies outside the seam line, on every body', () => {
  for (const leg of legs) {
    const { seam, cut, drawn } = made(seamAndCut(leg.outline, allowances));
    for (const point of seam) expect(holds(cut, point)).toBe(true);
    expect(drawn.map((one) => one.kind === 'path' && one.stroke)).toEqual(['cut', 'seam']);
    expect(toMm(boundingBox(cut).bottom) - toMm(boundingBox(seam).bottom)).toBeCloseTo(25, 3);
  }
});

test('a level across the leg is as long as its girth, and is named', () => {
  for (const leg of legs) {
    const { seam } = made(seamAndCut(leg.outline, allowances));
    const knee = leg.levels.find(({ name }) => name === 'knee')!;
    const [from, to] = across(seam, knee.y)!;
    expect(toMm(nm(to.x - from.x))).toBeCloseTo(toMm(knee.finished), 0);
    const named = levelsDrawn(leg, seam).flatMap((one) => (one.kind === 'words' ? [one.words] : []));
    expect(named).toEqual(expect.arrayContaining(['hip', 'crotch', 'thigh', 'knee', 'calf']));
  }
});

test('the arrow of the stretch keeps off the lines of the levels, inside the leg', () => {
  for (const leg of legs) {
    const { seam } = made(seamAndCut(leg.outline, allowances));
    const [arrow, ...words] = sidesDrawn(seam, leg.crotchLevel, leg.levels.at(-1)!.y, linesOf(leg));
    const points = arrow?.kind === 'path' ? arrow.points : [];
    for (const point of points) expect(holds(seam, point)).toBe(true);
    for (const y of linesOf(leg)) expect(Math.abs(toMm(points[0]!.y) - toMm(y))).toBeGreaterThan(20);
    expect(words.map((one) => one.kind === 'words' && one.words)).toEqual(['most stretch', 'back', 'front']);
  }
});

test('letters grow with the piece; notes are in the unit of the maker', () => {
  const { cut } = made(seamAndCut(legs[0]!.outline, allowances));
  const doubled = cut.map(({ x, y }) => ({ x: nm(x * 2), y: nm(y * 2) }));
  expect(toMm(readable(doubled))).toBeCloseTo(toMm(readable(cut)) * 2, 5);
  expect(inUnit(mm(25.4), 'in')).toBe('1 in');
  expect(legNotes({ seam: mm(6), hem: mm(20) }, 'mm', true)[1]).toBe(
    'Allowances drawn: 6 mm at the seams, 20 mm at the waist.',
  );
});

test('allowances that the outline has no room for are refused at the seam', () => {
  expect(seamAndCut(legs[0]!.outline, { seam: mm(-5), hem: mm(0) })).toMatchObject({
    ok: false,
    error: { field: 'seam' },
  });
});
