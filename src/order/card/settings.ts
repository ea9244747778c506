import type { Sourced } from '../../cloth/advice.ts';
import { buttonholeLength } from '../../cloth/buttonhole.ts';
import { ROW_FROM_SEAM, ROWS_APART } from '../../cloth/gathers.ts';
import { practice } from '../../cloth/source.ts';
import { add, type Length } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import type { Cloth } from '../../outfit/outfit.ts';
import type { Setting } from '../card-types.ts';
import { stretches } from '../expand/stations.ts';
import { isUndo } from '../rules/reworked.ts';
import type { CardSubject } from './subject.ts';

/**
 * Stitch lengths that the cards give for a medium cloth; of a zigzag the length and the width.
 * @each {}
 */
export const STITCH: Sourced<Readonly<Record<'plain' | 'tuck' | 'gather' | 'zigzag', string>>> = {
  value: { plain: '2.5 mm', tuck: '2 mm', gather: '4 to 5 mm', zigzag: '2.5 × 0.5 mm' },
  source: practice,
};

/** How lengths are marked in the maker's units, as fine as a tape shows. */
export const markingFor = (units: 'in' | 'mm'): Marking =>
  units === 'in' ? { unit: 'in', per: 16 } : { unit: 'mm', step: 1 };

/** The figures to set for a step, largest need first; at most four, so that they can be read from the chair. */
export function settingsOf(on: CardSubject): readonly Setting[] {
  const { step, work, join, cloth } = on;
  const write = (length: Length): string => writeLength(length, markingFor(on.outfit.units)).text;
  const found: Setting[] = [];
  const set = (name: string, figure: string) => found.push({ name, figure });

  if (join) {
    const sews = ['pin', 'baste', 'stitch', 'bind'].includes(step.action);
    const caught =
      join.catches[step.action === 'baste-trim' ? 0 : Number(step.action.replace('baste-trim-', '')) - 1];
    if (step.action.startsWith('baste-trim') && caught) set('basting, from the edge', write(caught.depth));
    else if (sews) set('seam, from the edge', write(join.depth));
  }
  if (step.action.startsWith('cut-anew-')) {
    const allowances = step.pieces.flatMap((id) => on.looked.pieces.get(id)?.allowance ?? []);
    set('seam allowance', [...new Set(allowances.map(write))].join(', '));
  }
  if (work && !isUndo(step)) workSettings(on, write, set);
  if (step.setUp.station === 'machine' && cloth) machineSettings(on, cloth, set);
  if (step.setUp.station === 'iron' && cloth && !found.some((s) => s.name === 'heat'))
    set('heat, at most', heat(cloth));
  return found.slice(0, 4);
}

function workSettings(
  on: CardSubject,
  write: (l: Length) => string,
  set: (name: string, figure: string) => void,
): void {
  const { step, work, cloth } = on;
  switch (work?.kind) {
    case 'tucks':
    case 'crossed-tucks': {
      const families = work.kind === 'tucks' ? [work.family] : work.families;
      const family = families[step.action.endsWith('-2') ? 1 : 0] ?? families[0];
      if (family && (step.action.startsWith('stitch') || step.action.startsWith('pin'))) {
        set('from the fold', [...new Set(family.depths.map(write))].join(', '));
      }
      break;
    }
    case 'folded-band':
      if (step.action === 'turn-1') set('turn', write(work.firstTurn));
      if (step.action === 'turn-2') set('turn', write(work.secondTurn));
      break;
    case 'interfacing':
      if (work.fuse) {
        set('heat', `${work.fuse.degrees} °C`);
        set('press', `${work.fuse.seconds} s`);
        if (cloth && cloth.iron > 0) set('cloth bears', `${cloth.iron} °C`);
      }
      break;
    case 'applied-tape':
      if (step.action === 'mark') set('from the edge', write(work.inset));
      break;
    case 'gather':
      if (step.action === 'rows') {
        set(
          'rows, outside the seam line',
          `${write(ROW_FROM_SEAM.value)} and ${write(add(ROW_FROM_SEAM.value, ROWS_APART.value))}`,
        );
      }
      break;
    case 'bind-edge':
      set('strip', write(work.strip));
      break;
    case 'press-edge':
      set('turn in', write(work.turn));
      break;
    case 'hem':
      set('turn up', write(work.turn));
      break;
    case 'casing':
      if (step.action === 'elastic') {
        if (work.cut !== undefined) set('elastic, cut', write(work.cut));
        set('elastic, width', write(work.elastic));
      } else set('turn', write(work.turn));
      break;
    case 'ribbon':
      set('ribbon', write(work.ribbon));
      break;
    case 'buttonholes': {
      const hole = buttonholeLength({ rule: 'flat', ...work.button });
      if (hole.ok && ['sample', 'mark', 'stitch'].includes(step.action))
        set('hole', write(hole.value.length));
      break;
    }
    default:
      break;
  }
}

function machineSettings(on: CardSubject, cloth: Cloth, set: (name: string, figure: string) => void): void {
  const { work, step } = on;
  if (step.setUp.tool.includes('buttonhole')) {
    set('needle', cloth.needle);
    return;
  }
  const zigzag = stretches(cloth) || step.setUp.tool.includes('zigzag');
  if (zigzag) set('zigzag, length × width', STITCH.value.zigzag);
  else if (work?.kind === 'gather') set('stitch', STITCH.value.gather);
  else
    set(
      'stitch',
      work?.kind === 'tucks' || work?.kind === 'crossed-tucks' ? STITCH.value.tuck : STITCH.value.plain,
    );
  set('needle', zigzag ? `${cloth.needle}, ball point` : cloth.needle);
}

const DOTS = {
  0: 'no iron',
  110: '110 °C, one dot',
  150: '150 °C, two dots',
  200: '200 °C, three dots',
} as const;

/** The iron setting that the care label allows. */
export const heat = (cloth: Cloth): string => DOTS[cloth.iron];
