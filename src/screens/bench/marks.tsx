import { type Length, toMm } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import type { Readout } from '../../order/card-types.ts';
import { LengthFigure } from '../../ui/figure.tsx';
import { Tape } from '../../ui/tape.tsx';
import { markInHand } from './pad-act.ts';

const step = (marking: Marking): number => (marking.unit === 'in' ? 25.4 / marking.per : marking.step);

/**
 * How far the true place lies from the mark that is read, where it matters: more than a fifth of a division and more
 * than 0.1 mm, which no hand can set. Undefined where it does not.
 */
export function hairOff(off: Length, marking: Marking): string | undefined {
  const mm = toMm(off);
  if (Math.abs(mm) < 0.1 || Math.abs(mm) < step(marking) / 5) return undefined;
  return `a hair ${mm > 0 ? 'less' : 'more'}: ${Math.abs(mm).toFixed(1)} mm`;
}

/** One mark at a time, as one large figure, on the tape it is measured along. */
export function Marks(props: {
  readonly readout: Extract<Readout, { kind: 'marks' }>;
  readonly items: ReadonlySet<string>;
  readonly marking: Marking;
}) {
  const { readout, items, marking } = props;
  const found = markInHand(readout, items);
  const all = readout.sets.reduce((sum, set) => sum + set.marks.length, 0);
  if (!found) {
    const set = readout.sets[readout.sets.length - 1];
    return (
      <div class="readout">
        <p class="readout-line">All {all} marks are set</p>
        {set && (
          <Tape
            span={set.span}
            marks={set.marks.map((m) => ({ ...m, state: 'set' as const }))}
            marking={marking}
          />
        )}
      </div>
    );
  }
  const { set, mark, k } = found;
  const written = writeLength(mark.at, marking);
  const hair = hairOff(written.off, marking);
  const marks = set.marks.map(({ item, at }) => ({
    item,
    at,
    state:
      item === mark.item ? ('in-hand' as const) : items.has(item) ? ('set' as const) : ('to-come' as const),
  }));
  return (
    <div class="readout">
      <div class="mark-now">
        <LengthFigure written={written} />
        <p class="mark-words">
          <b>{mark.name}</b>
          <span>
            {k} of {set.marks.length}
          </span>
        </p>
      </div>
      <p class="readout-line">
        from {set.from}
        {hair !== undefined && <span class="hair">, {hair}</span>}
      </p>
      <Tape span={set.span} marks={marks} marking={marking} />
      <p class="quiet">
        {set.name}
        {readout.sets.length > 1 && ` \u00b7 tape ${readout.sets.indexOf(set) + 1} of ${readout.sets.length}`}
      </p>
    </div>
  );
}
