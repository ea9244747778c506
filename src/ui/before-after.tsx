import { toMm } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import type { Outline } from '../shape/outline.ts';
import { beforeAfterLines, type ChangeAt } from './before-after-lines.ts';
import { scaleBar } from './sheet-drawing.tsx';
import './before-after.css';

const r = (n: number): number => Math.round(n * 10) / 10;

/**
 * A piece as it is and as it will be, on each other and to scale: the old outline dashed, the new one solid, what
 * changes written beside the height where it does.
 */
export function BeforeAfter(props: {
  readonly name: string;
  readonly before: Outline;
  readonly after: Outline;
  readonly changes: readonly ChangeAt[];
  /** What changes, in sentences, for everyone who cannot see it. */
  readonly said: readonly string[];
  readonly marking: Marking;
}) {
  const { name, before, after, changes, said, marking } = props;
  const drawn = beforeAfterLines(before, after, changes);
  const bar = scaleBar(drawn.wide / drawn.scale, marking.unit);
  const long = r(toMm(bar) * drawn.scale);
  const { foot } = drawn;
  return (
    <figure class="before-after" data-part="before-after">
      <svg
        viewBox={`0 0 ${drawn.wide} ${r(drawn.high)}`}
        role="img"
        aria-label={`${name} before and after, drawn to scale`}
      >
        <path class="gained" d={drawn.before + drawn.after} />
        <path class="was" d={drawn.before} />
        <path class="will-be" d={drawn.after} />
        {drawn.edges.map(({ words, x, y, turn }) => (
          <text
            key={`${words} ${x} ${y}`}
            class="edge-name"
            x={r(x)}
            y={r(y)}
            text-anchor="middle"
            transform={turn === 0 ? undefined : `rotate(${turn} ${r(x)} ${r(y)})`}
          >
            {words}
          </text>
        ))}
        {drawn.labels.map(({ size, way, where, across: [a, b], lead: [from, to], x, y }) => (
          <g key={`${size} ${way} ${where} ${y}`}>
            <path class="level" d={`M${r(a.x)} ${r(a.y)}L${r(b.x)} ${r(b.y)}`} />
            <path class="lead" d={`M${r(from.x)} ${r(from.y)}L${r(to.x)} ${r(to.y)}`} />
            <text class="amount" x={r(x)} y={r(y)}>
              {size} <tspan class="where">{way}</tspan>
            </text>
            <text class="where" x={r(x)} y={r(y + 21)}>
              {where}
            </text>
          </g>
        ))}
        <path
          class="bar"
          d={`M${foot.x} ${r(foot.y - 5)}v10M${foot.x} ${r(foot.y)}h${long}M${r(foot.x + long)} ${r(foot.y - 5)}v10`}
        />
      </svg>
      <figcaption>
        {said.map((one) => (
          <p key={one}>{one}</p>
        ))}
        {drawn.numbered.length > 0 && (
          <p>{drawn.numbered.map(({ number, name: edge }) => `${number} ${edge}`).join(', ')}.</p>
        )}
        <p class="quiet">
          Dashed: as it is now. Solid: as it will be. To scale, without seam allowance; the bar is{' '}
          {writeLength(bar, marking.unit === 'in' ? { unit: 'in', per: 8 } : marking).text} long.
        </p>
      </figcaption>
    </figure>
  );
}
