import { inches, type Length, mm, nm, zero } from '../../length/length.ts';
import { box, line, middleWords, place } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';

/** The longest rule that is drawn from its beginning; of a longer length only the end is drawn. */
export const WHOLE_RULE: Length = inches(8);
const [AROUND, WIDE] = [inches(2), mm(30)] as const;

/** How deep a mark of the inch scale goes: whole, half, quarter, eighth, sixteenth, thirty-second. */
function deep(n: number, per: number): Length {
  for (const [parts, depth] of [
    [1, 9],
    [2, 7],
    [4, 5.5],
    [8, 4],
    [16, 2.8],
  ] as const) {
    if (n % (per / parts) === 0) return mm(depth);
  }
  return mm(1.8);
}

/**
 * A rule with inches above and millimetres below, and a line at a length. Of a length over {@link WHOLE_RULE} the last
 * two inches and two more are drawn, with the numbers that stand there.
 * @param per parts of an inch that are marked
 */
export function ruleDrawn(length: Length, per: 16 | 32): Drawn[] {
  const inch = inches(1);
  const first = length > WHOLE_RULE ? Math.floor((length - AROUND) / inch) : 0;
  const last = Math.ceil(length / inch) + (length > WHOLE_RULE ? 2 : 0);
  const [left, right] = [inches(first), inches(Math.max(last, first + 1))];
  const at = (x: number): Length => nm(x - left);
  const drawn: Drawn[] = [box('body', zero, zero, at(right), WIDE)];
  const size = mm(3.5);
  for (let n = first * per; n <= Math.max(last, first + 1) * per; n++) {
    const x = at(inches(n, per));
    drawn.push(line('thin', place(x, zero), place(x, deep(n, per))));
    if (n % per === 0 && x > 0 && x < at(right))
      drawn.push(middleWords(String(n / per), place(x, mm(13)), size));
  }
  for (let n = Math.ceil(left / mm(1)); n <= Math.floor(right / mm(1)); n++) {
    const x = at(mm(n));
    const depth = n % 10 === 0 ? 7 : n % 5 === 0 ? 5 : 3;
    drawn.push(line('thin', place(x, WIDE), place(x, nm(WIDE - mm(depth)))));
    if (n % 10 === 0 && x > mm(4) && x < at(right) - mm(4))
      drawn.push(middleWords(String(n), place(x, mm(21.5)), size));
  }
  drawn.push(line('mark', place(at(length), mm(-6)), place(at(length), nm(WIDE + mm(6)))));
  return drawn;
}
