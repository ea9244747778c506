import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { grainLine, placesMarked } from '../../src/paper/piece-marks.ts';
import { holds } from '../../src/shape/clip.ts';
import { demo } from '../outfit/demo-files.ts';
import { at, rectangle } from '../shape/shapes.ts';

describe('a grain line', () => {
  it.each([0, 20, 45, 90, -60, 120])('lies at %d degrees to the upright, inside the piece', (degrees) => {
    for (const outline of [rectangle(200, 600), rectangle(600, 80)]) {
      const found = grainLine(outline, degrees)!;
      const [a, b] = found.drawn.kind === 'path' ? found.drawn.points : [];
      const turn = (Math.atan2(b!.x - a!.x, a!.y - b!.y) * 180) / Math.PI;
      expect((((turn - degrees) % 180) + 180.0005) % 180).toBeCloseTo(0.0005, 3);
      for (const p of [a!, b!, found.middle]) expect(holds(outline, p)).toBe(true);
      expect(Math.hypot(b!.x - a!.x, b!.y - a!.y)).toBeGreaterThan(mm(40));
    }
  });

  it('is upright where nothing else is said, and nothing where there is no room', () => {
    expect(grainLine(rectangle(200, 600))).toEqual(grainLine(rectangle(200, 600), 0));
    expect(grainLine([at(0, 0), at(1, 0)])).toBeUndefined();
  });
});

describe('the places marked on a piece', () => {
  it('are crosses with their names, where they lie on the sheet', () => {
    const [piece] = demo('plain-shirt').garments[0]!.pieces;
    const drawn = placesMarked({ ...piece!, marks: [{ name: 'Pocket', at: at(10, 20) }] }, (p) =>
      at(p.x / 1e6 + 5, p.y / 1e6),
    );
    expect(drawn).toMatchObject([
      { stroke: 'mark', points: [at(12, 20), at(18, 20)] },
      { stroke: 'mark', points: [at(15, 17), at(15, 23)] },
      { words: 'Pocket' },
    ]);
  });
});
