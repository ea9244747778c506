import type { Advice } from '../cloth/advice.ts';
import { geometry, writeSource } from '../cloth/source.ts';
import type { Outfit } from '../outfit/outfit.ts';
import { cautionsOf } from './card/cautions.ts';
import { drawingOf } from './card/drawing.ts';
import { readoutOf } from './card/readout.ts';
import { settingsOf } from './card/settings.ts';
import { subjectOf } from './card/subject.ts';
import type { Card } from './card-types.ts';
import type { Running } from './running-types.ts';
import type { StepId } from './step.ts';

/** Only one side was altered, and the description holds both alike. */
const otherSide = (side: 'left' | 'right'): Advice => ({
  say: `These figures are those of the ${side === 'left' ? 'right' : 'left'} side, which stays as it is. The ${side} one differs as the card said that cut or marked it.`,
  source: geometry,
});

/**
 * The card of a step: everything that the bench shows, with the arithmetic done. A figure that cannot be worked out is
 * said in words among the cautions, with what would do; the card itself is always there. Nothing for an unknown step.
 */
export function cardFor(outfit: Outfit, running: Running, id: StepId): Card | undefined {
  const step = running.steps.get(id);
  const on = step && subjectOf(outfit, step);
  if (!step || !on) return undefined;
  const own = running.sequence.filter((other) => running.steps.get(other)?.garment === step.garment);
  const found = readoutOf(on);
  const concerns = running.concerns.filter((concern) => concern.again === id);
  return {
    step: id,
    garment: on.garment.name,
    k: own.indexOf(id) + 1,
    n: own.length,
    station: step.setUp.station,
    say: step.say,
    settings: settingsOf(on),
    drawing: drawingOf(on),
    readout: found.ok ? found.value.readout : { kind: 'none' },
    cautions: [
      ...(found.ok
        ? []
        : [`The figures of this card cannot be worked out. ${found.error.wrong} ${found.error.cure}`]),
      ...concerns.map((concern) => `${concern.say}. That is why it is marked again here.`),
      ...cautionsOf(on),
    ],
    advice: [
      ...(step.again?.side && found.ok && found.value.readout.kind !== 'ticks'
        ? [otherSide(step.again.side)]
        : []),
      ...(found.ok ? found.value.advice : []),
    ],
    waived: running.waived
      .filter((c) => c.before === id || c.after === id)
      .map((c) => `Set aside by you: ${c.because} (${c.rule}; ${writeSource(c.source)})`),
  };
}
