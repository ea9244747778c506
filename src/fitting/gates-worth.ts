import { runningOrder } from '../order/running.ts';
import type { Running, Standing } from '../order/running-types.ts';
import type { LateCurve, Misfit } from '../order/undoing/late.ts';
import { prepareUndoing, undoingMinutes } from '../order/undoing/undoing.ts';
import { putPart } from '../outfit/changing/parts.ts';
import { lower } from '../outfit/lower.ts';
import type { Garment, Gate, Outfit } from '../outfit/outfit.ts';
import type { Entry } from './entry.ts';
import { type Candidate, candidatesFor } from './gates-candidates.ts';
import { type Seeing, seeingAt } from './gates-shown.ts';
import { checksFor } from './here.ts';

/** A misfit that may be seen at a try-on, and what is needed before it can be. */
export interface Seeable extends Misfit {
  /** What is seen, as its entry says it. */
  readonly seen: string;
  readonly needs?: Entry['needs'];
}

/** A try-on that would save more than it costs. */
export interface GateOffer {
  readonly garment: string;
  readonly gate: Gate;
  /** The outfit with it. */
  readonly after: Outfit;
  /** Misfits that it finds earlier, the one that it saves most on first. */
  readonly finds: readonly Misfit[];
  /** Minutes to be expected of what they would cost later, and of what they cost at this try-on. */
  readonly late: number;
  readonly soon: number;
  /** Minutes of tacking, trying on and taking the tacking out. */
  readonly minutes: number;
  /** What is left: late less soon less its own minutes. */
  readonly saves: number;
  /** How many steps would be done before it. */
  readonly place: number;
}

/** What proposals are worked out from. */
export interface GateBasis {
  readonly outfit: Outfit;
  readonly running: Running;
  readonly standing: Standing;
  readonly misfits: readonly Seeable[];
  readonly curve: LateCurve;
  readonly own?: ReadonlyMap<string, number>;
}

/** No more proposals than this for one garment; more would not be read. */
const MOST_OFFERS = 2;
/** No more of what may be wrong goes into the list of what to look at. */
const MOST_CHECKS = 5;

/** Where a misfit is found as things are, and what it costs there. */
interface FoundLater {
  readonly misfit: Seeable;
  /** The try-on that finds it; none where it is seen only when all is done. */
  readonly gate: string | undefined;
  readonly minutes: number;
}

/**
 * Try-ons for a garment that save more minutes than they cost, the best first: what the misfits would cost where they are
 * found as things are, less what they would cost at the new try-on and what that costs itself. Each stands in an order of
 * making that exists, and is reckoned with where it would stand there.
 */
export function gatesWorth(basis: GateBasis, garmentId: string): readonly GateOffer[] {
  const { outfit, running } = basis;
  const garment = outfit.garments.find(({ id }) => id === garmentId);
  if (!garment) return [];
  const later = foundLater(basis, garment);
  if (later.length === 0) return [];
  const places = new Map(running.sequence.map((id, i) => [id, i]));
  const begins = new Map<string, number>();
  for (const step of running.steps.values()) {
    const place = places.get(step.id) ?? 0;
    if (step.garment === garmentId && step.of.kind === 'join')
      begins.set(step.of.id, Math.min(begins.get(step.of.id) ?? place, place));
  }
  const place = (join: string): number => begins.get(join) ?? Number.POSITIVE_INFINITY;
  const cut = new Set<string>();
  for (const id of running.sequence.slice(0, running.doneCount)) {
    const step = running.steps.get(id);
    if (step?.garment === garmentId && step.action === 'cut') for (const piece of step.pieces) cut.add(piece);
  }
  const begun = (join: string): boolean => place(join) < running.doneCount;
  const tried = candidatesFor(garment, place, begun, (piece) => cut.has(piece)).flatMap(
    (candidate) => triedWith(basis, garment, candidate, later) ?? [],
  );
  const offers: GateOffer[] = [];
  const found = new Set<string>();
  while (offers.length < MOST_OFFERS) {
    // The next one has to earn its minutes with what those before it do not find.
    const worth = tried.map((one) => worthOf(one, found)).filter(({ saves }) => saves > 0);
    const [best] = worth.sort((a, b) => b.saves - a.saves);
    const offer = best && offerOf(garment, best);
    if (!offer) break;
    offers.push(offer);
    for (const { id } of offer.finds) found.add(id);
  }
  return offers;
}

/** Each misfit with the try-on that finds it as things are; what a try-on that is done has found, or not, is left out. */
function foundLater({ running, misfits, curve }: GateBasis, garment: Garment): readonly FoundLater[] {
  const seeing = garment.gates
    .flatMap(({ id }): readonly (Seeing & { readonly id: string })[] => {
      const one = seeingAt(running, garment, id);
      return one ? [{ ...one, id }] : [];
    })
    .sort((a, b) => a.place - b.place);
  return misfits.flatMap((misfit): readonly FoundLater[] => {
    if (misfit.alterations.some((one) => one.garment !== garment.id)) return [];
    const gate = seeing.find((one) => one.sees(misfit.alterations, misfit.needs));
    if (gate && gate.place < running.doneCount) return [];
    const place = gate?.place ?? running.sequence.length;
    return [{ misfit, gate: gate?.id, minutes: curve.costs.get(misfit.id)?.[place] ?? 0 }];
  });
}

/** What a try-on would find earlier than it is found as things are, in the order of making that it brings. */
interface Tried {
  readonly outfit: Outfit;
  readonly candidate: Candidate;
  readonly finds: readonly { readonly misfit: Seeable; readonly late: number; readonly soon: number }[];
  readonly minutes: number;
  readonly place: number;
}

/** The candidate in an order of its own, if that exists. */
function triedWith(
  { outfit, standing, own }: GateBasis,
  garment: Garment,
  candidate: Candidate,
  later: readonly FoundLater[],
): Tried | undefined {
  const withIt = putPart(outfit, garment.id, 'gates', { ...candidate, checks: ['It fits'] });
  if (!withIt.ok) return undefined;
  const found = runningOrder(withIt.value, standing);
  const there = withIt.value.garments.find(({ id }) => id === garment.id);
  if (!found.ok || !there) return undefined;
  const running = found.value;
  const seeing = seeingAt(running, there, candidate.id);
  if (!seeing || seeing.place < running.doneCount) return undefined;
  const prepared = prepareUndoing(withIt.value, running);
  const done = new Set(running.sequence.slice(0, seeing.place));
  const finds = later.flatMap(({ misfit, gate, minutes }) => {
    const old = gate === undefined ? undefined : running.sequence.indexOf(`${garment.id}/${gate}/fit`);
    if (old !== undefined && old < seeing.place) return [];
    if (!seeing.sees(misfit.alterations, misfit.needs)) return [];
    const soon = undoingMinutes(prepared, misfit.alterations, { done, ...(own ? { own } : {}) });
    if (soon >= minutes) return [];
    return [{ misfit, late: misfit.chance * minutes, soon: misfit.chance * soon }];
  });
  const steps = [...running.steps.values()].filter(
    (step) => step.garment === garment.id && step.of.id === candidate.id,
  );
  const minutes = sum(steps.map((step) => own?.get(step.id) ?? step.minutes));
  return { outfit, candidate, finds, minutes, place: seeing.place };
}

/** What it saves with all that is not found already. */
function worthOf(tried: Tried, found: ReadonlySet<string>) {
  const finds = tried.finds
    .filter(({ misfit }) => !found.has(misfit.id))
    .sort((a, b) => b.late - b.soon - (a.late - a.soon));
  const [late, soon] = [sum(finds.map((one) => one.late)), sum(finds.map((one) => one.soon))];
  return { ...tried, finds, late, soon, saves: late - soon - tried.minutes };
}

function offerOf(garment: Garment, worth: ReturnType<typeof worthOf>): GateOffer | undefined {
  const { outfit, candidate, late, soon, minutes, saves, place } = worth;
  const finds = worth.finds.map(({ misfit }) => misfit);
  const gate: Gate = { ...candidate, checks: checksOf(garment, finds) };
  const after = putPart(outfit, garment.id, 'gates', gate);
  if (!after.ok) return undefined;
  return { garment: garment.id, gate, after: after.value, finds, late, soon, minutes, saves, place };
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

/** What to look at: what a garment that hangs well shows, then what is likeliest to be wrong. */
function checksOf(garment: Garment, finds: readonly Seeable[]): readonly string[] {
  const first = checksFor(garment)
    .slice(0, MOST_CHECKS)
    .map(({ say }) => say);
  const faults = [...new Set(finds.map(({ seen }) => `Look for this: ${lower(seen)}`))];
  return [...first, ...faults.slice(0, MOST_CHECKS)];
}
