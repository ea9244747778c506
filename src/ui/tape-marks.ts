import { type Length, NM_PER_INCH, NM_PER_MM, nm } from '../length/length.ts';
import type { Marking } from '../length/writing.ts';

/** One division on the tape: how far along the drawing, how long its stroke (0 finest … 4 longest), its number if any. */
export interface Division {
  readonly x: number;
  readonly rank: 0 | 1 | 2 | 3 | 4;
  readonly label: string;
}

/** The part of a tape that is drawn. `x` places are in drawing units from the left. */
export interface TapeWindow {
  readonly from: Length;
  readonly to: Length;
  readonly divisions: readonly Division[];
  /** Where the tape begins and ends on the drawing; past its edges where the end is not in sight. */
  readonly startX: number;
  readonly endX: number;
  readonly place: (at: Length) => number;
}

/** How much tape is in sight at once: enough that a sixteenth, or a millimetre, can be told from its neighbour. */
const inSight = (marking: Marking): number => (marking.unit === 'in' ? 2.75 * NM_PER_INCH : 64 * NM_PER_MM);
/** Room before the datum, for the brass end. */
const lead = (marking: Marking): number => (marking.unit === 'in' ? 0.3 * NM_PER_INCH : 7 * NM_PER_MM);

function rankOf(k: number, marking: Marking): Division['rank'] {
  if (marking.unit === 'mm') {
    const perMm = 1 / marking.step;
    if (k % (10 * perMm) === 0) return 4;
    if (k % (5 * perMm) === 0) return 3;
    return k % perMm === 0 ? 1 : 0;
  }
  if (k % marking.per === 0) return 4;
  if (k % (marking.per / 2) === 0) return 3;
  if (k % (marking.per / 4) === 0) return 2;
  if (k % (marking.per / 8) === 0) return 1;
  return 0;
}

/**
 * The stretch of tape round `at`, `width` drawing units wide, with every division of `marking` in it. It stays on
 * the tape: near the datum it begins a little before it, near the end it stops a little past `span`.
 */
export function tapeWindow(at: Length, span: Length, marking: Marking, width: number): TapeWindow {
  const sight = inSight(marking);
  const before = lead(marking);
  const latest = Math.max(-before, span + before - sight);
  // While the mark can be seen with the datum, the tape lies still with its brass end in sight.
  const from = at <= sight - 2.5 * before ? -before : Math.min(at - sight / 2, latest);
  const scale = width / sight;
  const place = (where: Length): number => (where - from) * scale;
  const step = marking.unit === 'in' ? NM_PER_INCH / marking.per : NM_PER_MM * marking.step;
  const first = Math.max(0, Math.ceil(from / step));
  const last = Math.floor(Math.min(from + sight, span) / step);
  const divisions: Division[] = [];
  for (let k = first; k <= last; k++) {
    const rank = rankOf(k, marking);
    const label = rank === 4 ? String(marking.unit === 'in' ? k / marking.per : k * marking.step) : '';
    divisions.push({ x: place(nm(k * step)), rank, label });
  }
  return {
    from: nm(from),
    to: nm(from + sight),
    divisions,
    startX: place(nm(0)),
    endX: place(span),
    place,
  };
}
