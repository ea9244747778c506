import { memory, practice } from '../../cloth/source.ts';
import type { ReferenceCheck } from '../entry.ts';
import { fittingDresses, garmentFitting, watson } from './books.ts';
import { BODY, LEGS } from './wants.ts';

/** What a garment that hangs well shows, most basic first. */
export const CHECKS: readonly ReferenceCheck[] = [
  {
    id: 'as-worn',
    say: 'It is tried on over what will be worn under it, and you stand as you will stand in it',
    roles: [],
    source: fittingDresses('part 2'),
  },
  {
    id: 'grain-level',
    say: 'The crosswise grain lies level at the chest, across the back and at the hips',
    roles: [...BODY, 'skirt'],
    source: fittingDresses('part 1'),
  },
  {
    id: 'side-seams-plumb',
    say: 'The side seams fall straight to the floor',
    roles: [...BODY, 'skirt'],
    source: garmentFitting,
  },
  {
    id: 'shoulder-seam-on-top',
    say: 'The shoulder seam lies on top of the shoulder and ends at its joint',
    roles: BODY,
    source: fittingDresses('part 5, neck and shoulders'),
  },
  {
    id: 'neckline-close',
    say: 'The neckline lies close at the back and sides without pressing; a fine cord shows where it should run',
    roles: ['centre-front', 'centre-back'],
    source: fittingDresses('part 5, neck and shoulders'),
  },
  {
    id: 'collar-one-finger',
    say: 'One finger goes inside the fastened collar',
    roles: ['collar'],
    source: practice,
  },
  {
    id: 'armhole-smooth',
    say: 'The armhole runs smoothly over the shoulder bone, straight down, and close under the arm',
    roles: BODY,
    source: fittingDresses('part 10, armhole and sleeve'),
  },
  {
    id: 'arms-forward',
    say: 'With the arms forward no crease pulls across the upper back',
    roles: ['centre-back', 'side-back'],
    source: practice,
  },
  {
    id: 'sleeve-hangs-straight',
    say: 'The sleeve hangs straight from the top of the shoulder, its inner seam in line with the thumb',
    roles: ['sleeve'],
    source: fittingDresses('part 10, armhole and sleeve'),
  },
  {
    id: 'sleeve-bends',
    say: 'The arm bends until the fingers touch the ear, and nothing draws or pulls',
    roles: ['sleeve'],
    source: fittingDresses('part 10, armhole and sleeve'),
  },
  {
    id: 'sleeves-alike',
    say: 'Both sleeves look alike',
    roles: ['sleeve'],
    source: watson('placing of sleeve patterns'),
  },
  {
    id: 'band-stays',
    say: 'With the arms raised, shaken and lowered, the top band is where it was and leaves no mark',
    roles: ['arm-band'],
    source: memory,
  },
  {
    id: 'waist-stays',
    say: 'After sitting and bending the waist lies level and where it was',
    roles: ['leg', 'waistband'],
    source: memory,
  },
  {
    id: 'tension-even',
    say: 'Stretch cloth is drawn evenly: no ripples, and nothing travels when you walk',
    roles: LEGS,
    source: practice,
  },
  {
    id: 'leg-seams-straight',
    say: 'The seams of the legs run straight down, and the knee is where the knee is',
    roles: LEGS,
    source: memory,
  },
];
