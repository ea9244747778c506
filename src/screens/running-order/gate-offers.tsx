import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { type GateOffer, gatesWorth } from '../../fitting/gates-worth.ts';
import { listed } from '../../order/expand/made.ts';
import { lower } from '../../outfit/lower.ts';
import type { Garment } from '../../outfit/outfit.ts';
import { ask, problem } from '../describe/change.ts';
import type { Session } from '../session.ts';
import { roughly } from './late-lines.ts';
import type { Late } from './late-reckon.ts';

/** So many misfits are named; the others are counted. */
const NAMED = 3;

const about = (minutes: number): string => `about ${roughly(minutes)}`;

/** Try-ons that would save more than they cost; worked out when they are asked for, a garment at a time. */
export function GateOffers({ session, late }: { readonly session: Session; readonly late: Late }) {
  const open = useSignal(false);
  const put = useSignal('');
  const head = useRef<HTMLElement>(null);
  const found = useSignal<{
    readonly of: Late;
    readonly offers: readonly GateOffer[];
    readonly all: boolean;
    readonly failed?: boolean;
  }>({
    of: late,
    offers: [],
    all: false,
  });
  useEffect(() => {
    if (!open.value || (found.peek().of === late && found.peek().all)) return undefined;
    const garments = late.outfit.garments.map(({ id }) => id);
    let offers: readonly GateOffer[] = [];
    let timer: ReturnType<typeof setTimeout> | undefined;
    const next = (): void => {
      const garment = garments.shift();
      try {
        if (garment !== undefined) offers = [...offers, ...gatesWorth(late, garment)];
      } catch {
        // A slip of the reckoning must not leave the page waiting for ever.
        found.value = { of: late, offers: [], all: true, failed: true };
        return;
      }
      offers = offers.toSorted((a, b) => b.saves - a.saves);
      if (garments.length === 0) found.value = { of: late, offers, all: true };
      if (garments.length > 0) timer = setTimeout(next, 0);
    };
    timer = setTimeout(next, 0);
    return () => clearTimeout(timer);
  }, [late, open.value]);
  const { of, offers, all, failed } = found.value;
  // While it is worked out anew, what was offered before stays where it is.
  const known = all && of === late;
  return (
    <details
      data-part="gate-offers"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary ref={head}>Which other try-on would save most?</summary>
      <p role="status">
        {put.value !== '' && `In the order now: ${lower(put.value)}. `}
        {!known && 'Reckoning…'}
        {known && failed && 'This could not be reckoned.'}
        {known && !failed && offers.length === 0 && 'No other try-on would save more than it costs.'}
      </p>
      {problem.value !== '' && (
        <p class="notice" role="alert">
          <span>{problem.value}</span>
        </p>
      )}
      <ul class="gate-offers">
        {offers.map((offer) => (
          <Offer
            key={`${offer.garment} ${offer.place}`}
            offer={offer}
            garment={of.outfit.garments.find(({ id }) => id === offer.garment)}
            onPut={() =>
              // Worked out anew, it is no longer offered: the focus goes to where the others are.
              ask(session, offer.after, `put in ${lower(offer.gate.name)}`, () => {
                put.value = offer.gate.name;
                head.current?.focus();
              })
            }
          />
        ))}
      </ul>
    </details>
  );
}

function Offer(props: {
  readonly offer: GateOffer;
  readonly garment: Garment | undefined;
  readonly onPut: () => void;
}) {
  const { offer, garment, onPut } = props;
  const { gate, finds } = offer;
  const seams = (ids: readonly string[]): string =>
    listed(ids.map((id) => `the ${lower(garment?.joins.find((join) => join.id === id)?.name ?? id)}`));
  const named = finds.slice(0, NAMED).map(({ name }) => lower(name));
  const more = finds.length - named.length;
  const what = more > 0 ? [...named, `and ${more} more`] : named;
  return (
    <li data-part="gate-offer">
      <h3>{gate.name}</h3>
      <p>
        {gate.after.length > 0 && `When ${seams(gate.after)} ${gate.after.length > 1 ? 'are' : 'is'} sewn`}
        {gate.after.length > 0 && gate.tack.length > 0 && ', tack '}
        {gate.trial && 'Cut the pieces plain from cheap cloth before the good cloth, '}
        {gate.after.length === 0 && (gate.trial ? 'tack ' : 'Tack ')}
        {gate.tack.length > 0 && `${seams(gate.tack)} with long stitches`}
        {gate.tack.length > 0 && ' and'}
        {gate.tack.length === 0 && ','} try it on, after step {offer.place} of the order.
      </p>
      <p>
        It may show: {what.join('; ')}. Found later, this would cost {about(offer.late)}; found here,{' '}
        {about(offer.soon)}. The try-on takes {about(offer.minutes)}, so it saves <b>{about(offer.saves)}</b>.
      </p>
      <button type="button" class="main" onClick={onPut}>
        Put this try-on in<span class="unseen">: {gate.name}</span>
      </button>
    </li>
  );
}
