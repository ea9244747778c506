import { practice } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { baldt, fittingDresses, garmentFitting, watson } from './books.ts';
import { ALL_ROUND, BACK, FRONT, length, shoulderPads, width } from './wants.ts';

/** What is seen at the shoulders. */
export const SHOULDER: readonly Entry[] = [
  {
    id: 'shoulder-tip-wrinkles',
    place: 'shoulder',
    views: ['front', 'back'],
    seen: 'Wrinkles run from the shoulder tip to the centre',
    roles: ['centre-front', 'centre-back'],
    often: 'now and then',
    source: garmentFitting,
    causes: [
      {
        id: 'square-shoulders',
        is: 'the shoulders are squarer than the pattern',
        test: 'Open the shoulder seam and let it find its place: it gapes at the armhole end.',
        change:
          'Let the shoulder seam out at the armhole end, or lift it at the neck end; the sleeve head may need a little more.',
        measured: 'What gapes at the armhole, running out to nothing at the neck.',
        limits: 'The seam allowance.',
        wants: [],
        source: garmentFitting,
      },
    ],
  },
  {
    id: 'neck-to-armhole-wrinkles',
    place: 'shoulder',
    views: ['front', 'back'],
    seen: 'Wrinkles run from the neck into the armhole',
    roles: ['centre-front', 'centre-back'],
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'padding',
        is: 'the shoulders slope and are not filled',
        test: 'Slip a pad under the shoulder, or a thicker one: the wrinkles are gone.',
        change: 'Sew in shoulder pads.',
        measured: 'The pad that clears them.',
        wants: [shoulderPads],
        source: fittingDresses('part 9, bust and back'),
      },
      {
        id: 'sloping-shoulders',
        is: 'the shoulders slope more than the pattern',
        test: 'Pin the surplus out along the shoulder seam: the wrinkles are gone.',
        change: 'Take the shoulder seam up at the armhole end and lower the armhole by as much.',
        measured: 'What is pinned at the armhole end.',
        wants: [],
        source: practice,
      },
    ],
  },
  {
    id: 'shoulder-seam-on-arm',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'The armhole seam falls on the arm',
    roles: ['centre-front', 'centre-back'],
    asks: 'From the shoulder joint to the end of the seam: how much?',
    often: 'often',
    source: fittingDresses('part 5, neck and shoulders'),
    causes: [
      {
        id: 'long-shoulder',
        is: 'the shoulder line is too long',
        test: 'Mark the shoulder joint: the seam ends beyond it, and the neck is pulled away at the side.',
        change: 'Cut the armhole anew, front and back, from the mark.',
        measured: 'From the mark to the end of the seam, on one shoulder.',
        wants: [width(FRONT, 'shoulder', -1), width(BACK, 'shoulder', -1)],
        source: fittingDresses('part 5, neck and shoulders'),
      },
    ],
  },
  {
    id: 'shoulder-seam-short',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'The shoulder seam ends before the joint',
    roles: ['centre-front', 'centre-back'],
    asks: 'From the end of the seam to the shoulder joint: how much?',
    often: 'now and then',
    source: garmentFitting,
    causes: [
      {
        id: 'short-shoulder',
        is: 'the shoulder line is too short',
        test: 'Mark the shoulder joint: the seam ends before it.',
        change:
          'In firm cloth take a smaller armhole seam at the shoulder; else cut front and back longer at the shoulder.',
        measured: 'From the end of the seam to the mark, on one shoulder.',
        limits: 'Letting out: the allowance of the armhole.',
        wants: [width(FRONT, 'shoulder', 1), width(BACK, 'shoulder', 1)],
        source: garmentFitting,
      },
    ],
  },
  {
    id: 'pulls-across-shoulders',
    place: 'shoulder',
    views: ['front', 'back'],
    seen: 'The cloth pulls across between the shoulders',
    roles: ['centre-front', 'centre-back'],
    asks: 'Release the armhole at the shoulder: how far does it open on one side?',
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'broad-shoulders',
        is: 'the shoulders are broader than the pattern',
        test: 'Release the armhole seam at the shoulder: the pull is gone.',
        change: 'Cut the fronts and the back wider at the shoulder.',
        measured: 'What opens on one side; common practice gives 1/2 in (13 mm) at least.',
        wants: [width(FRONT, 'shoulder', 1, 'at least'), width(BACK, 'shoulder', 1, 'at least')],
        source: practice,
      },
    ],
  },
  {
    id: 'shoulder-seam-behind',
    place: 'shoulder',
    views: ['side'],
    seen: 'The shoulder seam lies behind the shoulder',
    roles: ['centre-front', 'centre-back'],
    asks: 'From the seam to the top of the shoulder: how much?',
    often: 'now and then',
    source: fittingDresses('part 5, neck and shoulders'),
    causes: [
      {
        id: 'deep-back-seam',
        is: 'the back is too short or the front too long above the chest',
        test: 'Lay a tape along the top of the shoulder: the seam lies behind it all along.',
        change:
          'Take the front up and let the back out by as much; for round shoulders it may lie a little behind.',
        measured: 'From the seam to the tape.',
        limits: 'At most 15 mm (5/8 in).',
        // The seam moves forward by what the back gains and the front gives.
        wants: [
          length(['centre-front'], 'shoulder', 'chest', -1),
          length(['centre-back'], 'shoulder', 'chest', 1),
        ],
        source: fittingDresses('part 5, neck and shoulders'),
      },
    ],
  },
  {
    id: 'shoulder-seam-before',
    place: 'shoulder',
    views: ['side'],
    seen: 'The shoulder seam lies before the shoulder',
    roles: ['centre-front', 'centre-back'],
    asks: 'From the seam to the top of the shoulder: how much?',
    often: 'now and then',
    source: fittingDresses('part 5, neck and shoulders'),
    causes: [
      {
        id: 'deep-front-seam',
        is: 'the front is too short or the back too long above the chest',
        test: 'Lay a tape along the top of the shoulder: the seam lies before it all along.',
        change: 'Let the front out and take the back up by as much.',
        measured: 'From the seam to the tape.',
        limits: 'At most 15 mm (5/8 in).',
        wants: [
          length(['centre-front'], 'shoulder', 'chest', 1),
          length(['centre-back'], 'shoulder', 'chest', -1),
        ],
        source: fittingDresses('part 5, neck and shoulders'),
      },
    ],
  },
  {
    id: 'shoulder-seam-bridges',
    place: 'shoulder',
    views: ['side'],
    seen: 'The shoulder seam bridges the hollow',
    roles: ['centre-front', 'centre-back'],
    often: 'seldom',
    source: watson('shoulder seams'),
    causes: [
      {
        id: 'no-ease',
        is: 'the front shoulder is as long as the back one',
        test: 'Press a finger into the hollow: the seam resists.',
        change:
          'Make the front shoulder 1/4 in (6 mm) shorter than the back one; ease the back and stretch the front to it.',
        measured: '1/4 in (6 mm).',
        wants: [],
        source: baldt('construction of the tailored waist, part 2'),
      },
    ],
  },
];
