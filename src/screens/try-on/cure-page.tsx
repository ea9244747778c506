/**
 * What to change so that a garment fits: the cure with the least work, what it costs, and the runner-up.
 *
 * What others may hold on to: `main[data-part="cure"]`, with `data-state` `reckoning`, `found`, `none` or `nothing-noted`;
 * in it `[data-part="cure-changes"]`, `cure-cost`, `cure-stays`, `cure-compare`, `cure-unmet`, `cure-left`, and the pad;
 * afterwards `main[data-part="cure-accepted"]` with `[data-part="cure-first"]`, `[data-part="to-first"]` and `[data-part="undo"]`.
 */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { Pad } from '../../ui/pad.tsx';
import { Sign } from '../../ui/signs.tsx';
import { markingFor } from '../choices.ts';
import { Head, NotThere } from '../describe/head.tsx';
import type { Session } from '../session.ts';
import { acceptCure } from './cure-accept.ts';
import { CureAccepted } from './cure-accepted.tsx';
import { CureCompare } from './cure-compare.tsx';
import type { Means } from './cure-means.ts';
import { inHand, openNotes } from './cure-notes.ts';
import { type Reckoned, useCures } from './cure-reckon.ts';
import { CureRest } from './cure-rest.tsx';
import { CureShown } from './cure-shown.tsx';
import { costsNothing, writeMinutes } from './cure-words.ts';
import { tryHash } from './notes.ts';
import './cure.css';

interface Here {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly means: Means;
  readonly back: string;
}

/** The page of the cure, reckoned with the means that are handed in. */
export function CureBody(props: {
  readonly session: Session;
  readonly garment: string;
  readonly means: Means;
}) {
  const { session, garment: id, means } = props;
  const accepted = useSignal<string | undefined>(undefined);
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  const progress = session.progress.value;
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const back = tryHash(session, id);
  const open = openNotes(progress, id).length;
  const named = progress.reworks.find((rework) => rework.id === accepted.value);
  const rework = named ?? (open === 0 ? inHand(progress, id) : undefined);
  if (rework) {
    return (
      <CureAccepted
        session={session}
        rework={rework}
        name={garment.name}
        open={open}
        back={back}
        onward={() => {
          accepted.value = undefined;
        }}
      />
    );
  }
  const here: Here = { session, outfit, garment, means, back };
  return open === 0 ? (
    <Frame {...here} state="nothing-noted">
      <p>Nothing is noted yet of what does not fit. Try it on, and touch what you see.</p>
      <a class="main" href={back}>
        What do you see?
      </a>
    </Frame>
  ) : (
    <ToCure
      {...here}
      then={(name) => {
        accepted.value = name;
      }}
    />
  );
}

function Frame(props: Here & { readonly state: string; readonly children: ComponentChildren }) {
  const { session, garment, back, state, children } = props;
  return (
    <main class="page cure" data-part="cure" data-state={state}>
      <Head
        session={session}
        up={[{ say: `${garment.name}: what was seen`, href: back }]}
        title={`How to put it right: ${garment.name}`}
      />
      {children}
    </main>
  );
}

function ToCure(props: Here & { readonly then: (rework: string) => void }) {
  const reckoned = useCures(props.session, props.garment.id, props.means);
  if (reckoned.state === 'found') return <Found {...props} reckoned={reckoned} />;
  return (
    <Frame {...props} state={reckoned.state === 'failed' ? 'none' : 'reckoning'}>
      {reckoned.state === 'failed' ? (
        <>
          <p role="alert">This could not be reckoned. Your notes are kept.</p>
          <a class="main" href={props.back}>
            Look at what was seen
          </a>
        </>
      ) : (
        <p role="status">Reckoning the least work…</p>
      )}
    </Frame>
  );
}

function Found(
  props: Here & {
    readonly then: (rework: string) => void;
    readonly reckoned: Extract<Reckoned, { state: 'found' }>;
  },
) {
  const { session, garment, means, back, then } = props;
  const { cures, notes } = props.reckoned;
  const { best, other } = cures;
  const which = useSignal<'best' | 'other'>('best');
  const fault = useSignal('');
  const chosen = which.value === 'other' && other ? 'other' : 'best';
  const cure = chosen === 'other' ? other : best;
  const marking = markingFor(session.units.value);
  const noteAt = (deed: string): string => tryHash(session, garment.id, 'kept', deed, 'cure');
  if (!cure || !best) {
    return (
      <Frame {...props} state="none">
        <p>
          {cures.unmet.length === 0
            ? 'Nothing that was noted can be reckoned with yet.'
            : 'Nothing that was noted could be put right by changing the pieces.'}
        </p>
        <CureRest cures={cures} notes={notes} means={means} noteAt={noteAt} />
        <a class="main" href={back}>
          Look at what was seen
        </a>
      </Frame>
    );
  }
  const choose = (to: 'best' | 'other'): void => {
    fault.value = '';
    which.value = to;
  };
  const accept = (): void => {
    fault.value = acceptCure(session, cure, notes) ?? '';
    if (fault.value === '') then(cure.undoing.rework.id);
  };
  return (
    <Frame {...props} state="found">
      <p class="cure-kind" role="status">
        {chosen === 'other'
          ? 'The runner-up, chosen by you'
          : other
            ? 'The least work of all ways'
            : 'The way to do it'}
      </p>
      <CureShown {...props} cure={cure} notes={notes} noteAt={noteAt} marking={marking} />
      {other && (
        <CureCompare
          garment={garment}
          best={best}
          other={other}
          chosen={chosen}
          marking={marking}
          choose={choose}
        />
      )}
      <CureRest cures={cures} notes={notes} means={means} noteAt={noteAt} />
      {fault.value !== '' && (
        <p class="fault" role="alert" data-part="problem">
          <Sign name="caution" />
          <span>{fault.value}</span>
        </p>
      )}
      <Pad
        label={costsNothing(cure) ? 'Change the pattern' : 'Put it on the cards'}
        detail={costsNothing(cure) ? 'nothing to undo' : writeMinutes(cure.minutes)}
        onPress={accept}
      />
    </Frame>
  );
}
