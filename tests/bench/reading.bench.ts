import { readLength } from '../../src/length/index.ts';
import { ratio } from './ratio.ts';

// The reference only turns a plain decimal into a number, which is the least that reading a length could cost.
const decimals = Array.from({ length: 200 }, (_, index) => `${index}.${(index * 7) % 10}`);
const millimetres = decimals.map((text) => `${text} mm`);
const inches = decimals.map((_, index) => `${index} ${1 + 2 * (index % 8)}/16 in`);

const reference = () => decimals.map(Number);

ratio(
  'reading 200 lengths in millimetres, against Number()',
  () => millimetres.map((text) => readLength(text, 'mm')),
  reference,
);
ratio(
  'reading 200 lengths in inches and sixteenths, against Number()',
  () => inches.map((text) => readLength(text, 'in')),
  reference,
);
