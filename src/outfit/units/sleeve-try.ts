import { crossings, lookUp } from '../chains.ts';
import type { Gate } from '../outfit.ts';
import { gateOf } from './parts.ts';
import type { SleeveMade } from './sleeve-made.ts';
import type { EdgesPlaced } from './unit.ts';

/** Tried on while its seam is only basted: the armhole in the round, the long seam where the armhole was sewn flat. */
export function setInTry({ id, name, garment, setting, gathered }: SleeveMade, armhole: EdgesPlaced): Gate {
  const body = crossings(lookUp(garment), armhole.chain, true).flatMap(({ over }) =>
    over.map((join) => join.id),
  );
  return gateOf({
    id: id('try'),
    name: `${name}, basted`,
    after: setting === 'flat' ? [...new Set(body), id('seam')] : [id('armhole')],
    checks: [
      'The top of the cap meets the end of the shoulder seam',
      'The upper arm has room, also with the arm bent',
      'The cloth hangs straight from the cap, without slanting folds',
      gathered ? 'The fullness stands evenly over the shoulder' : 'The cap lies smooth, without puckers',
      'The arm reaches forward and up',
      'The sleeve ends where it should with the arm bent',
    ],
  });
}

/** A detached sleeve is tacked up for its try-on and taken apart again. */
export const detachedTry = ({ id, name, ends, between = [] }: SleeveMade): Gate =>
  gateOf({
    id: id('try'),
    name: `${name}, tacked`,
    // Gathers and band are in by then; without a band the pieces alone are tacked, before anything is done to them.
    ...(ends === 'band' ? { after: [id('seam')] } : { after: [], tack: [...between, id('seam')] }),
    checks: [
      'The top edge goes round the arm where it will be worn, with its fullness',
      'The sleeve is long enough with the arm bent',
      'The lower edge passes the hand',
      'The seam lies under the arm',
    ],
  });
