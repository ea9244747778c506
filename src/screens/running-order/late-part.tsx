import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import { GUESSED_CHANCE } from '../../fitting/misfits.ts';
import { pointsOf } from '../../order/undoing/late.ts';
import { EffectSheet } from '../describe/effect-sheet.tsx';
import type { Session } from '../session.ts';
import { GateOffers } from './gate-offers.tsx';
import { LateCurve } from './late-curve.tsx';
import { type Late, reckonLate } from './late-reckon.ts';
import '../describe/describe.css';

/** What the likeliest misfits would cost, found at each point of the order, and which try-ons would save most. */
export default function LatePart({ session }: { readonly session: Session }) {
  const [outfit, running] = [session.outfit.value, session.running.value];
  const late = useSignal<Late | undefined>(undefined);
  const failed = useSignal(false);
  const garment = useSignal('');
  useEffect(
    () =>
      reckonLate(
        session,
        (found) => {
          failed.value = false;
          late.value = found;
        },
        () => {
          failed.value = true;
        },
      ),
    [outfit, running],
  );
  if (failed.value)
    return <p role="status">This could not be reckoned. The order itself does not need it.</p>;
  const found = late.value;
  // While it is worked out anew, what was found before stays.
  if (!found) return <p role="status">Reckoning…</p>;
  const garments = found.outfit.garments.filter(({ id }) =>
    found.misfits.some(({ alterations }) => alterations.some((one) => one.garment === id)),
  );
  if (garments.length === 0) return <p>Nothing here has a shape that could fit badly.</p>;
  const chosen = garments.find(({ id }) => id === garment.value)?.id ?? '';
  const misfits = found.misfits.filter(
    ({ alterations }) => chosen === '' || alterations.some((one) => one.garment === chosen),
  );
  const { sequence, steps, doneCount } = found.running;
  const tryOns = found.outfit.garments.flatMap(({ id, gates }) =>
    gates.flatMap((gate) => {
      const place = sequence.indexOf(`${id}/${gate.id}/fit`);
      return place < 0 || (chosen !== '' && chosen !== id) ? [] : [{ name: gate.name, done: place + 1 }];
    }),
  );
  const names = new Map(found.misfits.map(({ id, name }) => [id, name]));
  return (
    <>
      {garments.length > 1 && (
        <fieldset class="one-of choice" aria-label="Which garment">
          {[{ id: '', name: 'All' }, ...garments].map(({ id, name }) => (
            <button
              key={id}
              type="button"
              class="plain"
              aria-pressed={chosen === id}
              onClick={() => {
                garment.value = id;
              }}
            >
              {name}
            </button>
          ))}
        </fieldset>
      )}
      <LateCurve
        points={pointsOf(sequence, misfits, found.curve.costs)}
        tryOns={tryOns.sort((a, b) => a.done - b.done)}
        now={doneCount}
        say={(step) => steps.get(step)?.say ?? ''}
        called={(misfit) => names.get(misfit) ?? misfit}
      />
      <p class="quiet late-guess">
        It adds up {misfits.length === 1 ? 'one thing' : `${misfits.length} things`} that may not fit, each by
        how likely it is.{' '}
        {found.tried === 0 ? (
          <>
            That is guessed until your own try-ons are known (
            <cite>{writeSource(GUESSED_CHANCE.source)}</cite>
            ).
          </>
        ) : (
          'That is counted from what you noted at your own try-ons, with a guess where they are few.'
        )}
      </p>
      <GateOffers session={session} late={found} />
      <EffectSheet session={session} />
    </>
  );
}
