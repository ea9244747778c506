import { memory, practice } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { watson } from './books.ts';
import { ALL_ROUND, sewnIn, step, width } from './wants.ts';

/** What is seen where a sleeve is set in. */
export const SLEEVE_CAP: readonly Entry[] = [
  {
    id: 'cap-drag-lines',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'Slanting drag lines pull on the sleeve cap',
    roles: ['sleeve'],
    asks: 'Slash the cap across: how far does it open?',
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'low-cap',
        is: 'the cap is too low for the arm',
        test: 'Slash the cap across with the arm hanging: it opens and the lines are gone.',
        change: 'Raise the cap by the gap, and draw its seam anew to the length of the armhole.',
        measured: 'The gap.',
        limits: 'The higher the cap, the less the arm can be lifted.',
        wants: [],
        source: practice,
      },
      {
        id: 'narrow-sleeve',
        is: 'the sleeve is too narrow at the upper arm',
        test: 'Slash the sleeve lengthwise instead: it opens and the lines are gone.',
        change: 'Spread the sleeve at the upper arm.',
        measured: 'What opens lengthwise, not the gap across.',
        wants: [width(['sleeve'], 'upper-arm', 1, 'some')],
        source: memory,
      },
    ],
  },
  {
    id: 'cap-collapses',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'The cap folds across and falls in',
    roles: ['sleeve'],
    asks: 'Pin a tuck across the cap: how much in all?',
    often: 'now and then',
    source: memory,
    causes: [
      {
        id: 'high-cap',
        is: 'the cap is too high for the armhole',
        test: 'Pin a tuck across the cap: it lies smooth.',
        change: 'Lower the cap by the tuck, and draw its seam anew to the length of the armhole.',
        measured: 'All that the tuck takes.',
        limits: 'The cap seam must not become shorter than the armhole.',
        wants: [],
        source: memory,
      },
      {
        id: 'no-support',
        is: 'nothing holds the cap up',
        test: 'Slip a folded strip of net under the cap: it stands.',
        change: 'Sew a sleeve-head strip into the armhole.',
        measured: 'The strip that makes it stand.',
        wants: [
          sewnIn(
            'Sleeve-head strip',
            ['sleeve'],
            step('Cut a bias strip of net or wadding for the head of each sleeve', 'cut', 3),
            step('Sew the strips to the armhole seam allowance over the caps', 'hand', 12),
          ),
        ],
        source: memory,
      },
    ],
  },
  {
    id: 'sleeve-head-stands-up',
    place: 'shoulder',
    views: ['front', 'side'],
    seen: 'The sleeve head stands up at the shoulder',
    roles: ['sleeve'],
    often: 'seldom',
    source: watson('putting in sleeves'),
    causes: [
      {
        id: 'seam-turned-out',
        is: 'the armhole seam is turned outward and held by nothing',
        test: 'Press the seam towards the shoulder with a finger: the head lies down.',
        change: 'Turn the seam to the shoulder and tack it there in two or three places.',
        measured: 'Nothing to measure.',
        wants: [],
        source: watson('putting in sleeves'),
      },
    ],
  },
  {
    id: 'cap-puckers',
    place: 'shoulder',
    views: ['front', 'side', 'back'],
    seen: 'The cap puckers at the armhole seam',
    roles: ['sleeve'],
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'long-cap',
        is: 'the cap seam is too long for the armhole and the cloth',
        test: 'Measure both seams on the edge of a tape: the cap is more than 1 1/2 in (38 mm) longer.',
        change: 'Take the cap down, or shrink its fullness over a cushion before it is set in.',
        measured: 'The cap seam less the armhole.',
        limits: 'Sources differ: from no ease at all to 1 1/2 in (38 mm); try it in the cloth.',
        wants: [],
        source: practice,
      },
    ],
  },
];
