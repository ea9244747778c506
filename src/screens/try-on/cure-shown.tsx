import type { Cure, PieceChange } from '../../fitting/cure-types.ts';
import type { Level } from '../../fitting/entry.ts';
import type { Length } from '../../length/length.ts';
import type { Marking } from '../../length/writing.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import type { Seen } from '../../store/progress-types.ts';
import { BeforeAfter } from '../../ui/before-after.tsx';
import { LengthFigure } from '../../ui/figure.tsx';
import type { Session } from '../session.ts';
import { CureCost } from './cure-cost.tsx';
import type { Means } from './cure-means.ts';
import { causeOf, seenWords } from './cure-notes.ts';
import {
  changeSentences,
  changesAt,
  costsNothing,
  figuresOf,
  garmentAfter,
  howWords,
  pieceName,
  whichWords,
} from './cure-words.ts';

/** One cure, all of it: what changes, why, what it costs, before and after. */
export function CureShown(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly cure: Cure;
  readonly notes: readonly Seen[];
  readonly means: Means;
  /** The page of a note, by the name of its deed. */
  readonly noteAt: (deed: string) => string;
  readonly marking: Marking;
}) {
  const { outfit, garment, cure, notes, means, noteAt, marking } = props;
  const after = garmentAfter(outfit, garment.id, cure);
  const heights = { before: means.levels(garment), after: after && means.levels(after) };
  return (
    <>
      <section class="cure-changes" data-part="cure-changes">
        {cure.changes.map((change) => (
          <Change
            key={`${change.piece} ${change.side}`}
            change={change}
            cure={cure}
            garment={garment}
            marking={marking}
          />
        ))}
        {cure.adds.map(({ work }) => (
          <p key={work.id} class="cure-headline">
            Sewn in besides: {work.name} ({pieceName(garment, work.on)})
          </p>
        ))}
        {cure.gathers?.map(({ work, say }) => (
          <p key={work}>{say}</p>
        ))}
      </section>
      <section data-part="cure-why">
        <h2>Make sure before you {costsNothing(cure) ? 'change it' : 'unpick'}</h2>
        <ul class="cure-list">
          {cure.taken.map(({ observation, cause }) => (
            <Why
              key={observation}
              note={notes.find(({ deed }) => deed === observation)}
              cause={cause}
              means={means}
              href={noteAt(observation)}
            />
          ))}
        </ul>
      </section>
      <CureCost {...props} />
      {cure.changes.length > 0 && (
        <section data-part="cure-drawings">
          <h2>Before and after</h2>
          {cure.changes.map((change) => (
            <Drawn
              key={`${change.piece} ${change.side}`}
              change={change}
              garment={garment}
              levels={{ before: heights.before.get(change.piece), after: heights.after?.get(change.piece) }}
              marking={marking}
            />
          ))}
        </section>
      )}
    </>
  );
}

function Change(props: {
  readonly change: PieceChange;
  readonly cure: Cure;
  readonly garment: Garment;
  readonly marking: Marking;
}) {
  const { change, cure, garment, marking } = props;
  const piece = garment.pieces.find(({ id }) => id === change.piece);
  const figures = figuresOf(change.amounts, marking);
  const which = whichWords(piece, change.side);
  return (
    <div class="cure-change">
      <p class="cure-headline">
        {piece?.name ?? change.piece}: {howWords(change, cure)}
      </p>
      {which !== '' && <p class="cure-which">{which}</p>}
      {figures.length === 0 && change.say !== '' && <p class="cure-amount">{change.say}</p>}
      {figures.map(({ written, words }) => (
        <p key={words} class="cure-amount">
          <LengthFigure written={written} /> <span>{words}</span>
        </p>
      ))}
      {change.side !== 'both' && (
        <p class="quiet">
          The description keeps left and right alike. Figures on the cards stay those of the other side; the
          card that cuts or marks it says how it differs.
        </p>
      )}
    </div>
  );
}

function Why({
  note,
  cause,
  means,
  href,
}: {
  readonly note: Seen | undefined;
  readonly cause: string;
  readonly means: Means;
  readonly href: string;
}) {
  const entry = note && means.entry(note.entry);
  const found = causeOf(entry, cause);
  return (
    <li>
      <p class="cure-test">
        {note?.sure === cause ? 'Your test has shown it.' : (found?.test ?? 'No test is known.')}
      </p>
      <details>
        <summary>{seenWords(note, entry)}</summary>
        {found && <p>It is taken that {found.is}.</p>}
        {found?.limits !== undefined && <p>{found.limits}</p>}
        <a class="plain" href={href}>
          It shows something else<span class="unseen">: {seenWords(note, entry)}</span>
        </a>
      </details>
    </li>
  );
}

function Drawn(props: {
  readonly change: PieceChange;
  readonly garment: Garment;
  readonly levels: {
    readonly before: ReadonlyMap<Level, Length> | undefined;
    readonly after: ReadonlyMap<Level, Length> | undefined;
  };
  readonly marking: Marking;
}) {
  const { change, garment, levels, marking } = props;
  const piece = garment.pieces.find(({ id }) => id === change.piece);
  const name = piece?.name ?? change.piece;
  const which = whichWords(piece, change.side);
  return (
    <BeforeAfter
      name={name}
      before={change.before}
      after={change.after}
      changes={changesAt(change.amounts, levels.after, marking)}
      said={changeSentences(change, which === '' ? name : `${name}, ${which}`, levels, marking)}
      marking={marking}
    />
  );
}
