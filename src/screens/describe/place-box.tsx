import { useSignal } from '@preact/signals';
import { useId, useMemo } from 'preact/hooks';
import type { Marking } from '../../length/writing.ts';
import { readEdge } from '../../outfit/chains.ts';
import { type PlaceChoice, placeChoices } from '../../outfit/changing/suggest-places.ts';
import type { Garment } from '../../outfit/outfit.ts';
import { saidEdge } from '../../outfit/units/place.ts';
import type { PlaceAsked } from '../../outfit/units/unit.ts';
import { Sign } from '../../ui/signs.tsx';
import { EdgePicker } from './edge-picker.tsx';
import { begun } from './words.ts';

/** Places offered as buttons; whatever else is meant is found by touch. */
const MOST = 3;

/** On the button that leads to what is not among the likeliest, and on it once it has. */
const OTHERS: Readonly<Record<PlaceAsked['kind'], readonly [to: string, back: string]>> = {
  edges: ['Touch other edges', 'Done touching'],
  pieces: ['Choose other pieces', 'Done choosing'],
  piece: ['Show all pieces', 'Show fewer'],
  seam: ['Show all seams', 'Show fewer'],
};

/** On the button that shows the other places where one is proposed. */
const SHOW_ALL: Readonly<Record<PlaceAsked['kind'], string>> = {
  edges: 'Show all places',
  pieces: 'Show all pieces',
  piece: 'Show all pieces',
  seam: 'Show all seams',
};

/** What a place names, in words. */
function said(garment: Garment, asked: PlaceAsked, at: readonly string[]): string {
  const names: readonly { readonly id: string; readonly name: string }[] =
    asked.kind === 'seam' ? garment.joins : garment.pieces;
  return at
    .map((one) =>
      asked.kind === 'edges'
        ? saidEdge(garment, readEdge(one))
        : (names.find(({ id }) => id === one)?.name ?? one),
    )
    .join('; ');
}

/** The likeliest places; where some are called as the place usually is, only those. */
export function likely(garment: Garment, asked: PlaceAsked): readonly PlaceChoice[] {
  const all = placeChoices(garment, asked);
  const named = all.filter(({ at }) =>
    at.every((one) => asked.like.some((like) => readEdge(one).edge.endsWith(like))),
  );
  return (asked.kind === 'edges' && named.length > 0 ? named : all).slice(0, MOST);
}

/** Where a unit goes: the likely places as buttons, and all edges or pieces to touch where none of them is meant. */
export function PlaceBox(props: {
  readonly name: string;
  readonly asked: PlaceAsked;
  readonly garment: Garment;
  readonly picked: readonly string[];
  readonly fault: string | undefined;
  readonly marking: Marking;
  readonly onPick: (at: readonly string[]) => void;
}) {
  const { name, asked, garment, picked, fault, marking, onPick } = props;
  const id = useId();
  const choices = useMemo(() => likely(garment, asked), [garment, asked]);
  const here = picked.join(' ');
  const touching = useSignal(false);
  // A place that is proposed needs no choosing: the others are one touch away.
  const folded = useSignal(picked.length > 0 && fault === undefined);
  if (fault !== undefined && folded.peek()) folded.value = false;
  // One piece or seam of all there are is chosen from a longer list, of the same kind of buttons.
  const single = asked.kind === 'piece' || asked.kind === 'seam';
  const all = useMemo(() => (single ? placeChoices(garment, asked) : []), [garment, asked]);
  const listed = (single && touching.value ? all : choices).some(({ at }) => at.join(' ') === here);
  const toggled = (one: string): readonly string[] =>
    picked.includes(one) ? picked.filter((other) => other !== one) : [...picked, one];
  const every = [
    ...(single && touching.value ? all : choices),
    ...(picked.length > 0 && !listed ? [{ at: picked, say: said(garment, asked, picked) }] : []),
  ];
  const options = folded.value ? every.filter(({ at }) => at.join(' ') === here) : every;
  return (
    <fieldset class="field-box one-of field-wide" data-field={`at.${name}`} aria-describedby={`${id}-told`}>
      <legend>{begun(asked.label)}</legend>
      <div id={`${id}-told`} class="told-box">
        {asked.means !== undefined && !folded.value && <p class="means">{asked.means}</p>}
        {fault !== undefined && (
          <p class="fault" data-part="fault">
            <Sign name="caution" />
            <span>
              {fault}
              {choices.length === 0 &&
                ' Nothing here offers such a place yet: put on first what it is sewn to.'}
            </span>
          </p>
        )}
      </div>
      <div class="options places">
        {options.map(({ at, say }) => (
          <label key={at.join(' ')} class="option">
            <input
              type="radio"
              name={id}
              checked={at.join(' ') === here}
              onChange={() => {
                if (!single) touching.value = false;
                onPick(at);
              }}
            />
            <span>{say}</span>
          </label>
        ))}
        {asked.optional && !folded.value && (
          <label class="option">
            <input type="radio" name={id} checked={picked.length === 0} onChange={() => onPick([])} />
            <span>leave it out</span>
          </label>
        )}
      </div>
      {folded.value && (
        <button
          type="button"
          class="plain"
          onClick={() => {
            folded.value = false;
            touching.value = single;
          }}
        >
          {SHOW_ALL[asked.kind]}
        </button>
      )}
      {!folded.value && (single ? all.length > choices.length : garment.pieces.length > 0) && (
        <button
          type="button"
          class="plain"
          aria-expanded={touching.value}
          onClick={() => {
            touching.value = !touching.peek();
          }}
        >
          {OTHERS[asked.kind][touching.value ? 1 : 0]}
        </button>
      )}
      {touching.value && asked.kind === 'edges' && (
        <EdgePicker
          garment={garment}
          picked={picked}
          onPick={(edge) => onPick(toggled(edge))}
          marking={marking}
        />
      )}
      {touching.value && asked.kind === 'pieces' && (
        <div class="options">
          {garment.pieces.map((piece) => (
            <label key={piece.id} class="option">
              <input
                type="checkbox"
                checked={picked.includes(piece.id)}
                onChange={() => onPick(toggled(piece.id))}
              />
              <span>{piece.name}</span>
            </label>
          ))}
        </div>
      )}
    </fieldset>
  );
}
