import { inches, type Length, mm } from '../length/length.ts';

/** A shop's yard is marked in eighths. */
const EIGHTH = inches(36, 8);
const CENTIMETRE = mm(10);

/** A length of cloth as it is asked for by the yard: up to the next eighth, `2 3/8 yd`. Below zero counts as none. */
export function inYards(length: Length): string {
  const eighths = Math.max(0, Math.ceil(length / EIGHTH));
  const whole = Math.floor(eighths / 8);
  let [top, bottom] = [eighths % 8, 8];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  if (top === 0) return `${whole} yd`;
  return whole === 0 ? `${top}/${bottom} yd` : `${whole} ${top}/${bottom} yd`;
}

/** A length of cloth as it is asked for by the metre: up to the next centimetre, `2.15 m`. Below zero counts as none. */
export const inMetres = (length: Length): string =>
  `${(Math.max(0, Math.ceil(length / CENTIMETRE)) / 100).toFixed(2)} m`;
