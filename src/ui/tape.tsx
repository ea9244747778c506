import type { Length } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import { tapeWindow } from './tape-marks.ts';
import './tape.css';

/** A place on the tape: set already, in hand, or still to come. */
export interface TapeMark {
  readonly item: string;
  readonly at: Length;
  readonly state: 'set' | 'in-hand' | 'to-come';
}

const width = 360;
const top = 20;
const height = 66;
const stroke = [9, 13, 18, 26, 34] as const;

function Pin({ x, state }: { readonly x: number; readonly state: TapeMark['state'] }) {
  if (state === 'in-hand') {
    return (
      <g class="tape-pin">
        <line x1={x} x2={x} y1={6} y2={top + height + 6} />
        <circle cx={x} cy={9} r={8} />
        <path d={`M${x - 9} ${top + height + 16} L${x} ${top + height} L${x + 9} ${top + height + 16} Z`} />
      </g>
    );
  }
  // Under the tape, so that none stands on a number.
  const y = top + height + 9;
  return state === 'set' ? (
    <path
      class="tape-set"
      d={`M${x - 6} ${y - 6} L${x + 6} ${y + 6} M${x + 6} ${y - 6} L${x - 6} ${y + 6}`}
    />
  ) : (
    <circle class="tape-coming" cx={x} cy={y} r={5} />
  );
}

/** The whole tape as one thin line with all its marks, to see how far along the work is. */
function WholeTape({ span, marks }: { readonly span: Length; readonly marks: readonly TapeMark[] }) {
  const place = (at: Length): number => 8 + (span > 0 ? at / span : 0) * (width - 16);
  return (
    <g class="whole-tape">
      <line x1={8} x2={width - 8} y1={118} y2={118} />
      {marks.map((mark) => {
        const x = place(mark.at);
        if (mark.state === 'in-hand')
          return <path key={mark.item} class="now" d={`M${x - 7} 107 h14 l-7 11 Z`} />;
        return mark.state === 'set' ? (
          <rect key={mark.item} class="set" x={x - 3} y={113} width={6} height={10} />
        ) : (
          <circle key={mark.item} class="coming" cx={x} cy={118} r={4} />
        );
      })}
    </g>
  );
}

/**
 * A dressmaker's tape with its real divisions, the mark in hand pinned on it. Set marks are crossed, those to come
 * are rings, so that nothing hangs on colour.
 */
export function Tape(props: {
  readonly span: Length;
  readonly marks: readonly TapeMark[];
  readonly marking: Marking;
}) {
  const { span, marks, marking } = props;
  const inHand = marks.find((mark) => mark.state === 'in-hand') ?? marks[marks.length - 1];
  if (inHand === undefined) return null;
  const view = tapeWindow(inHand.at, span, marking, width);
  const left = Math.max(0, view.startX);
  const right = Math.min(width, view.endX);
  const seen = marks.filter((mark) => mark.at >= view.from && mark.at <= view.to);
  return (
    <svg
      class="tape"
      viewBox={`0 0 ${width} 128`}
      role="img"
      aria-label={`Tape, pinned at ${writeLength(inHand.at, marking).text}`}
    >
      <g class="tape-slide" key={inHand.item}>
        <rect class="tape-ground" x={left} y={top} width={Math.max(0, right - left)} height={height} />
        {view.divisions.map((d) => (
          <line
            key={d.x}
            class={`division rank-${d.rank}`}
            x1={d.x}
            x2={d.x}
            y1={top}
            y2={top + stroke[d.rank]}
          />
        ))}
        {view.divisions.map((d) =>
          d.label === '' || d.label === '0' ? null : (
            <text key={d.x} class="tape-number" x={d.x} y={top + height - 9} text-anchor="middle">
              {d.label}
            </text>
          ),
        )}
        <line class="tape-edge" x1={left} x2={right} y1={top} y2={top} />
        <line class="tape-edge" x1={left} x2={right} y1={top + height} y2={top + height} />
        {view.startX >= 0 && (
          <g class="tape-brass">
            <rect x={view.startX - 26} y={top - 3} width={26} height={height + 6} rx={3} />
            <circle cx={view.startX - 13} cy={top + height / 2} r={5} />
          </g>
        )}
        {view.endX <= width && (
          <rect class="tape-brass" x={view.endX} y={top - 3} width={14} height={height + 6} rx={3} />
        )}
        {seen.map((mark) => (
          <Pin key={mark.item} x={view.place(mark.at)} state={mark.state} />
        ))}
      </g>
      {marks.length > 1 && <WholeTape span={span} marks={marks} />}
    </svg>
  );
}
