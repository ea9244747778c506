import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { nm } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { boundingBox } from '../../shape/measure.ts';
import type { Drawing } from '../../traced/drawing.ts';
import type { TraceDraft } from './trace-draft.ts';
import { boxOf, type ChoiceOf, middleOf } from './trace-make.ts';
import { ScaleFields } from './trace-scale.tsx';
import { crossAt, mmOf, pathOf, snapped, touched, viewOf } from './trace-view.ts';

/** Closed lines smaller than this are marks and not pieces, unless nothing larger is there. */
const SMALL = 12_000_000;
/** So many lines stand in the list; the largest first. */
const LISTED = 60;

/** A drawing in work, and what stands of each of its lines. */
export interface SheetProps {
  readonly trace: TraceDraft;
  readonly drawing: Drawing;
  readonly of: ChoiceOf;
  readonly marking: Marking;
}

/** The whole drawing: which of its lines are pieces, and how large it truly is. */
export function TraceSheet({ trace, drawing, of, marking }: SheetProps) {
  const choices = trace.choices.value;
  const pointing = useSignal(false);
  const sized = useMemo(
    () =>
      drawing.lines
        .map((line) => ({ line, box: boxOf(line) }))
        .map((one) => ({
          ...one,
          wide: nm(one.box.right - one.box.left),
          high: nm(one.box.bottom - one.box.top),
        }))
        .toSorted((a, b) => b.wide * b.high - a.wide * a.high),
    [drawing],
  );
  const view = useMemo(
    () =>
      viewOf(
        boundingBox(
          sized.flatMap(({ box: { left, top, right, bottom } }) => [
            { x: left, y: top },
            { x: right, y: bottom },
          ]),
        ),
      ),
    [sized],
  );
  const closed = sized.filter(({ line }) => line.closed);
  const large = closed.filter(({ wide, high }) => Math.max(wide, high) > SMALL);
  const could = (large.length > 0 ? large : closed).slice(0, LISTED);
  const pick = (id: string): void => {
    const on = choices.chosen.includes(id);
    const chosen = on ? choices.chosen.filter((one) => one !== id) : [...choices.chosen, id];
    const line = drawing.lines.find((one) => one.id === id);
    trace.change({
      chosen,
      open: on ? (chosen[0] ?? '') : id,
      ...(line && !on ? { pieces: { ...choices.pieces, [id]: of(line) } } : {}),
    });
  };
  const point = (event: MouseEvent): void => {
    const found = touched(event);
    if (!found) return;
    const at = snapped(drawing.lines, found.at, found.pixel * 24);
    const points = [...(choices.points.length > 1 ? [] : choices.points), at];
    if (points.length > 1) pointing.value = false;
    trace.change({ known: 'points', points });
  };
  return (
    <>
      <section data-part="trace-pieces">
        <h2>Which lines are pieces?</h2>
        <p>
          Touch the seam line of each piece. What is not chosen can still be a mark or show the grain. Sizes
          are as in the drawing.
        </p>
        <svg class="trace-drawing" viewBox={view.box} aria-hidden="true" data-part="trace-sheet">
          {sized.map(({ line }) => {
            const on = choices.chosen.includes(line.id);
            const can = could.some((one) => one.line === line) && !pointing.value;
            return (
              <path
                key={line.id}
                class={`trace-line${on ? ' trace-on' : ''}${can ? ' trace-can' : ''}${line.closed ? '' : ' trace-open'}`}
                data-line={line.id}
                d={pathOf(line.start, line.segments, line.closed)}
                {...(can ? { onClick: () => pick(line.id) } : {})}
              />
            );
          })}
          {could.map(({ line, box }, i) => (
            <text
              key={line.id}
              class={choices.chosen.includes(line.id) ? 'edge-words edge-on' : 'edge-words'}
              {...mmOf(middleOf(box))}
              font-size={view.pixel * 15}
              text-anchor="middle"
            >
              {i + 1}
            </text>
          ))}
          {pointing.value && (
            // biome-ignore lint/a11y/noStaticElementInteractions: widths and edges can be chosen below instead
            <rect class="trace-catch" x="-1e6" y="-1e6" width="2e6" height="2e6" onClick={point} />
          )}
          {choices.points.map(({ x, y }, i) => (
            <path key={i} class="trace-point" d={crossAt({ x: nm(x), y: nm(y) }, view.pixel * 9)} />
          ))}
        </svg>
        <ul class="edge-list" aria-label="Lines that can be pieces">
          {could.map(({ line, wide, high }, i) => (
            <li key={line.id}>
              <button
                type="button"
                class="plain"
                data-choose={line.id}
                aria-pressed={choices.chosen.includes(line.id)}
                onClick={() => pick(line.id)}
              >
                <span class="edge-number">{i + 1}</span>
                <span>
                  {line.name || 'no name'}
                  <small>
                    {writeLength(wide, marking).text} × {writeLength(high, marking).text}
                  </small>
                </span>
              </button>
            </li>
          ))}
        </ul>
        {closed.length > could.length && (
          <p class="quiet">
            {closed.length - could.length === 1
              ? '1 smaller closed line can be a mark.'
              : `${closed.length - could.length} smaller closed lines can be marks.`}
          </p>
        )}
      </section>
      <ScaleFields
        trace={trace}
        drawing={drawing}
        of={of}
        marking={marking}
        pointing={pointing.value}
        onPoint={(now) => {
          pointing.value = now;
        }}
      />
    </>
  );
}
