import { readEdge } from '../../outfit/chains.ts';
import { lengthsFit } from '../../outfit/lengths-fit.ts';
import { Sign } from '../../ui/signs.tsx';
import type { Asks } from './asks.ts';
import type { PartProps } from './describe.tsx';
import type { Written } from './drafts.ts';
import { saidName } from './edge-lines.ts';
import { NotThere } from './head.tsx';
import { JOIN_ASKS } from './part-asks.ts';
import { type PartAt, partAt } from './part-at.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame, toGarment } from './part-frame.tsx';
import { lengthWords } from './stands.ts';
import { ruleOf } from './unit-form.ts';
import { type PartForm, usePart } from './use-part.ts';
import { begun } from './words.ts';

/** A join between two runs of edges. */
export function JoinPage({ session, garment, part }: PartProps) {
  const at = partAt(session, garment, 'joins', part);
  return typeof at === 'string' ? <NotThere session={session} what={at} /> : <JoinForm {...at} />;
}

/** A seam is mostly called after the edge it is sewn along. */
const nameFrom = ({ this: run }: Written): string => {
  const edge = readEdge(run?.split(' ')[0] ?? '').edge;
  return edge === '' ? 'Seam' : `${begun(saidName(edge))} seam`.replace(/ seam seam$/, ' seam');
};

function JoinForm({ session, outfit, garment, part: join }: PartAt<'joins'>) {
  const asksOf = (written: Written): Asks => {
    const { this: from, to, depth, ...more } = JOIN_ASKS;
    const first = readEdge(written.this?.split(' ')[0] ?? '').piece;
    const allowance = garment.pieces.find((one) => one.id === first)?.allowance;
    const words = lengthWords(allowance, ruleOf(outfit));
    return {
      ...(from && to ? { this: from, to } : {}),
      name: { kind: 'words', label: 'Name', start: nameFrom(written) },
      ...(depth?.kind === 'length' && words !== ''
        ? { depth: { ...depth, start: { in: words, mm: words } } }
        : { ...(depth ? { depth } : {}) }),
      ...more,
    };
  };
  const form = usePart({
    session,
    outfit,
    garment,
    list: 'joins',
    kind: 'join',
    base: join,
    asks: asksOf,
    usual: () => ({ catches: [] }),
  });
  const { this: from, to, ...more } = asksOf(form.form.written);
  const runs: Asks = from && to ? { this: from, to } : {};
  return (
    <PartFrame
      {...{ session, outfit, garment, form }}
      kind="join"
      title={join?.name ?? 'Two edges sewn together'}
      part={join}
      word={join ? 'Keep the changes' : 'Sew them together'}
      onSave={() =>
        form.save(`${join ? 'changed' : 'put in'} ${form.part?.name ?? 'the join'}`, () =>
          toGarment(session, garment),
        )
      }
    >
      <PartFields asks={runs} form={form.form} />
      <Fits form={form} />
      <PartFields asks={more} form={form.form} />
    </PartFrame>
  );
}

/** Whether both sides are equally long, as they stand in the form now. */
function Fits({ form }: { readonly form: PartForm<'joins'> }) {
  const { part, garment } = form;
  const { outfit, marking } = form.form.here;
  const fits = part ? lengthsFit(outfit, garment, marking).filter(({ join }) => join === part.id) : [];
  return (
    <div class="field-wide fits" role="status" data-part="fits">
      {part === undefined && <p class="quiet">Choose both edges to see whether they are equally long.</p>}
      {fits.map(({ say, within, kind }) => (
        <p key={kind + say} class={within ? 'fit' : 'fault'} data-within={within}>
          <Sign name={within ? 'done' : 'caution'} />
          <span>{say}</span>
        </p>
      ))}
    </div>
  );
}
