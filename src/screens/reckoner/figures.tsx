import { type Marking, writeLength } from '../../length/writing.ts';
import type { ReckonedFigure } from '../../reckon/reckoning.ts';
import { LengthFigure } from '../../ui/figure.tsx';
import { hairOff } from '../bench/marks.tsx';
import { longWords, writeNumber } from './words.ts';

/** A figure as it is read: a length with how far its mark is off, a number of things, or words. */
export function FigureOf({
  figure,
  marking,
}: {
  readonly figure: ReckonedFigure;
  readonly marking: Marking;
}) {
  if (figure.kind === 'words') return <span class="figure-words">{figure.words}</span>;
  if (figure.kind === 'number') {
    return (
      <span class="figure" data-part="figure">
        {writeNumber(figure.number)}
        {figure.of !== undefined && <span class="figure-of"> {figure.of}</span>}
      </span>
    );
  }
  const written = writeLength(figure.length, marking);
  const hair = longWords(figure.length, marking) ?? hairOff(written.off, marking);
  return (
    <>
      <LengthFigure written={written} />
      {hair !== undefined && <span class="hair"> {hair}</span>}
    </>
  );
}

/** The figure that the maker came for. Stays in sight while the fields are filled. */
export function MainFigure(props: {
  readonly figure: ReckonedFigure | undefined;
  readonly stale: boolean;
  readonly marking: Marking;
}) {
  const { figure, stale, marking } = props;
  return (
    <section class={stale ? 'main-figure stale' : 'main-figure'} data-part="main-figure" aria-label="Result">
      {figure ? (
        <>
          <p class="main-name">{figure.name}</p>
          <p class="main-value">
            <FigureOf figure={figure} marking={marking} />
          </p>
        </>
      ) : (
        <p class="main-name">The result stands here</p>
      )}
      {stale && (
        <p class="stale-words">
          {figure ? 'Still the last good result. ' : ''}Mend the field with the sign for a new one.
        </p>
      )}
    </section>
  );
}

/** How many figures stand open below the main one; a fold for a single one would save no room. */
const OPEN_FIGURES = 7;

/** All other figures: the first in a list, the rest folded away below it. */
export function OtherFigures(props: {
  readonly figures: readonly ReckonedFigure[];
  readonly stale: boolean;
  readonly marking: Marking;
}) {
  const { figures, stale, marking } = props;
  if (figures.length === 0) return null;
  const open = figures.length <= OPEN_FIGURES + 1 ? figures.length : OPEN_FIGURES;
  const rest = figures.slice(open);
  return (
    <div class={stale ? 'outcomes stale' : 'outcomes'} data-part="figures">
      <FigureList figures={figures.slice(0, open)} marking={marking} />
      {rest.length > 0 && (
        <details data-part="more-figures">
          <summary>{rest.length} more figures</summary>
          <FigureList figures={rest} marking={marking} />
        </details>
      )}
    </div>
  );
}

function FigureList(props: { readonly figures: readonly ReckonedFigure[]; readonly marking: Marking }) {
  return (
    <dl class="outcome-list">
      {props.figures.map((figure, i) => (
        // Two figures of one name never change places.
        <div key={`${figure.name} ${i}`} class={figure.kind === 'words' ? 'in-words' : undefined}>
          <dt>{figure.name}</dt>
          <dd>
            <FigureOf figure={figure} marking={props.marking} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
