import { type Advice, advise } from './advice.ts';
import { practice } from './source.ts';
import type { Cubic } from './stretch-leg-curves.ts';
import { BALL_FROM_TIP, FOOT_BEFORE_ANKLE } from './stretch-leg-measures.ts';

/** Levels of a tube foot below the ankle, in nanometres down the draft, and what is said about it. */
export interface FootTube {
  readonly heel: number;
  readonly ball: number;
  readonly tip: number;
  readonly advice: readonly Advice[];
}

/**
 * A foot as a tube that runs straight on, without a turned heel: as long as the mean of the way over the heel and sole
 * and the way down the instep. The way behind is longer, so the cloth must give along the leg there.
 */
export function footTube(
  ankleLevel: number,
  ankleHeight: number,
  footLength: number,
  shorten: number,
  stretchAlong: number,
): FootTube {
  const behind = ankleHeight + footLength;
  const infront = Math.hypot(ankleHeight, FOOT_BEFORE_ANKLE.value * footLength);
  const tube = (behind + infront) / 2;
  const at = (part: number): number => ankleLevel + part * (1 - shorten);
  const advice = [
    advise(
      'The foot is a straight tube without a turned heel: baste it and try it on before the seam is sewn.',
      practice,
    ),
  ];
  if (behind > tube * (1 - shorten) * (1 + stretchAlong)) {
    advice.push(
      advise(
        'The cloth gives too little along the leg to go round the heel in a tube: leave the foot off, or take another cloth for it.',
        practice,
      ),
    );
  }
  return {
    heel: at(ankleHeight / 2),
    ball: at(tube - BALL_FROM_TIP.value * footLength),
    tip: at(tube),
    advice,
  };
}

/** The toe of the front half: from the inner seam down round the toes and up to the outer side. */
export function toeCurves(half: number, start: number, tip: number): readonly [Cubic, Cubic] {
  const middle = half / 2;
  const [deep, wide] = [(tip - start) * 0.55, middle * 0.55];
  return [
    [
      { x: half, y: start },
      { x: half, y: start + deep },
      { x: middle + wide, y: tip },
      { x: middle, y: tip },
    ],
    [
      { x: middle, y: tip },
      { x: middle - wide, y: tip },
      { x: 0, y: start + deep },
      { x: 0, y: start },
    ],
  ];
}
