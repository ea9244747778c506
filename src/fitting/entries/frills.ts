import { memory, practice } from '../../cloth/source.ts';
import type { Entry } from '../entry.ts';
import { dillmont, watson } from './books.ts';
import { ALL_ROUND, width } from './wants.ts';

/** What is seen at a trim that is caught in a seam. */
export const FRILLS: readonly Entry[] = [
  {
    id: 'frill-too-far-in',
    place: 'chest',
    views: ['front'],
    seen: 'The frill should lie further to the side',
    roles: ['frill'],
    needs: 'trim',
    asks: 'From where it lies to where it should, on one side: how much?',
    often: 'now and then',
    source: practice,
    causes: [
      {
        id: 'narrow-panel',
        is: 'the panels between the centre and the frill are too narrow',
        test: 'Fasten the front centre on centre and measure to the frill: it is less than it should be.',
        change: 'Cut the panels between the centre and the frill wider.',
        measured: 'From the seam of the frill to where it should lie, on one side.',
        // The frill lies at the edge of the centre front: it moves by what that panel gains.
        wants: [width(['centre-front'], 'chest', 1)],
        source: practice,
      },
      {
        id: 'pressed-inward',
        is: 'the frill lies over to the wrong side of its seam',
        test: 'Turn the frill to the side with a finger: it lies where it should.',
        change: 'Press the frill to the side and catch it down.',
        measured: 'Nothing to measure.',
        wants: [],
        source: practice,
      },
      {
        id: 'lapped-too-far',
        is: 'the fronts lap too far',
        test: 'Lay centre front on centre front: the frill moves to the side.',
        change: 'Move the buttons so that centre lies on centre.',
        measured: 'From one centre line to the other, half of it for each side.',
        wants: [],
        source: practice,
      },
    ],
  },
  {
    id: 'frill-too-far-out',
    place: 'chest',
    views: ['front'],
    seen: 'The frill should lie nearer to the centre',
    roles: ['frill'],
    needs: 'trim',
    asks: 'From where it lies to where it should, on one side: how much?',
    often: 'seldom',
    source: practice,
    causes: [
      {
        id: 'wide-panel',
        is: 'the panels between the centre and the frill are too wide',
        test: 'Fasten the front centre on centre and measure to the frill: it is more than it should be.',
        change: 'Cut the panels between the centre and the frill narrower.',
        measured: 'From the seam of the frill to where it should lie, on one side.',
        wants: [width(['centre-front'], 'chest', -1)],
        source: practice,
      },
    ],
  },
  {
    id: 'frill-wavers',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'The line of the frill wavers',
    roles: ['frill'],
    needs: 'trim',
    often: 'now and then',
    source: memory,
    causes: [
      {
        id: 'line-drifts',
        is: 'it was basted off its line',
        test: 'Measure from the frill to the edge beside it at five places: the distance changes.',
        change: 'Open the seam where it is off, baste the frill to its line and sew again.',
        measured: 'The greatest difference.',
        wants: [],
        source: memory,
      },
    ],
  },
  {
    id: 'frill-thick-in-places',
    place: 'shoulder',
    views: ALL_ROUND,
    seen: 'The frill is thick here and flat there',
    roles: ['frill'],
    needs: 'trim',
    often: 'often',
    source: dillmont('plain sewing, sewing on gathers'),
    causes: [
      {
        id: 'not-divided',
        is: 'frill and seam were not divided alike',
        test: 'Measure each quarter of the frill between its marks: they differ.',
        change: 'Divide both into as many equal parts, match them, and draw up part by part.',
        measured: 'Quarter against quarter.',
        wants: [],
        source: dillmont('plain sewing, sewing on gathers'),
      },
      {
        id: 'one-row',
        is: 'it was gathered on a single thread',
        test: 'Look at the seam: the gathers roll over the one row.',
        change: 'Gather on two rows, 1/8 in (3 mm) apart, and stroke the gathers straight.',
        measured: 'Nothing to measure.',
        wants: [],
        source: watson('stroking'),
      },
    ],
  },
];
