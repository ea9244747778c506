import { lower } from '../../outfit/lower.ts';
import type { Step } from '../step.ts';
import type { Sub } from './prepared.ts';

/** Why a piece under a hand that slit or trimmed has to be cut anew. */
export function whyForced({ join, work }: Sub, final: Step): string {
  if (join)
    return join.seam === 'turned' && join.worked !== 'round'
      ? `The ${lower(join.name)} is graded and clipped, with its corners cut off, so nothing else can be sewn to what is left`
      : `The ${lower(join.name)} is graded and clipped, so there is no allowance left to move it in`;
  if (work?.kind === 'buttonholes')
    return `The holes of the ${lower(work.name)} are slit, and cannot be closed or moved`;
  return `“${final.say}” is done, and cannot be taken back`;
}
