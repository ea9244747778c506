/**
 * Outlines from a drawing program: a file is read as data, its lines are chosen, scaled, named and put into the garment.
 *
 * What others may hold on to: `main[data-part="trace"]`; the file field `[data-part="trace-file"]`; what was found
 * `[data-part="trace-found"]` and what is wrong `[data-part="trace-wrong"]`; `button[data-choose]` one a line that can be
 * a piece; `[data-field="how"]`, `[data-field="known"]`, `[data-field="long"]`; `button[data-open]` one a chosen piece; in
 * `[data-part="trace-piece"]`: `button[data-mode]`, `button[data-edge]`, `button[data-name]`, `[data-part="put"]`; at the
 * foot `[data-part="save-pieces"]`.
 */
import { piecesSvg } from '../../paper/pieces-svg.ts';
import { Sign } from '../../ui/signs.tsx';
import { markingFor } from '../choices.ts';
import { HouseNotice } from '../house.tsx';
import { fileName, offerFile } from '../paper/save-file.ts';
import type { GarmentProps } from './describe.tsx';
import { Head, hashOf, NotThere } from './head.tsx';
import { type TraceDraft, useTrace } from './trace-draft.ts';
import { type ChoiceOf, firstChoice, scaleOf } from './trace-make.ts';
import { TracePiece } from './trace-piece.tsx';
import { TraceSheet } from './trace-sheet.tsx';
import { UndoBar } from './undo-bar.tsx';
import { so } from './words.ts';
import './piece.css';
import './trace.css';

/** Outlines from a drawing program. */
export default function TracePage({ session, garment: id }: GarmentProps) {
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  const trace = useTrace(`${session.id}/garment/${id}/trace`);
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const marking = markingFor(outfit.units);
  const drawing = trace.drawing.value;
  const choices = trace.choices.value;
  const of: ChoiceOf = (line) =>
    choices.pieces[line.id] ??
    firstChoice(line, {
      drawing: drawing ?? { lines: [], trueSize: true, left: [] },
      garment,
      number: choices.chosen.indexOf(line.id) + 1 || choices.chosen.length + 1,
      unit: outfit.units,
      cloth: outfit.cloths[0]?.id ?? '',
    });
  const chosen = drawing?.lines.filter((line) => choices.chosen.includes(line.id)) ?? [];
  const open = chosen.find((line) => line.id === choices.open) ?? chosen[0];
  const scale = drawing && scaleOf(drawing, choices, of, outfit.units);
  return (
    <main class="page describe" data-part="trace">
      <Head
        session={session}
        up={[{ say: garment.name, href: hashOf(session, 'garment', id) }]}
        title="Outlines from a drawing"
      />
      <FileBox trace={trace} />
      {drawing && <TraceSheet trace={trace} drawing={drawing} of={of} marking={marking} />}
      {drawing && open && (
        <section data-part="trace-chosen">
          <h2>The pieces</h2>
          {chosen.length > 1 && (
            <ul class="edge-list" aria-label="Chosen pieces">
              {chosen.map((line) => {
                const { name, put } = of(line);
                const there = garment.pieces.some((piece) => piece.id === put);
                return (
                  <li key={line.id}>
                    <button
                      type="button"
                      class="plain"
                      data-open={line.id}
                      aria-pressed={line === open}
                      onClick={() => trace.change({ open: line.id })}
                    >
                      <span>
                        {name}
                        <small>{there ? 'in the garment' : 'not put in yet'}</small>
                      </span>
                    </button>
                  </li>
                );
              })}
            </ul>
          )}
          {scale?.ok ? (
            <TracePiece
              key={open.id}
              {...{ session, outfit, garment, trace, drawing, marking }}
              line={open}
              choice={of(open)}
              scale={scale.value}
            />
          ) : (
            <p class="fault" data-part="trace-unscaled">
              <Sign name="caution" />
              <span>First how large it is: {scale?.error}</span>
            </p>
          )}
        </section>
      )}
      {garment.pieces.length > 0 && (
        <section>
          <h2>Back to the drawing program</h2>
          <p>
            {so(garment.pieces.length, 'piece')} of this garment at true size: seam lines, cutting lines,
            grain and marks in groups of their own. Read in here again, edges keep their names.
          </p>
          <div class="choice">
            <button
              type="button"
              class="plain"
              data-part="save-pieces"
              onClick={() =>
                offerFile(
                  new File([piecesSvg(garment)], fileName(`${garment.name} pieces`, 'svg'), {
                    type: 'image/svg+xml',
                  }),
                )
              }
            >
              Save the pieces as a drawing
            </button>
          </div>
        </section>
      )}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}

function FileBox({ trace }: { readonly trace: TraceDraft }) {
  const { file, drawing, fault, busy } = trace;
  const found = drawing.value;
  const closed = found?.lines.filter((line) => line.closed).length ?? 0;
  return (
    <section>
      {!found && (
        <p>
          Draw or scan the pieces in any vector program and save them as SVG. The file is read on this device
          as data only; nothing in it is run or fetched.
        </p>
      )}
      <label class="trace-choose">
        <span>{found ? `${file.value}. Choose another drawing:` : 'Choose a drawing (SVG):'}</span>
        <input
          type="file"
          class="field"
          accept=".svg,image/svg+xml"
          data-part="trace-file"
          onChange={(event) => {
            const [chosen] = event.currentTarget.files ?? [];
            if (chosen) void trace.take(chosen);
            event.currentTarget.value = '';
          }}
        />
      </label>
      <p role="status" data-part="trace-found">
        {busy.value
          ? 'Reading…'
          : found &&
            `${so(closed, 'closed line')}, ${so(found.lines.length - closed, 'open line')}.${found.left.length > 0 ? ` Left out: ${found.left.join(', ')}.` : ''}`}
      </p>
      {fault.value !== '' && (
        <p class="fault" role="alert" data-part="trace-wrong">
          <Sign name="caution" />
          <span>{fault.value}</span>
        </p>
      )}
    </section>
  );
}
