import { useMemo } from 'preact/hooks';
import type { Cure } from '../../fitting/cure-types.ts';
import type { Marking } from '../../length/writing.ts';
import type { SuppliesAgain } from '../../order/undoing/supplies.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import type { Session } from '../session.ts';
import type { Means } from './cure-means.ts';
import {
  aboutThread,
  costsNothing,
  extentWords,
  listed,
  pieceName,
  toBuy,
  untouchedPieces,
  writeMinutes,
} from './cure-words.ts';

/** What a cure costs: time, cloth, thread and beads; what is opened, what stays, and every step of it. */
export function CureCost(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly cure: Cure;
  readonly means: Means;
  readonly marking: Marking;
}) {
  const { session, outfit, garment, cure, means, marking } = props;
  const { undoing, minutes } = cure;
  const stays = untouchedPieces(garment, cure);
  const running = session.running.value;
  const supplies = useMemo(
    () => running && means.supplies(cure.after, running, undoing),
    [running, means, cure],
  );
  const added = minutes - undoing.minutes.total;
  return (
    <>
      <section data-part="cure-cost">
        <h2>What it costs</h2>
        {costsNothing(cure) ? (
          <p class="cure-headline" data-part="costs-nothing">
            Nothing needs undoing: it is not {cure.changes.some(({ how }) => how === 'anew') ? 'cut' : 'sewn'}{' '}
            yet.
          </p>
        ) : (
          <p class="cure-time">
            <b class="cure-figure">{writeMinutes(minutes)}</b>
            <span>
              {writeMinutes(undoing.minutes.undo)} to undo and cut, {writeMinutes(undoing.minutes.again)} to
              do again
              {Math.round(added) > 0 && `, ${writeMinutes(added)} to sew in besides`}
            </span>
          </p>
        )}
        {supplies && <Buy supplies={supplies} outfit={outfit} garment={garment} marking={marking} />}
      </section>
      {(undoing.opened.length > 0 || undoing.forced.length > 0 || stays.length > 0) && (
        <section class="cure-opened" data-part="cure-opened">
          {undoing.opened.length > 0 && (
            <>
              <h2>What is opened</h2>
              <ul class="cure-list">
                {undoing.opened.map((opened) => (
                  <li key={`${opened.kind} ${opened.id}`}>
                    <b>{opened.name}</b>: {extentWords(opened, garment, marking)}
                  </li>
                ))}
              </ul>
            </>
          )}
          {undoing.forced.length > 0 && (
            <>
              <h2>What has to be new, and why</h2>
              <ul class="cure-list" data-part="cure-forced">
                {undoing.forced.map(({ piece, because }) => (
                  <li key={piece}>
                    <b>{pieceName(garment, piece)}</b>: {because}
                  </li>
                ))}
              </ul>
            </>
          )}
          {(stays.length > 0 || undoing.stays.length > 0) && (
            <>
              <h2>What stays</h2>
              <ul class="cure-list" data-part="cure-stays">
                {undoing.stays.map(({ join, trim, on }) => (
                  <li key={`${join} ${trim}`}>
                    <b>{pieceName(garment, trim)}</b> stays basted to{' '}
                    {listed(on.map((id) => pieceName(garment, id)))}
                  </li>
                ))}
                {stays.length > 0 && <li>{listed(stays)}: as they are</li>}
              </ul>
            </>
          )}
        </section>
      )}
      <Steps cure={cure} session={session} />
    </>
  );
}

function Buy(props: {
  readonly supplies: SuppliesAgain;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly marking: Marking;
}) {
  const { supplies, outfit, garment, marking } = props;
  const { cloth, thread, beads } = supplies;
  if (cloth.length === 0 && thread <= 0 && beads.length === 0) return null;
  return (
    <ul class="cure-list" data-part="cure-supplies">
      {cloth.map(({ cloth: id, pieces, length }) => (
        <li key={id}>
          <b>{toBuy(length, marking)}</b> of {outfit.cloths.find((one) => one.id === id)?.name ?? id} for{' '}
          {listed(pieces.map((piece) => pieceName(garment, piece)))}
        </li>
      ))}
      {thread > 0 && (
        <li>
          about <b>{aboutThread(thread, marking)}</b> of thread
        </li>
      )}
      {beads.map(({ name, count }) => (
        <li key={name}>
          <b>{count}</b> × {name}
        </li>
      ))}
    </ul>
  );
}

function Steps({ cure, session }: { readonly cure: Cure; readonly session: Session }) {
  const { undo, again } = cure.undoing.rework;
  const steps = session.running.value?.steps;
  if (undo.length + again.length === 0) return null;
  return (
    <details class="cure-steps" data-part="cure-steps">
      <summary>
        All {undo.length + again.length} steps: {undo.length} to undo and cut, {again.length} to do again
      </summary>
      {undo.length > 0 && <h3>Undo and cut</h3>}
      <ol>
        {undo.map((step) => (
          <li key={`${step.of.id} ${step.action}`}>
            {step.say} <span class="quiet">{writeMinutes(step.minutes)}</span>
          </li>
        ))}
      </ol>
      {again.length > 0 && <h3>Do again</h3>}
      <ol>
        {again.map(({ step, only, minutes }) => (
          <li key={step}>
            {steps?.get(step)?.again?.say ?? steps?.get(step)?.say ?? step}
            {only !== undefined && `, ${only}`} <span class="quiet">{writeMinutes(minutes)}</span>
          </li>
        ))}
      </ol>
    </details>
  );
}
