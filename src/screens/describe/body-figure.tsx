import type { MeasureId } from '../../outfit/measures.ts';
import { FIGURE, type FigureLine, TAPES } from './body-lines.ts';

const figure = (value: number): string => String(Math.round(value * 100) / 100);

/** A path through all the spots: between two of them it runs as the ones before and after let expect. */
export function smoothPath({ spots, closed }: Pick<FigureLine, 'spots' | 'closed'>): string {
  const count = spots.length;
  const spot = (i: number) =>
    spots[closed ? (i + count) % count : Math.max(0, Math.min(count - 1, i))] ?? [0, 0];
  const say = (...values: readonly number[]): string => values.map(figure).join(' ');
  let path = `M${say(...spot(0))}`;
  for (let i = 0; i < (closed ? count : count - 1); i += 1) {
    const [a, b, c, d] = [spot(i - 1), spot(i), spot(i + 1), spot(i + 2)];
    path += `C${say(b[0] + (c[0] - a[0]) / 6, b[1] + (c[1] - a[1]) / 6)} ${say(c[0] - (d[0] - b[0]) / 6, c[1] - (d[1] - b[1]) / 6)} ${say(...c)}`;
  }
  return closed ? `${path}Z` : path;
}

/** Where the tape lies for a measure, drawn on a plain figure; the words for it stand below. */
export function BodyFigure({ measure }: { readonly measure: MeasureId }) {
  const { view, box, round, along, levels = [], at } = TAPES[measure];
  const [left, top, width] = box;
  const [x, y, wide, high, turn = 0] = round ?? [0, 0, 0, 0];
  const half = (sweep: 0 | 1): string =>
    `M${figure(x - wide)} ${figure(y)}A${figure(wide)} ${figure(high)} 0 0 ${sweep} ${figure(x + wide)} ${figure(y)}`;
  const ends = along && [along[0], along.at(-1)];
  return (
    <figure class="body-figure">
      <svg viewBox={`${left} ${top} ${width} ${width * 1.25}`} aria-hidden="true" data-measure={measure}>
        {FIGURE[view].map((line) => (
          <path
            key={line.spots.join()}
            class={line.faint ? 'body-line body-faint' : 'body-line'}
            d={smoothPath(line)}
          />
        ))}
        {levels.map(([at, from, to]) => (
          <path key={at} class="body-level" d={`M${from} ${at}H${to}`} />
        ))}
        {round && (
          <g transform={`rotate(${turn} ${x} ${y})`}>
            <path class="body-tape body-behind" d={half(1)} />
            <path class="body-tape" d={half(0)} />
          </g>
        )}
        {along && <path class="body-tape" d={smoothPath({ spots: along })} />}
        {ends?.map(
          (end) => end && <circle key={end.join()} class="body-end" cx={end[0]} cy={end[1]} r={width / 42} />,
        )}
      </svg>
      <figcaption>{at}</figcaption>
    </figure>
  );
}
