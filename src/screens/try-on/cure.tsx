import { cure } from '../../fitting/cure.ts';
import { entryCalled } from '../../fitting/entries/all.ts';
import { levelsOf } from '../../fitting/levels.ts';
import { rolesOf } from '../../fitting/roles.ts';
import { suppliesAgain } from '../../order/undoing/supplies.ts';
import { ownMinutes } from '../../store/own-times.ts';
import type { Session } from '../session.ts';
import type { Means } from './cure-means.ts';
import { CureBody } from './cure-page.tsx';

const means: Means = {
  cure,
  supplies: suppliesAgain,
  levels: (garment) => levelsOf(garment, rolesOf(garment)),
  entry: entryCalled,
  own: ownMinutes,
};

/** What to change so that a garment fits, reckoned from what was seen in it. */
export const CurePage = (props: { readonly session: Session; readonly garment: string }) => (
  <CureBody {...props} means={means} />
);
