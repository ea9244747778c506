import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { LatePoint } from '../../order/undoing/late.ts';
import { lower } from '../../outfit/lower.ts';
import {
  FLOOR,
  LEFT,
  linesAcross,
  PIN,
  pathOf,
  RIGHT,
  ROW,
  roughly,
  rowsFor,
  scaleFor,
  WIDE,
} from './late-lines.ts';
import './late.css';

/** A try-on of the running order. */
export interface TryOnMark {
  readonly name: string;
  /** How many steps are done when it is. */
  readonly done: number;
}

/** What the drawing needs. */
export interface CurveProps {
  readonly points: readonly LatePoint[];
  readonly tryOns: readonly TryOnMark[];
  /** How many steps are done now. */
  readonly now: number;
  /** What a step says. */
  readonly say: (step: string) => string;
  /** The name of a misfit. */
  readonly called: (misfit: string) => string;
}

const about = (minutes: number): string => (minutes < 1 ? 'next to nothing' : `about ${roughly(minutes)}`);

/** What misfits would cost along the running order, as a line of chalk that rises; any point of it can be asked. */
export function LateCurve({ points, tryOns, now, say, called }: CurveProps) {
  const at = useSignal<number | undefined>(undefined);
  const id = useId();
  const steps = points.length;
  const most = Math.max(1, ...points.map(({ minutes }) => minutes));
  const scale = scaleFor(steps, most);
  const done = Math.min(steps, at.value ?? Math.max(1, now));
  const point = points[done - 1];
  if (!point) return null;
  const path = pathOf(points, scale);
  const rows = rowsFor(
    tryOns.map((one) => scale.x(one.done)),
    PIN,
  );
  const high = FLOOR + 6 + ROW * Math.max(0, ...rows.map((row) => row + 1));
  const pinned = tryOns.map(({ done: at }, i) => ({
    x: scale.x(at),
    y: FLOOR + 16 + (rows[i] ?? 0) * ROW,
    top: scale.y(points[at - 1]?.minutes ?? 0),
    number: i + 1,
  }));
  const worst = ({ worst, worstMinutes }: LatePoint): string =>
    worst === '' ? '' : `; worst: ${lower(called(worst))}, ${about(worstMinutes)}`;
  const found = `found here: ${about(point.minutes)}${worst(point)}`;
  const here = done === now ? 'now' : `after step ${done} of ${steps}`;
  const touched = (event: PointerEvent): void => {
    if (event.type === 'pointermove' && event.buttons === 0) return;
    if (!(event.currentTarget instanceof Element)) return;
    const { left, width } = event.currentTarget.getBoundingClientRect();
    if (width > 0) at.value = scale.doneAt((event.clientX - left) / width);
  };
  return (
    <figure class="late-curve" data-part="late-curve">
      <svg
        viewBox={`0 0 ${WIDE} ${high}`}
        role="img"
        aria-label={`What misfits would cost along the running order, from ${about(points[0]?.minutes ?? 0)} after the first step to ${about(points.at(-1)?.minutes ?? 0)} after the last.`}
        onPointerDown={touched}
        onPointerMove={touched}
      >
        {linesAcross(most).map((minutes) => (
          <g key={minutes}>
            <line
              class="late-level"
              x1={LEFT}
              x2={WIDE - RIGHT}
              y1={scale.y(minutes)}
              y2={scale.y(minutes)}
            />
            <text x={LEFT - 6} y={scale.y(minutes) + 5} text-anchor="end">
              {roughly(minutes)}
            </text>
          </g>
        ))}
        <line class="late-floor" x1={LEFT} x2={WIDE - RIGHT} y1={FLOOR} y2={FLOOR} />
        <path class="late-dust" d={path} />
        <path class="late-chalk" d={path} />
        {pinned.map(({ x, y, top, number }) => (
          <line key={number} class="late-pin" x1={x} x2={x} y1={top} y2={y} />
        ))}
        {pinned.map(({ x, y, number }) => (
          <g key={number} class="late-pin">
            <circle cx={x} cy={y} r={PIN / 2} />
            <text x={x} y={y + 5} text-anchor="middle">
              {number}
            </text>
          </g>
        ))}
        {now > 0 && (
          <g class="late-now">
            <line x1={scale.x(now)} x2={scale.x(now)} y1={18} y2={FLOOR} />
            <text x={scale.x(now)} y={14} text-anchor={now > steps / 2 ? 'end' : 'start'}>
              now
            </text>
          </g>
        )}
        <g class="late-asked">
          <line x1={scale.x(done)} x2={scale.x(done)} y1={scale.y(point.minutes)} y2={FLOOR} />
          <circle cx={scale.x(done)} cy={scale.y(point.minutes)} r={6.5} />
        </g>
      </svg>
      <label class="late-slide">
        <span class="unseen">How far the work has come</span>
        <input
          type="range"
          min={1}
          max={steps}
          value={done}
          aria-valuetext={`${here}, ${found}`}
          onInput={(event) => {
            at.value = Number(event.currentTarget.value);
          }}
        />
      </label>
      <figcaption data-part="late-here">
        <b>{here === 'now' ? 'Now' : `After step ${done} of ${steps}`}</b>, {found}.
        <span class="quiet late-step">{say(point.step)}</span>
      </figcaption>
      {tryOns.length > 0 && (
        <details>
          <summary>At each try-on</summary>
          <table class="late-table" aria-describedby={id}>
            <caption id={id} class="unseen">
              What misfits would cost, found at each try-on and at the end
            </caption>
            <thead>
              <tr>
                <th scope="col">Found at</th>
                <th scope="col">Costs</th>
                <th scope="col">Worst</th>
              </tr>
            </thead>
            <tbody>
              {[
                ...tryOns.map((one, i) => ({ ...one, name: `${i + 1} ${one.name}` })),
                { name: 'The end', done: steps },
              ].map((one) => {
                const row = points[one.done - 1];
                return (
                  <tr key={`${one.name} ${one.done}`}>
                    <th scope="row">{one.name}</th>
                    <td>{about(row?.minutes ?? 0)}</td>
                    <td>
                      {row && row.worst !== '' ? `${called(row.worst)}, ${about(row.worstMinutes)}` : ''}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        </details>
      )}
    </figure>
  );
}
