import { type CardsToChoose, type CardToChoose, matching } from './cards-to-choose.ts';
import './choose-card.css';

/** So many ready cards stand open; a long list is looked through by its search field. */
const OPEN_READY = 6;

/**
 * The cards of an outfit to choose from with one touch: the one on the bench, the ready ones, all others by garment.
 * Under `[data-part="on-bench"]`, `[data-part="ready"]` and `[data-part="others"]` each is a button with `data-step`.
 */
export function ChooseCard(props: {
  readonly cards: CardsToChoose;
  /** What stands in the search field. */
  readonly asked: string;
  readonly busy: boolean;
  readonly onAsk: (text: string) => void;
  readonly onChoose: (card: CardToChoose) => void;
}) {
  const { cards, asked, busy, onAsk, onChoose } = props;
  if (!cards.onBench && cards.ready.length + cards.others.length === 0) {
    return <p>Every card of this outfit is done.</p>;
  }
  const looking = asked.trim() !== '';
  const ready = matching(cards.ready, asked);
  const others = cards.others
    .map(({ garment, cards: all }) => ({ garment, cards: matching(all, asked) }))
    .filter(({ cards: left }) => left.length > 0);
  const shared = { busy, onChoose };
  return (
    <>
      {cards.onBench && (
        <div class="choose-card" data-part="on-bench">
          <h3>On the bench now</h3>
          <Cards {...shared} cards={[cards.onBench]} main />
        </div>
      )}
      <label>
        Look for a card
        <input
          type="search"
          class="field"
          value={asked}
          onInput={(event) => onAsk(event.currentTarget.value)}
        />
      </label>
      {ready.length > 0 && (
        <div class="choose-card" data-part="ready">
          <h3>Ready</h3>
          <Cards {...shared} cards={looking ? ready : ready.slice(0, OPEN_READY)} />
          {!looking && ready.length > OPEN_READY && (
            <details>
              <summary>{ready.length - OPEN_READY} more ready</summary>
              <Cards {...shared} cards={ready.slice(OPEN_READY)} />
            </details>
          )}
        </div>
      )}
      {others.length > 0 && (
        <div class="choose-card" data-part="others">
          <h3>All others</h3>
          {others.map(({ garment, cards: left }) => (
            <details key={garment} open={looking}>
              <summary>
                {garment}, {left.length} {left.length === 1 ? 'card' : 'cards'}
              </summary>
              <Cards {...shared} cards={left} />
            </details>
          ))}
        </div>
      )}
      {looking && ready.length + others.length === 0 && (
        <p>No other card has these words. Try one word of what the card says.</p>
      )}
    </>
  );
}

function Cards(props: {
  readonly cards: readonly CardToChoose[];
  readonly busy: boolean;
  readonly onChoose: (card: CardToChoose) => void;
  readonly main?: boolean;
}) {
  return (
    <ul class="cards-to-choose">
      {props.cards.map((card) => (
        <li key={card.step}>
          <button
            type="button"
            class={props.main ? 'main' : 'plain'}
            data-step={card.step}
            disabled={props.busy}
            onClick={() => props.onChoose(card)}
          >
            <b>{card.say}</b>
            <span>{card.garment}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
