import { memory, practice } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { baldt, watson } from './books.ts';
import { BACK, FRONT, width } from './wants.ts';

/** What is seen at the tucks of a body. */
export const TUCKS: readonly Entry[] = [
  {
    id: 'tucks-not-straight',
    place: 'chest',
    views: ['front'],
    seen: 'The tucks do not hang straight',
    roles: ['centre-front', 'side-front'],
    needs: 'tucks',
    asks: 'How far is the last tuck off the plumb on one side?',
    often: 'often',
    source: practice,
    causes: [
      {
        id: 'narrow-panel',
        is: 'the tucked front is too narrow and is drawn to the side',
        test: 'Open the seam beside the tucks: they drop straight.',
        change: 'Cut the tucked front wider and work its tucks again.',
        measured: 'From a plumb thread to the last tuck at the chest, on one side.',
        // What the tuck is drawn off the plumb is missing in the panel, and more may be.
        wants: [width(['centre-front'], 'chest', 1, 'at least')],
        source: practice,
      },
      {
        id: 'off-grain',
        is: 'the tucks were marked off the grain',
        test: 'Follow one thread from the fold of a tuck: it leaves the fold.',
        change: 'Open the tucks, mark them along a thread and sew them again.',
        measured: 'From the thread to the fold at the end of the tuck.',
        wants: [],
        source: memory,
      },
      {
        id: 'uneven-marks',
        is: 'depth or spacing was marked unevenly',
        test: 'Measure depth and spacing at the top, the middle and the end: they differ.',
        change: 'Open the tucks that differ, mark depth and spacing first, and sew them again.',
        measured: 'Depth and spacing, at three places.',
        wants: [],
        source: baldt('decoration, self-trimmings, part 4; seen as an excerpt'),
      },
    ],
  },
  {
    id: 'tucks-spread-open',
    place: 'chest',
    views: ['front'],
    seen: 'The tucks spread open',
    roles: ['centre-front', 'side-front'],
    needs: 'tucks',
    asks: 'Open one side until the tucks close: how wide does it gape?',
    often: 'now and then',
    source: watson('full busted waist'),
    causes: [
      {
        id: 'narrow-front',
        is: 'the front is too narrow across the chest',
        test: 'Open the side: the tucks close.',
        change:
          'Cut the tucked front wider before tucking: twice the depth of a tuck for each one, and what is missing.',
        measured: 'What gapes on one side.',
        wants: [width(FRONT, 'chest', 1, 'at least')],
        source: watson('full busted waist'),
      },
      {
        id: 'short-stitching',
        is: 'the tucks are stitched down too short a way, or pressed awry',
        test: 'Open the side: the tucks stay open.',
        change: 'Stitch them further down, or press them again along their folds.',
        measured: 'To where they begin to spread.',
        wants: [],
        source: memory,
      },
    ],
  },
  {
    id: 'tucks-take-too-much',
    place: 'front opening',
    views: ['front'],
    seen: 'The tucked front is narrower than it was drawn',
    roles: ['centre-front', 'side-front'],
    needs: 'tucks',
    asks: 'The drawing less the tucked front, on one side: how much?',
    often: 'now and then',
    source: baldt('decoration, self-trimmings, part 4; seen as an excerpt'),
    causes: [
      {
        id: 'small-block',
        is: 'the block was cut without enough for the tucks',
        test: 'The tucks are as deep as their marks, and the front still falls short.',
        change:
          'Cut the block wider: twice the depth times the number of tucks, added to the finished width.',
        measured: 'The drawing less the tucked front, on one side.',
        wants: [width(['centre-front'], 'chest', 1, 'at least')],
        source: baldt('decoration, self-trimmings, part 4; seen as an excerpt'),
      },
      {
        id: 'deep-tucks',
        is: 'the tucks are sewn deeper than they were marked',
        test: 'Measure three tucks: they are deeper than the mark. Each takes twice its depth.',
        change: 'Sew the tucks again to their marks.',
        measured: 'Twice the surplus depth, times the number of tucks.',
        wants: [],
        source: baldt('decoration, self-trimmings, part 4; seen as an excerpt'),
      },
    ],
  },
  {
    id: 'back-tucks-not-straight',
    place: 'upper back',
    views: ['back'],
    seen: 'The back tucks do not hang straight',
    roles: BACK,
    needs: 'tucks',
    asks: 'How far is the last tuck off the plumb on one side?',
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'narrow-panel',
        is: 'the tucked back is too narrow and is drawn to the side',
        test: 'Open the seam beside the tucks: they drop straight.',
        change: 'Cut the tucked back wider and work its tucks again.',
        measured: 'From a plumb thread to the last tuck, on one side.',
        wants: [width(['centre-back'], 'chest', 1, 'at least')],
        source: practice,
      },
      {
        id: 'off-grain',
        is: 'the tucks were marked off the grain',
        test: 'Follow one thread from the fold of a tuck: it leaves the fold.',
        change: 'Open the tucks, mark them along a thread and sew them again.',
        measured: 'From the thread to the fold at the end of the tuck.',
        wants: [],
        source: memory,
      },
    ],
  },
];
