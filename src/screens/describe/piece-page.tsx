/**
 * A piece: its edges to touch, what is said of it, what is done to it.
 *
 * What others may hold on to: `main[data-part="piece"]` (and `work`, `join`, `try-on`, made alike); each answer as
 * `[data-field="<path>"]`, rows as `[data-row]`, faults as `[data-part="fault"]`; in the edge picker `button[data-piece]`,
 * `button[data-edge]` and on the drawing `[data-touch]`; `[data-part="edge-panel"]` with `join-edge`, `work-edge`,
 * `rename`; `[data-part="origin"]` with `take-ready`; the buttons `keep`, `as-it-was`, `take-out`.
 */
import { useSignal } from '@preact/signals';
import { good } from '../../length/result.ts';
import type { Piece } from '../../outfit/outfit.ts';
import { edgeUses } from '../../paper/edge-allowances.ts';
import { allowanceWords } from '../../paper/outfit-sheets.ts';
import { markingFor } from '../choices.ts';
import { go, writeHash } from '../route.ts';
import type { Asks } from './asks.ts';
import { beginAnew } from './begun-before.tsx';
import { CornerFields, cornersTyped } from './corner-fields.tsx';
import type { PartProps } from './describe.tsx';
import { EdgePanel, edgeOf, joinsOf, worksOf } from './edge-panel.tsx';
import { EdgePicker } from './edge-picker.tsx';
import { hashOf, NotThere } from './head.tsx';
import { OwnPieceForm } from './own-piece-form.tsx';
import { PIECE_ASKS } from './part-asks.ts';
import { type PartAt, partAt } from './part-at.ts';
import { PartFields } from './part-fields.tsx';
import { PartFrame, toGarment } from './part-frame.tsx';
import { PiecePicture } from './piece-picture.tsx';
import { draftOf, usePart } from './use-part.ts';

const ASKS: Asks = { name: { kind: 'words', label: 'Name', start: '' }, ...PIECE_ASKS };

/** A piece: its edges, works, joins, cloth and marks; without an id, a new one of the maker's own. */
export function PiecePage({ session, garment, part }: PartProps) {
  const at = partAt(session, garment, 'pieces', part);
  if (typeof at === 'string') return <NotThere session={session} what={at} />;
  return at.part ? <PieceForm {...at} piece={at.part} /> : <OwnPieceForm {...at} />;
}

type PieceProps = Omit<PartAt<'pieces'>, 'part'> & { readonly piece: Piece };

function PieceForm({ session, outfit, garment, piece }: PieceProps) {
  const picked = useSignal<string | undefined>(undefined);
  const form = usePart({
    session,
    outfit,
    garment,
    list: 'pieces',
    kind: 'piece',
    base: piece,
    asks: () => ASKS,
    usual: () => ({}),
    stands: (field) => field.startsWith('corner.'),
    finish: (written) => {
      const moved = cornersTyped(piece.outline, written, outfit.units);
      return moved.ok ? good({ outline: moved.value }) : moved;
    },
  });
  const marking = markingFor(outfit.units);
  const drawn = form.part ?? piece;
  const edge = edgeOf(picked.value);
  return (
    <PartFrame
      {...{ session, outfit, garment, form }}
      kind="piece"
      title={piece.name}
      part={piece}
      word="Keep the changes"
      onSave={() => form.save(`changed ${form.part?.name ?? piece.name}`, () => toGarment(session, garment))}
      above={
        <>
          <section>
            <h2>Its edges</h2>
            <EdgePicker
              garment={{ ...garment, pieces: [drawn] }}
              picked={picked.value === undefined ? [] : [picked.value]}
              only={(ref) => !ref.startsWith('other:')}
              onPick={(ref) => {
                picked.value = picked.value === ref ? undefined : ref;
              }}
              marking={marking}
            />
            {edge === undefined ? (
              <p class="quiet">Touch an edge: what is sewn there, its name, a work or a seam on it.</p>
            ) : (
              <EdgePanel
                key={edge}
                {...{ session, outfit, garment, piece, edge, marking }}
                onRenamed={(now) => {
                  picked.value = `${piece.id}.${now}`;
                }}
              />
            )}
          </section>
          <Hanging {...{ session, outfit, garment, piece }} />
          <h2>What it is</h2>
        </>
      }
    >
      <PartFields asks={ASKS} form={form.form} />
      <CornerFields piece={piece} form={form.form} />
      <details class="field-wide" data-part="pattern">
        <summary>Drawn as its pattern</summary>
        <PiecePicture piece={drawn} garment={form.garment} outfit={outfit} marking={marking} />
        <p>{allowanceWords(edgeUses(garment, drawn), marking)}</p>
        <a class="plain" href={writeHash({ screen: 'paper', outfit: session.id })}>
          Pattern sheets at true size
        </a>
      </details>
    </PartFrame>
  );
}

/** What is done to a piece and what it is sewn to. */
function Hanging({ session, outfit, garment, piece }: PieceProps) {
  const at = (...more: readonly string[]): string => hashOf(session, 'garment', garment.id, ...more);
  const [works, joins] = [worksOf(garment, piece.id), joinsOf(garment, piece.id)];
  return (
    <section data-part="hanging">
      <h2>Done to it and sewn to it</h2>
      {works.length + joins.length === 0 && <p class="quiet">Nothing yet.</p>}
      <ul class="ways">
        {[...works.map((one) => ['work', one] as const), ...joins.map((one) => ['join', one] as const)].map(
          ([kind, { id, name }]) => (
            <li key={id}>
              <a class="way" href={at(kind, id)}>
                <b>{name}</b>
                <span>{kind}</span>
              </a>
            </li>
          ),
        )}
      </ul>
      <div class="choice">
        <button
          type="button"
          class="plain"
          onClick={() => {
            beginAnew(draftOf(outfit, garment, 'work'), { on: piece.id });
            go({ screen: 'outfit', outfit: session.id, at: ['garment', garment.id, 'work'] });
          }}
        >
          Put a work on this piece
        </button>
      </div>
    </section>
  );
}
