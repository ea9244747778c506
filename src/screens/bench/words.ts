import type { Marking } from '../../length/writing.ts';
import { sayLength } from '../../length/writing.ts';
import type { Card } from '../../order/card-types.ts';
import type { Progress, StepProgress } from '../../store/progress-types.ts';
import { secondsLeft, writeDuration } from '../../ui/duration.ts';
import { OPEN_FIGURES } from './from-reckoner.tsx';
import { lineInHand, markInHand } from './pad-act.ts';

/** The readout in one sentence, for the live region and for reading aloud; empty where the card has none. */
export function readoutInWords(card: Card, progress: StepProgress, marking: Marking, now: number): string {
  const { readout } = card;
  switch (readout.kind) {
    case 'none':
      return '';
    case 'ticks': {
      const next = readout.items.find(({ item }) => !progress.items.has(item));
      return next ? `Next: ${next.name}.` : 'All ticked.';
    }
    case 'marks': {
      const found = markInHand(readout, progress.items);
      if (!found) return 'All marks are set.';
      const { set, mark, k } = found;
      return `Mark ${k} of ${set.marks.length}, ${mark.name}: ${sayLength(mark.at, marking)} from ${set.from}.`;
    }
    case 'count': {
      const found = lineInHand(readout, progress.closed);
      if (!found) return 'All lines are done.';
      const counted = progress.counts.get(found.line.item) ?? 0;
      return `${counted} of ${found.line.target} ${readout.of}, line ${found.k} of ${readout.lines.length}.`;
    }
    case 'timers': {
      const parts = readout.timers.map(({ item, name, seconds }) => {
        const running = progress.timers.get(item);
        if (!running) return `${name}, ${writeDuration(seconds)}, not started`;
        return secondsLeft(running, now) > 0 ? `${name} is running` : `${name}: time is up`;
      });
      return `${parts.join('. ')}.`;
    }
  }
}

/** Why a card undoes something or does it again. */
export const soThat = ({ say }: { readonly say: string }): string => `So that it fits: ${say}`;

/**
 * The whole card as sentences, one an utterance: what to do, what it puts right, the settings, the readout, the figures that were put on it
 * and stand open, what to take care of.
 */
export function cardInWords(
  card: Card,
  progress: StepProgress,
  marking: Marking,
  now: number,
  put: Progress['reckoned'] = [],
  rework?: Progress['reworks'][number],
): string[] {
  return [
    `${card.say}.`,
    rework ? `${soThat(rework)}.` : '',
    ...card.settings.map(({ name, figure }) => `${name}: ${figure}.`),
    readoutInWords(card, progress, marking, now),
    ...put.map(
      ({ title, figures }) =>
        `${title}: ${figures
          .slice(0, OPEN_FIGURES)
          .map(({ name, figure }) => `${name}, ${figure}`)
          .join('; ')}.`,
    ),
    ...card.cautions,
  ].filter((sentence) => sentence !== '');
}
