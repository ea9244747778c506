import { memory, practice } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { fittingDresses, watson } from './books.ts';
import { ALL_ROUND, BACK, length, width } from './wants.ts';

/** What is seen at the neck edge. */
export const NECK: readonly Entry[] = [
  {
    id: 'neckline-gapes-front',
    place: 'neck',
    views: ['front'],
    seen: 'The front neck edge stands away',
    roles: ['centre-front'],
    asks: 'Pinch the surplus at the front neck edge, both sides together: how much?',
    often: 'now and then',
    source: memory,
    causes: [
      {
        id: 'long-neck-edge',
        is: 'the front neck edge is longer than the body there',
        test: 'Pin a dart from the neck edge towards the bust: it lies flat, and cloth and paper are equally long.',
        change: 'Close a wedge at the neck edge of the pattern, to nothing at the bust dart or the shoulder.',
        measured: 'The pinch, half of it for each side.',
        limits: 'More than 12 mm (1/2 in) a side: draw the neck anew.',
        wants: [],
        source: memory,
      },
      {
        id: 'stretched',
        is: 'the neck edge was stretched in handling',
        test: 'Lay the pattern on the neck edge: the cloth is longer than the paper.',
        change: 'Draw the edge in to the length of the paper with a narrow stay tape, and press it.',
        measured: 'The cloth edge less the edge of the paper.',
        wants: [],
        source: memory,
      },
    ],
  },
  {
    id: 'neckline-gapes-back',
    place: 'neck',
    views: ['back'],
    seen: 'The back neck edge stands away',
    roles: ['centre-back'],
    asks: 'Pinch the surplus at the back neck edge, both sides together: how much?',
    often: 'seldom',
    source: memory,
    causes: [
      {
        id: 'long-neck-edge',
        is: 'the back neck edge is longer than the neck',
        test: 'Pin a small dart at the centre back: the edge lies close and nothing else pulls.',
        change: 'Close a wedge at the neck edge of the pattern, to nothing at the end of the shoulder.',
        measured: 'The pinch, half of it for each side.',
        limits: 'More than 10 mm (3/8 in) a side: draw the neck anew.',
        wants: [],
        source: memory,
      },
    ],
  },
  {
    id: 'neckline-binds',
    place: 'neck',
    views: ALL_ROUND,
    seen: 'The neck edge binds',
    roles: ['centre-front', 'centre-back'],
    often: 'now and then',
    source: watson('fitting of neck and sleeves'),
    causes: [
      {
        id: 'uncut-curve',
        is: 'the curve of the seam allowance is not clipped',
        test: 'Clip into the allowance where it draws: the edge drops and lies easy.',
        change: 'Clip the curve. Never cut the neck larger while it is on the body.',
        measured: 'Nothing to measure.',
        wants: [],
        source: watson('fitting of neck and sleeves'),
      },
      {
        id: 'high-neck',
        is: 'the neckline is cut too high',
        test: 'Lay a fine cord round the neck: the cut edge lies well above it.',
        change: 'Trim to the line of the cord after the shoulder seam is right.',
        measured: 'From the cord to the cut edge.',
        limits: 'Keep at least 3/8 in (10 mm) of seam.',
        wants: [],
        source: fittingDresses('part 5, neck and shoulders'),
      },
    ],
  },
  {
    id: 'fold-below-back-neck',
    place: 'neck',
    views: ['back'],
    seen: 'A fold lies across just below the back neck',
    roles: ['centre-back'],
    asks: 'Pinch the fold away: how much?',
    often: 'now and then',
    source: memory,
    causes: [
      {
        id: 'long-back',
        is: 'the back is too long between neck and shoulder blades',
        test: 'Pinch the fold away: nothing is left of it and nothing else pulls.',
        change: 'Shorten the back above the shoulder blades.',
        measured: 'The whole pinch.',
        limits: 'At most 15 mm (5/8 in); beyond that the shoulders are to be drawn anew.',
        wants: [length(['centre-back'], 'shoulder', 'chest', -1)],
        source: memory,
      },
      {
        id: 'snug-back',
        is: 'the back is too snug across',
        test: 'Open the side of the back: the fold drops by itself.',
        change: 'Cut the back wider across the shoulder blades.',
        measured: 'What opens, not what is pinched.',
        // The pinch is lengthwise and says nothing of the width: by how much is left to the rest.
        wants: [width(BACK, 'chest', 1, 'some')],
        source: practice,
      },
    ],
  },
];
