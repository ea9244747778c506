import type { Running } from '../../order/running-types.ts';
import type { Step, StepId } from '../../order/step.ts';
import type { Progress } from '../../store/progress-types.ts';
import { nextStep } from '../next-step.ts';

/** A card to choose: its step, what it says, the name of its garment, and how it stands. */
export interface CardToChoose {
  readonly step: StepId;
  readonly say: string;
  readonly garment: string;
  readonly state: 'on the bench' | 'ready' | 'waits';
}

/**
 * The cards of an outfit, the likeliest first; each stands in one place only. Those done are left out, for they do not
 * come to the bench again.
 */
export interface CardsToChoose {
  /** The one on the bench, or the one that would be opened there. */
  readonly onBench: CardToChoose | undefined;
  /** Those that can be worked on now. */
  readonly ready: readonly CardToChoose[];
  /** All others by garment. */
  readonly others: readonly { readonly garment: string; readonly cards: readonly CardToChoose[] }[];
}

/**
 * Sorts the cards of an outfit for choosing one. `garments` are names by id; `now` in ms since 1970 says which of the
 * ready ones need not rest, where no card is open.
 */
export function cardsToChoose(
  running: Pick<Running, 'steps' | 'sequence' | 'doneCount' | 'ready' | 'constraints'>,
  progress: Pick<Progress, 'open' | 'done' | 'steps'>,
  garments: ReadonlyMap<string, string>,
  now: number,
): CardsToChoose {
  const asked = progress.open !== undefined && running.steps.has(progress.open) ? progress.open : undefined;
  const open = asked ?? nextStep(running, progress, now);
  const cardOf = (step: Step): CardToChoose => ({
    step: step.id,
    say: step.say,
    garment: garments.get(step.garment) ?? step.garment,
    state: step.id === open ? 'on the bench' : running.ready.has(step.id) ? 'ready' : 'waits',
  });
  const ready: CardToChoose[] = [];
  const others = new Map<string, CardToChoose[]>();
  for (const id of running.sequence.slice(running.doneCount)) {
    const step = running.steps.get(id);
    if (!step || id === open) continue;
    const card = cardOf(step);
    const there = others.get(card.garment);
    if (card.state === 'ready') ready.push(card);
    else if (there) there.push(card);
    else others.set(card.garment, [card]);
  }
  const here = open === undefined ? undefined : running.steps.get(open);
  return {
    onBench: here && cardOf(here),
    ready,
    others: [...others].map(([garment, cards]) => ({ garment, cards })),
  };
}

/** The cards in whose words, or whose garment's, every word of `asked` is found; all of them where nothing is asked. */
export function matching(cards: readonly CardToChoose[], asked: string): readonly CardToChoose[] {
  const words = asked.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return cards;
  return cards.filter(({ say, garment }) => {
    const text = `${say} ${garment}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
