import { makeAnew } from '../../src/outfit/changing/units.ts';
import { writeOutfit } from '../../src/outfit/writing.ts';
import { changesBetween } from '../../src/store/changes-between.ts';
import { garmentOf, put } from '../outfit/changing/shirt.ts';
import { ratio } from './ratio.ts';

// The reference writes the description as JSON and reads it again, the least that changing one could cost.
let outfit = garmentOf('plain-front', 'plain-back', 'stand-and-collar', 'plain-sleeve', 'button-band', 'hem');
for (const unit of [
  'gathered-skirt',
  'waistband',
  'puffed-sleeve',
  'lantern-sleeve',
  'neckcloth-bow',
  'loop-bow',
])
  outfit = put(outfit, unit);
for (const _ of [1, 2, 3]) outfit = put(outfit, 'gathered-skirt', { at: {} });
const written = writeOutfit(outfit);
const renamed = writeOutfit({ ...outfit, name: 'Another' });
const reference = () => JSON.parse(JSON.stringify(outfit));

ratio(
  'making a garment of 15 units anew, against JSON there and back',
  () => makeAnew(outfit, 'shirt'),
  reference,
);
ratio('writing its description, against the same', () => writeOutfit(outfit), reference);
ratio('finding what changed in it, against the same', () => changesBetween(written, renamed), reference);
