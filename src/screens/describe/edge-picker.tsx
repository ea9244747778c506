import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type Marking, writeLength } from '../../length/writing.ts';
import { FOLD, readEdge } from '../../outfit/chains.ts';
import type { Garment, Piece } from '../../outfit/outfit.ts';
import { type EdgeLine, pieceLines, saidName } from './edge-lines.ts';
import './piece.css';

/** What choosing edges needs. */
export interface EdgePickerProps {
  readonly garment: Garment;
  /** Ids of the pieces shown; all of them where it is left out. */
  readonly pieces?: readonly string[] | undefined;
  /** Edges chosen, as a file spells them: `front.neck`, `other:front.neck`. */
  readonly picked: readonly string[];
  readonly onPick: (edge: string) => void;
  /** Which edges can be chosen; all but folds where it is left out. */
  readonly only?: (edge: string) => boolean;
  readonly marking: Marking;
}

const canBeSewn = (edge: string): boolean => readEdge(edge).edge !== FOLD;

/** Every edge of a piece that can be chosen, its own first, then those of its mate or other half. */
const choosable = (piece: Piece, only: (edge: string) => boolean): readonly string[] =>
  ['', ...(piece.cut === 'one' ? [] : ['other:'])].flatMap((side) =>
    piece.outline.edges.map(({ name }) => `${side}${piece.id}.${name}`).filter(only),
  );

/**
 * Edges chosen by touching them on the pieces, one piece at a time; the same edges stand as buttons below, for the
 * keyboard and for fingers that the drawing is too small for.
 */
export function EdgePicker(props: EdgePickerProps) {
  const { garment, picked, onPick, marking, only = canBeSewn } = props;
  const pieces = garment.pieces.filter(({ id }) => props.pieces === undefined || props.pieces.includes(id));
  const shown = pieces
    .map((piece) => ({ piece, edges: choosable(piece, only) }))
    .filter(({ edges }) => edges.length > 0);
  const chosen = useSignal<string | undefined>(undefined);
  const first = picked.map((edge) => readEdge(edge).piece).at(-1);
  const open =
    shown.find(({ piece }) => piece.id === chosen.value) ??
    shown.find(({ piece }) => piece.id === first) ??
    shown[0];
  if (!open) return <p class="quiet">There is no edge here to choose.</p>;
  return (
    <div class="edge-picker" data-part="edge-picker">
      {shown.length > 1 && (
        <ul class="piece-choice" aria-label="Pieces">
          {shown.map(({ piece }) => {
            const count = picked.filter((edge) => readEdge(edge).piece === piece.id).length;
            return (
              <li key={piece.id}>
                <button
                  type="button"
                  class="plain"
                  data-piece={piece.id}
                  aria-pressed={piece === open.piece}
                  onClick={() => {
                    chosen.value = piece.id;
                  }}
                >
                  <PieceSign piece={piece} />
                  <span>
                    {piece.name}
                    {count > 0 && <small>{count === 1 ? '1 edge' : `${count} edges`}</small>}
                  </span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <OnePiece
        key={open.piece.id}
        piece={open.piece}
        edges={open.edges}
        picked={picked}
        onPick={onPick}
        marking={marking}
      />
    </div>
  );
}

/** A piece as a small picture beside its name. */
export function PieceSign({ piece }: { readonly piece: Piece }) {
  const { view, sides } = useMemo(() => pieceLines(piece, piece.cut === 'fold'), [piece]);
  return (
    <svg class="piece-sign" viewBox={view.join(' ')} aria-hidden="true">
      {sides.map((side) => (
        <path key={String(side.other)} d={side.d} />
      ))}
    </svg>
  );
}

function OnePiece(props: {
  readonly piece: Piece;
  readonly edges: readonly string[];
  readonly picked: readonly string[];
  readonly onPick: (edge: string) => void;
  readonly marking: Marking;
}) {
  const { piece, edges, picked, onPick, marking } = props;
  const others = edges.some((edge) => edge.startsWith('other:'));
  const asked = useSignal(false);
  const mate =
    others && (asked.value || picked.some((edge) => edge.startsWith('other:') && edges.includes(edge)));
  const lines = useMemo(() => pieceLines(piece, mate), [piece, mate]);
  const all = lines.sides.flatMap((side) => side.edges);
  const can = all.filter(({ ref }) => edges.includes(ref));
  return (
    <>
      {/* The buttons below are the same edges for everybody who cannot touch the drawing. */}
      <svg class="piece-edges" viewBox={lines.view.join(' ')} aria-hidden="true" data-piece={piece.id}>
        {lines.sides.map((side) => (
          <path key={String(side.other)} class="piece-cloth" d={side.d} />
        ))}
        {mate &&
          lines.sides.map(({ other, middle }) => (
            <text
              key={String(other)}
              class="edge-words edge-side"
              {...middle}
              font-size={lines.letters}
              text-anchor="middle"
            >
              {other ? 'other side' : 'this side'}
            </text>
          ))}
        {all.map((edge) => (
          <Line key={edge.ref} edge={edge} can={can.includes(edge)} order={picked.indexOf(edge.ref)} />
        ))}
        {all.map((edge) => {
          const { x, y, turn, words, room } = edge.label;
          const on = picked.includes(edge.ref);
          const withLength = `${words} ${writeLength(edge.long, marking).text}`;
          return (
            <text
              key={edge.ref}
              class={on ? 'edge-words edge-on' : can.includes(edge) ? 'edge-words' : 'edge-words edge-out'}
              x={x}
              y={y}
              font-size={lines.letters}
              text-anchor="middle"
              transform={`rotate(${turn} ${x} ${y})`}
            >
              {on && withLength.length <= room ? withLength : words}
            </text>
          );
        })}
        {/* Where two edges meet, the shorter one is the harder to hit: it lies on top. */}
        {can
          .toSorted((a, b) => b.long - a.long)
          .map((edge) => (
            // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do the same
            <path
              key={edge.ref}
              class="edge-touch"
              data-touch={edge.ref}
              d={edge.d}
              onClick={() => onPick(edge.ref)}
            />
          ))}
      </svg>
      <div class="edges-named">
        {lines.stretched && (
          <p class="quiet">Drawn broader than it is, so that its edges can be told apart.</p>
        )}
        {others && !mate && (
          <button
            type="button"
            class="plain other-side"
            data-part="other-side"
            onClick={() => {
              asked.value = true;
            }}
          >
            The other side too
          </button>
        )}
        <ul class="edge-list" aria-label={`Edges: ${piece.name}`}>
          {can.map((edge) => (
            <li key={edge.ref}>
              <button
                type="button"
                class="plain"
                data-edge={edge.ref}
                aria-pressed={picked.includes(edge.ref)}
                onClick={() => onPick(edge.ref)}
              >
                <span class="edge-number" aria-hidden="true">
                  {edge.number}
                </span>
                <span>
                  {saidName(edge.name)}
                  {edge.ref.startsWith('other:') && ', the other side'}{' '}
                  <small>{writeLength(edge.long, marking).text}</small>
                </span>
              </button>
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}

function Line(props: { readonly edge: EdgeLine; readonly can: boolean; readonly order: number }) {
  const { edge, can, order } = props;
  const kind = order >= 0 ? 'edge-line edge-picked' : can ? 'edge-line' : 'edge-line edge-out';
  return <path class={kind} d={edge.d} />;
}
