import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Marking } from '../../length/writing.ts';
import { writeLength } from '../../length/writing.ts';
import { FOLD, readEdge } from '../../outfit/chains.ts';
import { edgeSpelled } from '../../outfit/changing/own-corners.ts';
import { renameEdge } from '../../outfit/changing/parts.ts';
import type { Garment, Join, Outfit, Piece, Work } from '../../outfit/outfit.ts';
import { writeProblem } from '../../outfit/problem.ts';
import { type EdgeUse, edgeUses } from '../../paper/edge-allowances.ts';
import { edgeLengths } from '../../shape/measure.ts';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { beginAnew } from './begun-before.tsx';
import { ask } from './change.ts';
import { useDraft, type Written } from './drafts.ts';
import { saidName } from './edge-lines.ts';
import { focusOn } from './focus-on.ts';
import { hashOf } from './head.tsx';
import { TextBox } from './text-box.tsx';
import { draftOf } from './use-part.ts';
import { begun } from './words.ts';

const HOW: Readonly<Record<EdgeUse['how'], string>> = {
  sewn: 'sewn in a seam',
  turned: 'turned under',
  bound: 'bound, raw edge left',
  fold: 'lies on the fold of the cloth',
  free: 'in no seam yet',
};

/** Joins that hold an edge, or any edge of a piece. */
export const joinsOf = (garment: Garment, piece: string, edge?: string): readonly Join[] =>
  garment.joins.filter((join) =>
    [
      ...join.this,
      ...join.to,
      ...join.catches.map(({ trim }) => trim),
      ...(join.cover ? [join.cover] : []),
    ].some((ref) => ref.piece === piece && (edge === undefined || ref.edge === edge)),
  );

/** Works on an edge, or on a piece. */
export const worksOf = (garment: Garment, piece: string, edge?: string): readonly Work[] =>
  garment.works.filter((work) => {
    if ('along' in work && typeof work.along !== 'string')
      return work.along.some((ref) => ref.piece === piece && (edge === undefined || ref.edge === edge));
    if (work.on !== piece)
      return (
        edge === undefined &&
        ((work.kind === 'own' && work.with.includes(piece)) ||
          (work.kind === 'buttonholes' && work.through.includes(piece)))
      );
    const at =
      'edge' in work ? work.edge : 'from' in work && work.kind !== 'buttonholes' ? work.from : undefined;
    return edge === undefined || at === edge || (work.kind === 'buttonholes' && work.along === edge);
  });

/** An edge that was touched: its length, what is sewn there, its name, and what can be put there. */
export function EdgePanel(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly piece: Piece;
  readonly edge: string;
  readonly marking: Marking;
  readonly onRenamed: (edge: string) => void;
}) {
  const { session, outfit, garment, piece, edge, marking, onRenamed } = props;
  const naming = useDraft(`${draftOf(outfit, garment, 'piece', piece.id)}/edge/${edge}`);
  const fault = useSignal('');
  const root = useRef<HTMLElement>(null);
  // It comes below the drawing that was touched.
  useEffect(() => root.current?.scrollIntoView?.({ block: 'nearest' }), []);
  const use = edgeUses(garment, piece).find((one) => one.edge === edge);
  const long = edgeLengths(piece.outline).get(edge);
  if (!use || long === undefined) return null;
  const written = naming.written.value.name ?? saidName(edge);
  const at = (...more: readonly string[]): string => hashOf(session, 'garment', garment.id, ...more);
  const rename = (): void => {
    const now = edgeSpelled(written);
    if (now === '') {
      fault.value = 'Write a name with letters, such as “side”.';
      return;
    }
    const made = now === edge ? undefined : renameEdge(outfit, garment.id, piece.id, edge, now);
    if (made && !made.ok) {
      fault.value = made.error.map(writeProblem).join('. ');
      return;
    }
    fault.value = '';
    const then = (): void => {
      naming.clear();
      onRenamed(now);
      focusOn('[data-part="rename"]');
    };
    if (made) ask(session, made.value, `called the ${saidName(edge)} edge ${saidName(now)}`, then);
    else then();
  };
  const ref = `${piece.id}.${edge}`;
  const start = (kind: string, entries: Written): void => {
    beginAnew(draftOf(outfit, garment, kind), entries);
    go({ screen: 'outfit', outfit: session.id, at: ['garment', garment.id, kind] });
  };
  const sewn = joinsOf(garment, piece.id, edge);
  const done = worksOf(garment, piece.id, edge);
  return (
    <section ref={root} class="edge-panel boxed" data-part="edge-panel" data-edge-of={ref}>
      <h3>{begun(saidName(edge))}</h3>
      <p role="status">
        <b>{writeLength(long, marking).text}</b> long, {HOW[use.how]}
        {use.allowance > 0 && `; ${writeLength(use.allowance, marking).text} is left beyond it`}.
      </p>
      {(sewn.length > 0 || done.length > 0) && (
        <ul class="ways">
          {sewn.map(({ id, name }) => (
            <li key={id}>
              <a class="way" href={at('join', id)}>
                <b>{name}</b>
                <span>join</span>
              </a>
            </li>
          ))}
          {done.map(({ id, name }) => (
            <li key={id}>
              <a class="way" href={at('work', id)}>
                <b>{name}</b>
                <span>work</span>
              </a>
            </li>
          ))}
        </ul>
      )}
      {!(edge === FOLD && piece.cut === 'fold') && (
        <>
          <div class="choice">
            <button
              type="button"
              class="plain"
              data-part="join-edge"
              onClick={() => start('join', { this: ref })}
            >
              Sew it to another edge
            </button>
            <button
              type="button"
              class="plain"
              data-part="work-edge"
              onClick={() => start('work', { edge: ref, along: ref, from: ref, on: piece.id })}
            >
              Put a work on it
            </button>
          </div>
          <form
            class="rename"
            onSubmit={(event) => {
              event.preventDefault();
              rename();
            }}
          >
            <TextBox
              name="edge-name"
              label="Name of this edge"
              text={written}
              fault={fault.value === '' ? undefined : fault.value}
              onText={(text) => {
                fault.value = '';
                naming.write('name', text);
              }}
            />
            <button type="submit" class="plain" data-part="rename">
              Rename it
            </button>
          </form>
        </>
      )}
    </section>
  );
}

/** Which edge of a piece a picked one is; undefined where none is picked. */
export const edgeOf = (ref: string | undefined): string | undefined =>
  ref === undefined ? undefined : readEdge(ref).edge;
