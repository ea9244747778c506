/**
 * A garment: the parts it was put together from, and what to add.
 *
 * What others may hold on to: `main[data-part="garment"]`; the link `Ready-made part`; `[data-part="next"]` with one
 * `a[data-unit]` a part that is likely next; one `li[data-unit]` a unit with
 * its link `Change` and its button `Take off`; `li[data-unit=""]` for the maker's own parts; one `a[data-part-of]` a
 * part; `[data-part="misfit"]` where lengths do not agree; the links `Own piece`, `Outline from a drawing`, `Own work`,
 * `Own join`, `Try-on`; `[data-part="this-garment"]` to rename it, give it to another or take it off.
 */
import { signal, useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { suggestUnits } from '../../outfit/changing/suggest-units.ts';
import { takeOff } from '../../outfit/changing/units.ts';
import { type Fit, lengthsFit } from '../../outfit/lengths-fit.ts';
import type { Garment, Outfit, UnitUse } from '../../outfit/outfit.ts';
import { unitCalled } from '../../outfit/units/all.ts';
import { Sign } from '../../ui/signs.tsx';
import { markingFor } from '../choices.ts';
import { HouseNotice } from '../house.tsx';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import type { GarmentProps } from './describe.tsx';
import { countWords, type PartGroup, type PartLine, partGroups } from './garment-parts.ts';
import { Head, hashOf, NotThere } from './head.tsx';
import { SketchPicture } from './sketch-picture.tsx';
import { StillRaw } from './still-raw.tsx';
import { TakeOffSheet } from './take-off.tsx';
import { ThisGarment } from './this-garment.tsx';
import { UndoBar } from './undo-bar.tsx';
import { UnitLink } from './unit-link.tsx';
import { begun, garmentWords, so } from './words.ts';

/** The unit that was just put on or changed, so that its page shows where it went. */
export const justPut = signal<
  { readonly garment: string; readonly unit: string; readonly how: 'New' | 'Changed' } | undefined
>(undefined);

/** A garment: its parts list. */
export function GarmentPage({ session, garment: id }: GarmentProps) {
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  const just = justPut.value;
  const fresh = just?.garment === id ? garment?.units.find((use) => use.id === just.unit) : undefined;
  const root = useRef<HTMLElement>(null);
  useEffect(() => {
    // Above what may come next, so that both are in sight.
    if (fresh) root.current?.querySelector('.just-put')?.scrollIntoView?.({ block: 'start' });
    return () => {
      justPut.value = undefined;
    };
  }, []);
  const next = useMemo(() => (garment ? suggestUnits(garment) : []), [garment]);
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const marking = markingFor(outfit.units);
  const misfits = lengthsFit(outfit, garment, marking).filter(({ within }) => !within);
  const groups = partGroups(garment);
  const at = (...more: readonly string[]): string => hashOf(session, 'garment', id, ...more);
  return (
    <main class="page describe" data-part="garment" ref={root}>
      <Head session={session} up={[{ say: outfit.name, href: hashOf(session) }]} title={garment.name} bench />
      <p>{begun(garmentWords(garment, outfit, session.running.value?.steps.values() ?? []))}</p>
      <p class="unseen" role="status">
        {fresh && (just?.how === 'New' ? `${fresh.name} is on.` : `${fresh.name} is changed.`)}
      </p>
      {misfits.length > 0 && (
        <p class="fault">
          <Sign name="caution" />
          <span>
            {so(misfits.length, 'length does', 'lengths do')} not fit; each is told at its part below.
          </span>
        </p>
      )}
      <ul class="unit-list" aria-label="Parts">
        {groups.map((group) =>
          group.use === undefined && group.parts.length === 0 ? null : (
            <PartCard
              key={group.use?.id ?? ''}
              session={session}
              outfit={outfit}
              garment={garment}
              group={group}
              misfits={misfits}
              fresh={fresh !== undefined && group.use === fresh ? just?.how : undefined}
            />
          ),
        )}
      </ul>
      {next.length > 0 && (
        <section data-part="next">
          <h2>{garment.pieces.length === 0 ? 'Begin with' : 'Likely next'}</h2>
          <ul class="unit-choice">
            {next.map((unit) => (
              <li key={unit.id}>
                <UnitLink unit={unit} href={at('add', unit.id)} />
              </li>
            ))}
          </ul>
        </section>
      )}
      <StillRaw session={session} garment={garment} />
      <section>
        <h2>Something of your own</h2>
        <div class="choice">
          <a class="plain" href={at('piece')}>
            Own piece
          </a>
          <a class="plain" href={at('trace')}>
            Outline from a drawing
          </a>
          {garment.pieces.length > 0 && (
            <>
              <a class="plain" href={at('work')}>
                Own work
              </a>
              <a class="plain" href={at('join')}>
                Own join
              </a>
              <a class="plain" href={at('try-on')}>
                Try-on
              </a>
            </>
          )}
        </div>
      </section>
      <ThisGarment session={session} outfit={outfit} garment={garment} />
      <UndoBar session={session}>
        <a class="main" href={at('add')}>
          Ready-made part
        </a>
      </UndoBar>
      <HouseNotice />
    </main>
  );
}

function PartCard(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly group: PartGroup;
  readonly misfits: readonly Fit[];
  /** Said of a part that was just put on or changed. */
  readonly fresh: 'New' | 'Changed' | undefined;
}) {
  const { session, outfit, garment, group, misfits, fresh } = props;
  const { use, parts } = group;
  const taking = useSignal<ReturnType<typeof takeOff> | undefined>(undefined);
  const unit = use && unitCalled(use.unit);
  const at = (...more: readonly string[]): string => hashOf(session, 'garment', garment.id, ...more);
  const here = misfits.filter(({ join }) => parts.some(({ id }) => id === join));
  return (
    <li class={fresh ? 'unit-card just-put' : 'unit-card'} data-unit={use?.id ?? ''}>
      <div class="unit-head">
        {unit && <SketchPicture sketch={unit.sketch} />}
        <div>
          <h2>{use?.name ?? 'Your own'}</h2>
          <p class="means">
            {fresh && <b>{fresh}. </b>}
            {use && unit && unit.name !== use.name && unit.name}
          </p>
        </div>
      </div>
      {here.map((fit) => (
        <p class="fault" key={fit.join + fit.kind + fit.say} data-part="misfit">
          <Sign name="caution" />
          <span>
            {fit.say} <a href={at('join', fit.join)}>{nameOf(parts, fit.join)}</a>
          </span>
        </p>
      ))}
      {use && !unit && (
        <p class="quiet">This version does not know how it is made; its parts stay as they are.</p>
      )}
      <details>
        <summary>{countWords(parts)}</summary>
        <PartLinks parts={parts} at={at} own={use?.own ?? []} />
      </details>
      {use && (
        <div class="choice">
          {unit && (
            <a class="plain" href={at('unit', use.id)}>
              Change<span class="unseen"> {use.name}</span>
            </a>
          )}
          <button
            type="button"
            class="plain"
            onClick={() => {
              taking.value = takeOff(outfit, garment.id, use.id);
            }}
          >
            Take off<span class="unseen"> {use.name}</span>
          </button>
        </div>
      )}
      {taking.value && use && (
        <TakeOffSheet
          name={use.name}
          also={taking.value.also}
          onTake={() => takeIt(session, outfit, garment, use)}
          onClose={() => {
            taking.value = undefined;
          }}
        />
      )}
    </li>
  );
}

const nameOf = (parts: readonly PartLine[], id: string): string =>
  parts.find((part) => part.id === id)?.name ?? id;

function takeIt(session: Session, outfit: Outfit, garment: Garment, use: UnitUse): void {
  ask(session, takeOff(outfit, garment.id, use.id).outfit, `took off ${use.name}`);
}

function PartLinks(props: {
  readonly parts: readonly PartLine[];
  readonly at: (...more: readonly string[]) => string;
  readonly own: readonly string[];
}) {
  const { parts, at, own } = props;
  return (
    <ul class="ways">
      {parts.map(({ kind, id, name }) => (
        <li key={id}>
          <a class="way" data-part-of={id} href={at(kind, id)}>
            <b>{name}</b>
            <span>
              {kind}
              {own.includes(id) && ', changed by hand'}
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}
