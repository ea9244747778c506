import { nm, times } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { measurables } from './trace-make.ts';
import type { SheetProps } from './trace-sheet.tsx';

/** How large the drawing truly is: as its file says, or by one length that the maker knows. */
export function ScaleFields({
  trace,
  drawing,
  of,
  marking,
  pointing,
  onPoint,
}: SheetProps & { readonly pointing: boolean; readonly onPoint: (now: boolean) => void }) {
  const choices = trace.choices.value;
  const how = choices.how ?? (drawing.trueSize ? 'found' : 'known');
  const all = measurables(drawing, choices, of);
  const known = all.find(({ key }) => key === choices.known) ?? all[0];
  return (
    <section data-part="trace-scale">
      <h2>How large is it?</h2>
      <p>
        {drawing.trueSize
          ? 'The file gives its size in units of a rule, so it is taken as true.'
          : 'The file gives no size in millimetres or inches: 96 of its units were taken for an inch. Give one length that you know.'}
      </p>
      <FieldBox
        name="how"
        field={{
          kind: 'choice',
          label: 'Size',
          options: [
            { value: 'found', label: 'As the file has it' },
            { value: 'known', label: 'By a length that I know' },
          ],
          start: 'found',
        }}
        text={how}
        fault={undefined}
        marking={marking}
        onText={(text) => {
          if (text === 'found') onPoint(false);
          trace.change({ how: text === 'known' ? 'known' : 'found' });
        }}
      />
      {how === 'known' && (
        <>
          <FieldBox
            name="known"
            field={{
              kind: 'choice',
              label: 'What you know the length of',
              options: all.map(({ key, say, long }) => ({
                value: key,
                label: long === 0 ? say : `${say}, in the drawing ${writeLength(long, marking).text}`,
              })),
              start: 'points',
            }}
            text={known?.key ?? 'points'}
            fault={undefined}
            marking={marking}
            onText={(text) => trace.change({ known: text })}
          />
          {known?.key === 'points' && (
            <button
              type="button"
              class="plain"
              aria-pressed={pointing}
              data-part="point"
              onClick={() => {
                onPoint(!pointing);
                if (!pointing)
                  document.querySelector('[data-part="trace-sheet"]')?.scrollIntoView({ block: 'center' });
              }}
            >
              {pointing
                ? 'Now touch the two points on the drawing above'
                : known.long > 0
                  ? 'Touch two others'
                  : 'Touch two points'}
            </button>
          )}
          <FieldBox
            name="long"
            field={{ kind: 'length', label: 'Its true length', start: { in: '', mm: '' } }}
            text={choices.long}
            fault={undefined}
            marking={marking}
            onText={(text) => trace.change({ long: text })}
          />
        </>
      )}
    </section>
  );
}

/** A length of the drawing as it truly is. */
export const trueLength = (long: number, scale: number, marking: Marking): string =>
  writeLength(times(nm(long), scale), marking).text;
