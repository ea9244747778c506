import { type ReadingUnit, readLength } from '../../length/reading.ts';

/** Does what is written name no unit, so that it means what the rule says? */
function leavesUnitOut(text: string): boolean {
  const [inches, millimetres] = [readLength(text, 'in'), readLength(text, 'mm')];
  if (inches.ok && millimetres.ok) return inches.value !== millimetres.value;
  // Half written: digits and no word yet.
  return !inches.ok && !millimetres.ok && /\d/.test(text) && !/[a-z"'′″’”“]/i.test(text);
}

/** A length with the unit it was meant in: `6` written under millimetres is `6 mm`. */
export const withUnit = (text: string, unit: ReadingUnit): string =>
  leavesUnitOut(text) ? `${text.trim()} ${unit}` : text;

/** A length as it must stand under another rule to mean the same: `6` becomes `6 mm`, and `6` again on the way back. */
export function turnLength(text: string, from: ReadingUnit, to: ReadingUnit): string {
  const meant = withUnit(text, from);
  // Back under its own rule the unit says nothing new.
  const bare = meant.endsWith(` ${to}`) ? meant.slice(0, -to.length - 1) : meant;
  return leavesUnitOut(bare) ? bare : meant;
}
