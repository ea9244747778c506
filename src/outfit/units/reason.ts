import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, type Length, longer, mm } from '../../length/length.ts';

/** Nothing that is sewn to a garment by a unit is longer or deeper than this: more is a slip of the finger. */
const MOST = mm(10_000);
/** A seam allowance is no wider than this. */
const WIDEST = inches(4);

/** What stands against sizes that nobody sews, at the first field that has one; none where all are within reason. */
export function beyondReason(
  sizes: Readonly<Record<string, Length | undefined>>,
  allowance?: Length,
): Refusal | undefined {
  for (const [field, size] of Object.entries(sizes)) {
    if (size !== undefined && longer(size, MOST))
      return refusal(field, `This is longer than ${inBothRules(MOST)}.`, 'Give a shorter measure.');
  }
  if (allowance !== undefined && (allowance <= 0 || longer(allowance, WIDEST))) {
    const cure = `Give an allowance above zero and up to ${inBothRules(WIDEST)}.`;
    return refusal('allowance', 'No seam can be sewn with this allowance.', cure);
  }
  return undefined;
}
