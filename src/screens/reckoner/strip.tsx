import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { type Marking, sayLength, writeLength } from '../../length/writing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import { LengthFigure } from '../../ui/figure.tsx';
import { Tape } from '../../ui/tape.tsx';
import { hairOff } from '../bench/marks.tsx';

/** Marks to set, one large figure at a time on the tape it is measured along, as at the bench. */
export function Strips({
  strips,
  marking,
}: {
  readonly strips: readonly StripMarks[];
  readonly marking: Marking;
}) {
  const chosen = useSignal(0);
  const id = useId();
  const strip = strips[Math.min(chosen.value, strips.length - 1)];
  if (!strip) return null;
  return (
    <section data-part="strip">
      <h2>Marks to set</h2>
      {strips.length > 1 && (
        <div class="which-strip">
          <label for={id}>Which line</label>
          <select
            id={id}
            class="field"
            value={String(strips.indexOf(strip))}
            onChange={(event) => {
              chosen.value = Number(event.currentTarget.value);
            }}
          >
            {strips.map((one, i) => (
              <option key={`${one.name} ${i}`} value={String(i)}>
                {one.name}
              </option>
            ))}
          </select>
        </div>
      )}
      <OneStrip key={`${chosen.value} ${strip.name}`} strip={strip} marking={marking} />
    </section>
  );
}

function OneStrip({ strip, marking }: { readonly strip: StripMarks; readonly marking: Marking }) {
  const k = useSignal(0);
  // Said at the touch only, not whenever the fields change the marks.
  const said = useSignal('');
  const { marks } = strip;
  const here = Math.min(k.value, marks.length - 1);
  const mark = marks[here];
  if (!mark) return <p>No mark on this line.</p>;
  const written = writeLength(mark.at, marking);
  const hair = hairOff(written.off, marking);
  const to = (next: number) => () => {
    k.value = Math.max(0, Math.min(marks.length - 1, next));
    const to = marks[k.value];
    said.value = to ? `${k.value + 1} of ${marks.length}, ${to.name}: ${sayLength(to.at, marking)}` : '';
  };
  return (
    <>
      <p class="strip-name">{strip.name}</p>
      <p class="unseen" role="status">
        {said.value}
      </p>
      <div class="strip-now">
        <LengthFigure written={written} />
        <p class="strip-words">
          <b>{mark.name}</b>
          <span>
            {here + 1} of {marks.length}, from {strip.from}
          </span>
          {hair !== undefined && <span class="hair">{hair}</span>}
        </p>
      </div>
      <Tape
        span={strip.span}
        marks={marks.map(({ at }, i) => ({
          item: String(i),
          at,
          state: i < here ? 'set' : i === here ? 'in-hand' : 'to-come',
        }))}
        marking={marking}
      />
      <div class="strip-moves">
        <button type="button" class="plain" aria-disabled={here === 0} onClick={to(here - 1)}>
          Previous mark
        </button>
        <button type="button" class="plain" aria-disabled={here === marks.length - 1} onClick={to(here + 1)}>
          Next mark
        </button>
      </div>
      <details>
        <summary>All {marks.length} marks</summary>
        <ol class="all-marks">
          {marks.map((one, i) => (
            <li key={`${one.name} ${i}`}>
              <span>
                {i + 1}. {one.name}
              </span>
              <b>{writeLength(one.at, marking).text}</b>
            </li>
          ))}
        </ol>
      </details>
    </>
  );
}
