import type { Cure } from '../../fitting/cure-types.ts';
import type { Marking } from '../../length/writing.ts';
import type { Garment } from '../../outfit/outfit.ts';
import { figuresOf, howWords, listed, pieceName, whichWords, writeMinutes } from './cure-words.ts';

/** The best cure and the runner-up side by side; either can be chosen. */
export function CureCompare(props: {
  readonly garment: Garment;
  readonly best: Cure;
  readonly other: Cure;
  readonly chosen: 'best' | 'other';
  readonly marking: Marking;
  readonly choose: (which: 'best' | 'other') => void;
}) {
  const { best, other, chosen, choose, ...rest } = props;
  const more = other.minutes - best.minutes;
  // Less likely causes are passed over unless they save much.
  const quicker = Math.round(more) < 0;
  return (
    <section data-part="cure-compare">
      <h2>The other way to do it</h2>
      <div class="cure-two">
        {(['best', 'other'] as const).map((which) => (
          <One
            key={which}
            {...rest}
            cure={which === 'best' ? best : other}
            title={which === 'other' ? 'The runner-up' : quicker ? 'The likelier causes' : 'Least work'}
            more={
              which === 'other' && Math.round(more) !== 0
                ? `, ${writeMinutes(Math.abs(more))} ${quicker ? 'less, from less likely causes' : 'more'}`
                : ''
            }
            chosen={which === chosen}
            choose={() => choose(which)}
          />
        ))}
      </div>
    </section>
  );
}

function One(props: {
  readonly garment: Garment;
  readonly cure: Cure;
  readonly title: string;
  readonly more: string;
  readonly chosen: boolean;
  readonly marking: Marking;
  readonly choose: () => void;
}) {
  const { garment, cure, title, more, chosen, marking, choose } = props;
  const { opened, forced } = cure.undoing;
  return (
    <div class="cure-one" data-chosen={chosen ? 'yes' : 'no'}>
      <h3>{title}</h3>
      <ul class="cure-list">
        {cure.changes.map((change) => (
          <li key={`${change.piece} ${change.side}`}>
            <b>{pieceName(garment, change.piece)}</b> {howWords(change, cure)}
            {change.side !== 'both' && `, ${whichWords(undefined, change.side)}`}
            {figuresOf(change.amounts, marking).map(({ written, words }) => `, ${written.text} ${words}`)}
          </li>
        ))}
        {cure.adds.map(({ work }) => (
          <li key={work.id}>{work.name} sewn in</li>
        ))}
        {cure.gathers?.map(({ work, say }) => (
          <li key={work}>{say}</li>
        ))}
      </ul>
      <p>
        <b>{writeMinutes(cure.minutes)}</b>
        {more}
      </p>
      <p>{opened.length === 0 ? 'Nothing is opened' : `Opened: ${listed(opened.map(({ name }) => name))}`}</p>
      {forced.length > 0 && <p>New: {listed(forced.map(({ piece }) => pieceName(garment, piece)))}</p>}
      <button type="button" class="plain" aria-pressed={chosen} onClick={choose}>
        {chosen ? 'Chosen' : 'Choose this one instead'}
      </button>
    </div>
  );
}
