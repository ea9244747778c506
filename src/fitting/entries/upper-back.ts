import { memory } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { fittingDresses, newDressmaker, patternManual } from './books.ts';
import { BACK, width } from './wants.ts';

/** What is seen on the upper back. */
export const UPPER_BACK: readonly Entry[] = [
  {
    id: 'back-pulls-across',
    place: 'upper back',
    views: ['back'],
    seen: 'The back pulls across with the arms forward',
    roles: ['centre-back', 'side-back'],
    asks: 'Open one side of the back: how wide does it gape?',
    often: 'often',
    source: newDressmaker('chapter 4, ill. 40'),
    causes: [
      {
        id: 'narrow-back',
        is: 'the back is too narrow',
        test: 'Open the armhole or the side of the back with the arms forward: it gapes.',
        change: 'Slash the back pattern from shoulder to hem beside the centre and spread it.',
        measured: 'What gapes on one side.',
        wants: [width(BACK, 'chest', 1, 'at least')],
        source: newDressmaker('chapter 4, ill. 40'),
      },
      {
        id: 'low-armhole',
        is: 'the armhole is too low and lifts the garment with the arm',
        test: 'Raise the arms: the whole garment rises with them.',
        change: 'Raise the armhole, and the sleeve under the arm by as much.',
        measured: 'From the armhole to where it should run under the arm.',
        wants: [],
        source: memory,
      },
    ],
  },
  {
    id: 'back-sags',
    place: 'upper back',
    views: ['back'],
    seen: 'The back sags below the shoulder blades',
    roles: ['centre-back'],
    asks: 'Lift the back until the grain lies level: how much?',
    often: 'now and then',
    source: fittingDresses('part 9, bust and back'),
    causes: [
      {
        id: 'long-back',
        is: 'the back is too long for an upright back',
        test: 'Lift the back at the shoulder until the crosswise grain is level: the sag is gone.',
        change:
          'Take the back up at the neck end of the shoulder, to nothing at the armhole, and mark the back armhole anew.',
        measured: 'The lift that levels the grain.',
        limits: 'Do not fit the lower back too close.',
        wants: [],
        source: fittingDresses('part 9, bust and back'),
      },
    ],
  },
  {
    id: 'back-pulled-up',
    place: 'upper back',
    views: ['back'],
    seen: 'Wrinkles rise to the back; its hem stands out',
    roles: ['centre-back', 'side-back'],
    asks: 'Slash the trial back across: how far does it open?',
    often: 'now and then',
    source: patternManual('part 8, round shoulders'),
    causes: [
      {
        id: 'round-shoulders',
        is: 'the shoulders are rounder than the pattern and draw the back up',
        test: 'Pin a strip under the trial back and slash it across between the side backs: it opens by itself.',
        change: 'Spread the back pattern across the shoulder blades by the gap.',
        measured: 'The gap on the strip, at the centre back.',
        limits: 'The slash ends 3/8 in (10 mm) from the side seam; very round: a second slash higher up.',
        wants: [],
        source: patternManual('part 8, round shoulders'),
      },
    ],
  },
  {
    id: 'loose-folds-back',
    place: 'upper back',
    views: ['back'],
    seen: 'Loose folds hang down the back',
    roles: ['centre-back', 'side-back'],
    asks: 'Pinch the surplus on one side of the back: how much?',
    often: 'now and then',
    source: memory,
    causes: [
      {
        id: 'wide-back',
        is: 'the back is too wide',
        test: 'Pinch the fold upright: the back lies smooth, and the arms still come forward.',
        change: 'Take in the nearest upright seam of the back, or cut it narrower.',
        measured: 'The pinch on one side.',
        limits: 'More than 20 mm (3/4 in) a seam: a smaller size.',
        wants: [width(BACK, 'chest', -1)],
        source: memory,
      },
    ],
  },
  {
    id: 'armhole-gapes-back',
    place: 'upper back',
    views: ['back'],
    seen: 'The back armhole stands away',
    roles: ['centre-back', 'side-back'],
    often: 'seldom',
    source: memory,
    causes: [
      {
        id: 'prominent-blade',
        is: 'the back leaves too little room for the shoulder blade',
        test: 'Pin a wedge from the armhole to the blade: the edge lies close.',
        change: 'Turn the wedge into a shoulder dart, or ease it into the armhole.',
        measured: 'The wedge at the armhole.',
        limits: 'At most 12 mm (1/2 in) as ease.',
        wants: [],
        source: memory,
      },
    ],
  },
];
