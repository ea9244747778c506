import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type GateOffer, gatesWorth } from '../../fitting/gates-worth.ts';
import { listed } from '../../order/expand/made.ts';
import { lower } from '../../outfit/lower.ts';
import { writeDuration } from '../../ui/duration.ts';
import { ask, problem } from '../describe/change.ts';
import type { Session } from '../session.ts';
import type { Late } from './late-reckon.ts';

/** So many misfits are named; the others are counted. */
const NAMED = 3;

const about = (minutes: number): string => `about ${writeDuration(Math.max(1, minutes) * 60)}`;

/** Try-ons that would save more than they cost; worked out when they are asked for, a garment at a time. */
export function GateOffers({ session, late }: { readonly session: Session; readonly late: Late }) {
  const open = useSignal(false);
  const found = useSignal<{
    readonly of: Late;
    readonly offers: readonly GateOffer[];
    readonly all: boolean;
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
      if (garment !== undefined) offers = [...offers, ...gatesWorth(late, garment)];
      offers = offers.toSorted((a, b) => b.saves - a.saves);
      found.value = { of: late, offers, all: garments.length === 0 };
      if (garments.length > 0) timer = setTimeout(next, 0);
    };
    timer = setTimeout(next, 0);
    return () => clearTimeout(timer);
  }, [late, open.value]);
  const here = found.value.of === late ? found.value : { offers: [], all: false };
  return (
    <details
      data-part="gate-offers"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>Which other try-on would save most?</summary>
      <p role="status">
        {!here.all && 'Reckoning…'}
        {here.all && here.offers.length === 0 && 'None: no other try-on would save more than it costs.'}
      </p>
      {problem.value !== '' && (
        <p class="notice" role="alert">
          <span>{problem.value}</span>
        </p>
      )}
      <ul class="gate-offers">
        {here.offers.map((offer) => (
          <Offer key={`${offer.garment} ${offer.place}`} offer={offer} session={session} late={late} />
        ))}
      </ul>
    </details>
  );
}

function Offer(props: { readonly offer: GateOffer; readonly session: Session; readonly late: Late }) {
  const { offer, session, late } = props;
  const { gate, finds } = offer;
  const garment = late.outfit.garments.find(({ id }) => id === offer.garment);
  const seams = (ids: readonly string[]): string =>
    listed(ids.map((id) => `the ${lower(garment?.joins.find((join) => join.id === id)?.name ?? id)}`));
  const named = finds.slice(0, NAMED).map(({ name }) => lower(name));
  const more = finds.length - named.length;
  const what = more > 0 ? [...named, `${more} more`] : named;
  return (
    <li data-part="gate-offer">
      <h3>{gate.name}</h3>
      <p>
        {gate.after.length > 0 && `When ${seams(gate.after)} ${gate.after.length > 1 ? 'are' : 'is'} sewn`}
        {gate.after.length > 0 && gate.tack.length > 0 && ', tack '}
        {gate.after.length === 0 && 'Tack '}
        {gate.tack.length > 0 && `${seams(gate.tack)} with long stitches`}
        {gate.tack.length > 0 && ' and'}
        {gate.tack.length === 0 && ','} try it on, after step {offer.place} of the order.
      </p>
      <p>
        It may show {listed(what)}. Found later, this would cost {about(offer.late)}; found here,{' '}
        {about(offer.soon)}. The try-on takes {about(offer.minutes)}, so it saves <b>{about(offer.saves)}</b>.
      </p>
      <button
        type="button"
        class="main"
        onClick={() => ask(session, offer.after, `put in ${lower(gate.name)}`)}
      >
        Put this try-on in<span class="unseen">: {gate.name}</span>
      </button>
    </li>
  );
}
