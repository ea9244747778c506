import type { Sourced } from '../../cloth/advice.ts';
import { geometry, practice, published, type Source } from '../../cloth/source.ts';
import { add, inches, type Length, longest, nm, subtract, times, zero } from '../../length/length.ts';
import type { Wearer } from '../outfit.ts';
import type { Proposal } from './unit.ts';

const costumeText = published(
  'Costume text, Central Washington University (S. Robinson)',
  'undated',
  'chapter 16, Ease in clothing',
);

/** Room round the chest in a plain shirt or tunic. */
export const SHIRT_EASE: Sourced<Length> = { value: inches(3), source: costumeText };
/** Room round the chest in a bodice that follows the body. */
export const BODICE_EASE: Sourced<Length> = { value: inches(2), source: costumeText };
/** Room round the waist of a bodice or a dress. */
export const WAIST_EASE: Sourced<Length> = { value: inches(1), source: costumeText };
/** Room round the waist of a skirt. */
export const SKIRT_WAIST_EASE: Sourced<Length> = { value: inches(1, 2), source: costumeText };
/** Room round the hips. */
export const HIP_EASE: Sourced<Length> = { value: inches(2), source: costumeText };
/**
 * Half the width of a neck, and the depth of a front neck, as a share of the girth of the neck.
 * @unit times
 */
export const NECK_SHARE: Sourced<number> = { value: 1 / 5, source: practice };
/**
 * Depth of a back neck as a share of the girth of the neck.
 * @unit times
 */
export const BACK_NECK_SHARE: Sourced<number> = { value: 1 / 20, source: practice };
/** Depth of an armhole beyond half of the measure round the arm. */
export const ARMHOLE_MORE: Sourced<Length> = { value: inches(5, 4), source: practice };
/** Depth of an armhole beyond an eighth of the chest, where the arm was not measured. */
export const ARMHOLE_BY_CHEST: Sourced<Length> = { value: inches(19, 4), source: practice };
/** Room across the back from the middle to an armhole, beyond half of the measure. */
export const ACROSS_EASE: Sourced<Length> = { value: inches(1, 4), source: practice };

/**
 * Distance of a panel seam from the centre, as a share of the half width at the chest.
 * @unit times
 */
export const PANEL_SHARE: Sourced<number> = { value: 0.42, source: practice };

/** Where a garment for the upper body ends, and how much room it has. */
export interface BodyKind {
  readonly ease: Sourced<Length>;
  /** How far below the waist it goes. */
  readonly below: Length;
  /** True where the waist is taken in. */
  readonly fitted: boolean;
}

/** A bodice that follows the body down to the waist. */
export const FITTED_BODY: BodyKind = { ease: BODICE_EASE, below: zero, fitted: true };
/** A shirt, blouse or tunic: room all round, to some way below the waist. */
export const PLAIN_BODY: BodyKind = { ease: SHIRT_EASE, below: inches(7), fitted: false };

type Figures = Readonly<Record<string, Proposal>>;
type Measures = Wearer['measures'];

const said = (value: Length, because: string, source: Source): Proposal => ({ value, because, source });

/** A quarter of a measure round the body and its ease. */
const quarter = (round: Length, ease: Sourced<Length>): Length => times(add(round, ease.value), 1 / 4);

/** Depth of the armhole from the neck end of the shoulder, from what was measured. */
function armholeDeep({ armhole, chest }: Measures): Proposal | undefined {
  if (armhole !== undefined)
    return said(
      add(times(armhole, 1 / 2), ARMHOLE_MORE.value),
      'Half of the measure round the arm, and 1 1/4 in (32 mm) more.',
      ARMHOLE_MORE.source,
    );
  if (chest !== undefined)
    return said(
      add(times(chest, 1 / 8), ARMHOLE_BY_CHEST.value),
      'An eighth of the chest, and 4 3/4 in (121 mm) more.',
      ARMHOLE_BY_CHEST.source,
    );
  return undefined;
}

/** The figures of half a front or back, from the wearer's measures; only those that can be said. */
export function bodyFigures(measures: Measures, neck: 'front' | 'back', kind: BodyKind): Figures {
  const { chest, waist, hip, shoulder, neck: collar } = measures;
  const figures: Record<string, Proposal> = {};
  if (chest !== undefined)
    figures.chest = said(
      quarter(chest, kind.ease),
      `A quarter of the chest, with ${kind.ease === BODICE_EASE ? '2 in (51 mm)' : '3 in (76 mm)'} of ease all round.`,
      kind.ease.source,
    );
  if (kind.fitted && chest !== undefined)
    figures.panel = said(
      times(quarter(chest, kind.ease), PANEL_SHARE.value),
      'A little less than half way from the centre to the side.',
      PANEL_SHARE.source,
    );
  if (kind.fitted && waist !== undefined)
    figures.waist = said(
      quarter(waist, WAIST_EASE),
      'A quarter of the waist, with 1 in (25 mm) of ease all round.',
      WAIST_EASE.source,
    );
  if (kind.below > 0 && hip !== undefined)
    figures.hem = said(
      longest(quarter(hip, HIP_EASE), chest === undefined ? nm(0) : quarter(chest, kind.ease)),
      'A quarter of the hip, with 2 in (51 mm) of ease all round, and no less than at the chest.',
      HIP_EASE.source,
    );
  if (collar !== undefined) {
    const share = times(collar, NECK_SHARE.value);
    figures.neckWide = said(share, 'A fifth of the neck.', NECK_SHARE.source);
    figures.neckDeep =
      neck === 'front'
        ? said(share, 'A fifth of the neck.', NECK_SHARE.source)
        : said(times(collar, BACK_NECK_SHARE.value), 'A twentieth of the neck.', BACK_NECK_SHARE.source);
  }
  if (shoulder !== undefined) figures.shoulder = said(shoulder, 'The shoulder, as measured.', geometry);
  const armhole = armholeDeep(measures);
  if (armhole) figures.armhole = armhole;
  const across = measures['across-back'];
  if (across !== undefined)
    figures.across = said(
      add(times(across, 1 / 2), neck === 'back' ? ACROSS_EASE.value : nm(0)),
      neck === 'back'
        ? 'Half of the measure across the back, and 1/4 in (6 mm) of ease.'
        : 'Half of the measure across the back.',
      ACROSS_EASE.source,
    );
  const long = measures['back-waist'];
  if (long !== undefined && armhole !== undefined && typeof armhole.value === 'number') {
    const rise = collar === undefined ? inches(3, 4) : times(collar, BACK_NECK_SHARE.value);
    figures.side = said(
      add(subtract(add(long, rise), nm(armhole.value)), kind.below),
      kind.below > 0
        ? 'From the armhole down to the waist by the back length, and 7 in (178 mm) below it.'
        : 'From the armhole down to the waist, by the back length.',
      practice,
    );
  }
  return figures;
}
