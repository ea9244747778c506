/**
 * Puts reckoned figures on the card of a step, where they stand at the bench.
 *
 * What others may hold on to: `[data-part="put-on-card"]`; a select `Outfit` where there are several; the cards as in
 * choose-card.tsx; after the touch `[data-part="put"]` with the link `To the bench` and the button `Undo`, and in a
 * ready one `Work on that card`; `[data-part="no-outfit"]`.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Running } from '../../order/running-types.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import type { DeedId } from '../../store/deed.ts';
import type { Progress } from '../../store/progress-types.ts';
import { MOST_FIGURES } from '../../store/reckoned.ts';
import { now } from '../../ui/clock.ts';
import { type CardToChoose, cardsToChoose } from '../bench/cards-to-choose.ts';
import { ChooseCard } from '../bench/choose-card.tsx';
import { go, writeHash } from '../route.ts';
import { ledger, rooms, writeDown } from '../workroom.ts';
import { ruleInUse } from './rule.ts';
import './put-on-card.css';

interface OnDevice {
  readonly id: string;
  readonly name: string;
  readonly progress: Progress;
  /** Missing where the description cannot be read. */
  readonly outfit: Outfit | undefined;
}

interface Done {
  readonly card: CardToChoose;
  readonly outfit: string;
  readonly deed: DeedId;
}

/** When the maker will see them, where that is not at once. */
const WHEN: Readonly<Record<CardToChoose['state'], string>> = {
  'on the bench': '',
  ready: ' They stand there when that card is opened.',
  waits: ' They stand there when that card comes up.',
};

const words = (error: unknown): string => (error instanceof Error ? error.message : String(error));

async function outfitsHere(): Promise<readonly OnDevice[]> {
  const [open, { readOutfit }] = await Promise.all([ledger(), rooms()]);
  const found: OnDevice[] = [];
  for (const { outfit: id } of await open.outfits()) {
    const progress = await open.load(id);
    const read = readOutfit(progress.description);
    const outfit = read.ok ? read.value : undefined;
    found.push({ id, name: outfit?.name ?? id, progress, outfit });
  }
  return found;
}

const garmentsOf = ({ outfit }: OnDevice): ReadonlyMap<string, string> =>
  new Map(outfit?.garments.map(({ id, name }) => [id, name]));

async function orderOf({ outfit, progress }: OnDevice): Promise<Running | undefined> {
  const { runningOrder } = await rooms();
  const order = outfit && runningOrder(outfit, progress);
  return order?.ok ? order.value : undefined;
}

/** What is put on a card: the reckoning, what stood in its fields, and its figures, as they are read. */
export interface PutOnCardProps {
  /** Stands over the figures on the card: `Parallel tucks`. */
  readonly title: string;
  /** Id of the reckoning, to open it again from the card. */
  readonly reckoning: string;
  /** What was written in its fields, under the rule that the reckoner goes by; fields never touched may be missing. */
  readonly entries: Readonly<Record<string, string>>;
  /** Most wanted first; the first 60 go on the card. */
  readonly figures: readonly { readonly name: string; readonly figure: string }[];
}

/** Chooses the outfit and the card, puts the figures on it with one touch, and takes them off with another. */
export default function PutOnCard({ title, reckoning, entries, figures }: PutOnCardProps) {
  const here = useSignal<readonly OnDevice[] | undefined>(undefined);
  const chosen = useSignal<OnDevice | undefined>(undefined);
  const order = useSignal<Running | undefined | 'none'>(undefined);
  const asked = useSignal('');
  const answer = useSignal('');
  const done = useSignal<Done | undefined>(undefined);
  const busy = useSignal(false);

  const choose = async (one: OnDevice | undefined): Promise<void> => {
    chosen.value = one;
    order.value = undefined;
    if (!one) return;
    const found = await orderOf(one);
    if (chosen.value === one) order.value = found ?? 'none';
  };
  const say = (error: unknown): void => {
    answer.value = words(error);
  };
  useEffect(() => {
    outfitsHere()
      .then((found) => {
        here.value = found;
        // The one worked on last comes first.
        return choose(found[0]);
      })
      .catch(say);
  }, []);

  /** One deed at a time: a second touch before the ledger has the first would put it twice. */
  const write = async (work: () => Promise<void>): Promise<void> => {
    if (busy.peek()) return;
    busy.value = true;
    answer.value = '';
    try {
      await work();
    } catch (error) {
      say(error);
    } finally {
      busy.value = false;
    }
  };
  const put = (outfit: string, card: CardToChoose): Promise<void> =>
    write(async () => {
      const [deed] = await writeDown(outfit, [
        {
          kind: 'reckoned',
          step: card.step,
          reckoning,
          title,
          // Where a length is written without its unit, the rule that the reckoner goes by is meant.
          unit: ruleInUse().unit,
          entries,
          figures: figures.slice(0, MOST_FIGURES),
        },
      ]);
      if (!deed) return;
      done.value = { card, outfit, deed: deed.id };
      answer.value = `On the card now: ${card.say}, ${card.garment}.${WHEN[card.state]}`;
    });
  const takeBack = ({ outfit, deed, card }: Done): Promise<void> =>
    write(async () => {
      await writeDown(outfit, [{ kind: 'undone', deed }]);
      done.value = undefined;
      answer.value = `Taken off again: ${card.say}.`;
    });
  const workOn = ({ outfit, card }: Done): Promise<void> =>
    write(async () => {
      await writeDown(outfit, [{ kind: 'step-opened', step: card.step }]);
      go({ screen: 'bench', outfit });
    });

  const { value: outfit } = chosen;
  return (
    <section class="put-on-card" data-part="put-on-card" aria-label="Put on the card">
      {here.value === undefined && answer.value === '' && <p role="status">Opening the ledger…</p>}
      {here.value?.length === 0 && (
        <div data-part="no-outfit">
          <p>There is no outfit on this device yet. Begin one, and its cards can hold these figures.</p>
          <a class="main" href={writeHash({ screen: 'outfits' })}>
            To the outfits
          </a>
        </div>
      )}
      <p role="status">{answer.value}</p>
      {done.value ? (
        <Put
          done={done.value}
          busy={busy.value}
          onUndo={takeBack}
          onWork={workOn}
          onMore={() => {
            done.value = undefined;
            answer.value = '';
          }}
        />
      ) : (
        <>
          {figures.length > MOST_FIGURES && (
            <p class="quiet">
              The first {MOST_FIGURES} of {figures.length} figures go on the card.
            </p>
          )}
          {(here.value?.length ?? 0) > 1 && (
            <label>
              Outfit
              <select
                class="field"
                value={outfit?.id}
                onChange={(event) => {
                  const { value } = event.currentTarget;
                  choose(here.value?.find(({ id }) => id === value)).catch(say);
                }}
              >
                {here.value?.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
          )}
          {here.value?.length === 1 && <p class="quiet">{outfit?.name}</p>}
          {outfit && order.value === undefined && <p role="status">Laying out its cards…</p>}
          {outfit && order.value === 'none' && (
            <p>
              This outfit has no cards yet.{' '}
              <a href={writeHash({ screen: 'order', outfit: outfit.id })}>Its running order</a> says why.
            </p>
          )}
          {outfit && typeof order.value === 'object' && (
            <ChooseCard
              cards={cardsToChoose(order.value, outfit.progress, garmentsOf(outfit), now.peek())}
              asked={asked.value}
              busy={busy.value}
              onAsk={(text) => {
                asked.value = text;
              }}
              onChoose={(card) => put(outfit.id, card)}
            />
          )}
        </>
      )}
    </section>
  );
}

function Put(props: {
  readonly done: Done;
  readonly busy: boolean;
  readonly onUndo: (done: Done) => void;
  readonly onWork: (done: Done) => void;
  readonly onMore: () => void;
}) {
  const { done, busy, onUndo, onWork, onMore } = props;
  const bench = useRef<HTMLAnchorElement>(null);
  // The button that was touched is gone; the keyboard goes on from here.
  useEffect(() => bench.current?.focus(), []);
  return (
    <div class="choice" data-part="put">
      <a class="main" ref={bench} href={writeHash({ screen: 'bench', outfit: done.outfit })}>
        To the bench
      </a>
      {done.card.state === 'ready' && (
        <button type="button" class="plain" disabled={busy} onClick={() => onWork(done)}>
          Work on that card
        </button>
      )}
      <button type="button" class="plain" disabled={busy} onClick={() => onUndo(done)}>
        Undo
      </button>
      <button type="button" class="plain" onClick={onMore}>
        On another card too
      </button>
    </div>
  );
}
