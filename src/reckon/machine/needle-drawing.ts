import type { Needle } from '../../cloth/needles.ts';
import { type Length, mm, nm, zero } from '../../length/length.ts';
import { line, place, ring, words } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import type { Point } from '../../shape/outline.ts';

/** So much of the blade is drawn, up from the point. */
const BLADE: Length = mm(9);
/** The eye is two fifths as wide as the blade; from memory. */
const EYE = 0.4;

/**
 * The lower end of a needle at its true thickness: blade, eye and point. The point is drawn blunter where it is a ball
 * point; how long it is, is not to scale.
 */
export function needleDrawn({ metric, point }: Pick<Needle, 'metric' | 'point'>): Drawn[] {
  const thick = nm((mm(1) * metric) / 100);
  const half = nm(thick / 2);
  const long = BLADE;
  const tip = nm(long - 2.2 * thick);
  const blunt = point === 'ball' ? 0.28 : 0.06;
  const steps = 16;
  // From the blade to the tip the thickness falls off like a quarter of a wave; the very end is rounded.
  const taper = (i: number): Point => {
    const t = i / steps;
    const left = (1 - blunt) * Math.cos((t * Math.PI) / 2) ** 0.9 + blunt * Math.sqrt(1 - t * t);
    return place(nm(tip + t * 2.2 * thick), nm(half * left));
  };
  const under = Array.from({ length: steps + 1 }, (_, i) => taper(i));
  const over = under.map(({ x, y }) => place(x, nm(-y))).reverse();
  const outline = [place(zero, nm(-half)), place(zero, half), ...under, ...over.slice(1)];
  const [eyeFrom, eyeTo] = [nm(tip - 2 * thick), nm(tip - 0.3 * thick)];
  const round = nm(half * EYE);
  const eye = Array.from({ length: 24 }, (_, i) => {
    const angle = (i * Math.PI) / 12;
    const middle = Math.cos(angle) < 0 ? eyeFrom : eyeTo;
    return place(nm(middle + round * Math.cos(angle)), nm(round * Math.sin(angle)));
  });
  const size = nm(long / 25);
  const down = nm(half + size * 3);
  return [
    ring('body', outline),
    ring('body', eye),
    line('thin', place(zero, nm(-half - size)), place(zero, nm(half + size))),
    words(`${metric / 100} mm thick, drawn large`, place(zero, down), size),
  ];
}
