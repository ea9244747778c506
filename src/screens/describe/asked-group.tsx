import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { crossings, lookUp, readEdge } from '../../outfit/chains.ts';
import { saidEdge } from '../../outfit/units/place.ts';
import { Sign } from '../../ui/signs.tsx';
import type { Ask } from './asks.ts';
import type { InHand } from './folded-words.ts';
import { at } from './stands.ts';

/** Something asked by more than one control: its label above, its fault under that. */
export function Group(props: {
  readonly name: string;
  readonly ask: Ask;
  readonly fault: string | undefined;
  readonly children: ComponentChildren;
}) {
  const { name, ask, fault, children } = props;
  const id = useId();
  return (
    <fieldset
      class="field-box field-wide one-of"
      data-field={name}
      aria-describedby={`${id}-means${fault === undefined ? '' : ` ${id}-fault`}`}
    >
      <legend>{ask.label}</legend>
      <p class="means" id={`${id}-means`}>
        {ask.means}
      </p>
      {fault !== undefined && (
        <p class="fault" id={`${id}-fault`} data-part="fault">
          <Sign name="caution" />
          <span>{fault}</span>
        </p>
      )}
      {children}
    </fieldset>
  );
}

/** Things to choose one of, each with its line. */
export function KindOptions(props: {
  readonly name: string;
  readonly options: readonly { readonly value: string; readonly label: string; readonly tells: string }[];
  readonly chosen: string;
  readonly onChoose: (value: string) => void;
}) {
  const id = useId();
  return (
    <div class="options kinds">
      {props.options.map(({ value, label, tells }) => (
        <label key={value} class="option" data-kind={value}>
          <input
            type="radio"
            name={`${id}-${props.name}`}
            value={value}
            checked={props.chosen === value}
            onChange={() => props.onChoose(value)}
          />
          <span>
            <b>{label}</b> <small>{tells}</small>
          </span>
        </label>
      ))}
    </div>
  );
}

/** The run as it was picked, in its order. */
export function Run(props: {
  readonly refs: readonly string[];
  readonly form: InHand;
  /** Edges that need not meet. */
  readonly apart: boolean;
  readonly onText: (text: string) => void;
}) {
  const { refs, form, apart, onText } = props;
  const { garment } = form.here;
  const said = refs.map((ref) => saidEdge(garment, readEdge(ref)));
  return (
    <div class="run" data-part="run">
      <p role="status">{refs.length === 0 ? 'No edge chosen yet.' : said.join(apart ? '; ' : ', then ')}</p>
      {!apart && <Gaps refs={refs} form={form} />}
      {!apart && refs.length > 1 && (
        <button type="button" class="plain" onClick={() => onText(refs.toReversed().join(' '))}>
          Turn the run round
        </button>
      )}
    </div>
  );
}

/** Where neighbours of a run do not lie end to end, said while it is picked. */
function Gaps({ refs, form }: { readonly refs: readonly string[]; readonly form: InHand }) {
  const gaps = gapsIn(refs, form);
  return (
    <div role="status">
      {gaps.map((say) => (
        <p key={say} class="fault" data-part="gap">
          <Sign name="caution" />
          <span>{say}</span>
        </p>
      ))}
    </div>
  );
}

/** What is wrong with a run, one sentence a gap: edges of two pieces that no seam joins where they should meet. */
export function gapsIn(refs: readonly string[], { here: { garment }, base }: InHand): readonly string[] {
  if (refs.length < 2) return [];
  const carrying = at(base, 'id');
  const looked = lookUp(garment);
  return crossings(looked, refs.map(readEdge), false, typeof carrying === 'string' ? carrying : undefined)
    .filter(({ over }) => over.length === 0)
    .map(
      ({ from, to }) =>
        `${saidEdge(garment, from)} and ${saidEdge(garment, to)} do not lie end to end: no seam joins them there. Sew their pieces together first, or touch one of the two again to leave it out.`,
    );
}
