import { useSignal } from '@preact/signals';
import type { Marking } from '../../length/writing.ts';
import { freshId, idsIn } from '../../outfit/changing/new-outfit.ts';
import { putPart } from '../../outfit/changing/parts.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import type { Outline } from '../../shape/outline.ts';
import { Sign } from '../../ui/signs.tsx';
import { FieldBox } from '../reckoner/field.tsx';
import type { Session } from '../session.ts';
import { ask, problem } from './change.ts';
import { hashOf } from './head.tsx';
import { TextBox } from './text-box.tsx';
import { type InTrace, useHand } from './trace-hand.ts';
import { boxOf, tracedPiece } from './trace-make.ts';
import { TraceOne } from './trace-one.tsx';
import { TouchModes, TracePanel } from './trace-panels.tsx';
import { trueLength } from './trace-scale.tsx';

interface PieceProps extends InTrace {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
}

/** One line made a piece: its edges named, its corners, how it is cut, its grain and marks. */
export function TracePiece(props: PieceProps) {
  const { session, outfit, garment, trace, drawing, line, choice, scale, marking } = props;
  const tried = useSignal(false);
  const hand = useHand({ trace, drawing, line, choice, scale, marking });
  const { change } = hand;
  const kept = garment.pieces.find((one) => one.id === choice.put);
  const there = kept !== undefined;
  const id = kept?.id ?? freshId(idsIn(garment), choice.name);
  const made = tracedPiece(drawing, line, choice, scale, outfit.units, id);
  const fault = made.ok ? undefined : made.error;
  const faultAt = (field: string): string | undefined => (fault?.field === field ? fault.say : undefined);

  const put = (): void => {
    tried.value = true;
    if (!made.ok) return;
    // What the drawing does not say of a piece that is there already stays as it is.
    const { unit, cutAfterWork = false } = kept ?? {};
    const piece = { ...made.value, cutAfterWork, ...(unit === undefined ? {} : { unit }) };
    const after = putPart(outfit, garment.id, 'pieces', piece);
    if (!after.ok) problem.value = after.error.map(writeProblem).join('. ');
    else
      ask(session, after.value, `${there ? 'traced again' : 'traced'} ${piece.name}`, () => {
        change({ put: id });
        const { chosen, pieces } = trace.choices.peek();
        const next = chosen.find((one) => pieces[one] === undefined || pieces[one].put === undefined);
        if (next === undefined) return;
        trace.change({ open: next });
        document.querySelector('[data-part="trace-chosen"]')?.scrollIntoView();
      });
  };

  return (
    <section class="boxed trace-piece" data-part="trace-piece" data-line-of={line.id}>
      <h3>{choice.name || 'No name yet'}</h3>
      <TextBox
        name="name"
        label="Name of the piece"
        text={choice.name}
        fault={faultAt('name')}
        onText={(name) => change({ name })}
      />
      <FieldBox
        name="cut"
        field={{
          kind: 'choice',
          label: 'How it is cut',
          options: [
            { value: 'one', label: 'Once' },
            { value: 'pair', label: 'Twice, one mirrored' },
            { value: 'fold', label: 'Once on the fold: this is half' },
          ],
          start: 'one',
        }}
        text={choice.cut}
        fault={undefined}
        marking={marking}
        onText={(cut) => change({ cut: cut === 'pair' || cut === 'fold' ? cut : 'one' })}
      />
      <TouchModes hand={hand} />
      <TraceOne hand={hand} />
      <TracePanel hand={hand} grainFault={faultAt('grain')} />
      <div class="fields">
        <FieldBox
          name="cloth"
          field={{
            kind: 'choice',
            label: 'Cloth',
            options: outfit.cloths.map((cloth) => ({ value: cloth.id, label: cloth.name })),
            start: '',
          }}
          text={choice.cloth}
          fault={undefined}
          marking={marking}
          onText={(cloth) => change({ cloth })}
        />
        <FieldBox
          name="allowance"
          field={{
            kind: 'length',
            label: 'Seam allowance',
            means: 'Left beyond edges that are in no seam yet.',
            start: { in: '5/8', mm: '15' },
          }}
          text={choice.allowance}
          fault={faultAt('allowance')}
          marking={marking}
          onText={(allowance) => change({ allowance })}
        />
      </div>
      {made.ok ? (
        <p data-part="trace-size">
          {made.value.name}: {sizeWords(made.value.outline, marking)}, {made.value.outline.edges.length}{' '}
          edges.
        </p>
      ) : (
        <p class="fault" role={tried.value ? 'alert' : undefined} data-part="trace-fault">
          <Sign name="caution" />
          <span>{made.error.say}</span>
        </p>
      )}
      <div class="choice">
        <button type="button" class="main" data-part="put" onClick={put}>
          {there
            ? `Put ${choice.name} in again`
            : `Put ${choice.name} into the ${garment.name.toLowerCase()}`}
        </button>
        {kept && (
          <a class="plain" href={hashOf(session, 'garment', garment.id, 'piece', kept.id)}>
            To {kept.name}
          </a>
        )}
      </div>
    </section>
  );
}

function sizeWords({ start, edges }: Outline, marking: Marking): string {
  const { left, right, top, bottom } = boxOf({ start, segments: edges.flatMap(({ segments }) => segments) });
  return `${trueLength(right - left, 1, marking)} × ${trueLength(bottom - top, 1, marking)}`;
}
