import { writeSource } from '../../cloth/source.ts';
import type { Marking } from '../../length/writing.ts';
import type { MeasureId } from '../../outfit/measures.ts';
import type { Doubt } from '../../outfit/plausible.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { BodyFigure } from './body-figure.tsx';
import { MEASURE_FIELDS } from './measures-typed.ts';

/** One measure: where the tape lies, its field, and a kind word where it had better be taken again. */
export function MeasureBox(props: {
  readonly id: MeasureId;
  readonly text: string;
  readonly fault: string | undefined;
  readonly doubts: readonly Doubt[];
  readonly marking: Marking;
  readonly onText: (text: string) => void;
}) {
  const { id, text, fault, doubts, marking, onText } = props;
  const field = MEASURE_FIELDS[id];
  if (!field) return null;
  return (
    <li class="measure" data-measure={id}>
      <BodyFigure measure={id} />
      <div class="measure-field">
        <FieldBox name={id} field={field} text={text} fault={fault} marking={marking} onText={onText} />
        <div role="status">
          {doubts.map(({ say, source }) => (
            <p key={say} class="doubt" data-part="doubt">
              <span>{say}</span>
              <cite>{writeSource(source)}</cite>
            </p>
          ))}
        </div>
      </div>
    </li>
  );
}
