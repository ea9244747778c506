import { crossedPanel } from '../../cloth/crossed-panel.ts';
import { geometry, published } from '../../cloth/source.ts';
import { shallowAdvice } from '../../cloth/tucks.ts';
import { add, type Length, longest, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { box, middleWords, place, sheet, words } from '../../paper/drawing.ts';
import { reckoning } from '../reckoning.ts';
import { apartFigures } from './apart-figures.ts';
import { grainLine } from './grain-line.ts';
import { tuckStrip, tuckStrokes } from './tuck-drawing.ts';

/** Two directions of tucks over a rectangle. */
export const crossedTucks = reckoning({
  id: 'crossed-tucks',
  name: 'Crossed tucks',
  tells: 'Marks for tucks in two directions, sewn one after the other.',
  group: 'Tucks and bands',
  fields: {
    width: { kind: 'length', label: 'Panel width, finished', start: { in: '8', mm: '200' } },
    height: { kind: 'length', label: 'Panel height, finished', start: { in: '10', mm: '250' } },
    depth: {
      kind: 'length',
      label: 'Depth of a tuck',
      means: 'From the stitching to the fold.',
      start: { in: '1/8', mm: '3' },
    },
    spacing: {
      kind: 'length',
      label: 'Spacing, finished',
      means: 'From one stitching line to the next, both ways.',
      start: { in: '1', mm: '25' },
    },
    angle: {
      kind: 'number',
      label: 'Angle between them',
      means: '90 makes squares, 60 diamonds.',
      unit: '°',
      start: '90',
    },
  },
  work: (given) => {
    const made = crossedPanel(given);
    if (!made.ok) return made;
    const { clothWidth, clothHeight, first, second, firstLines, secondLines, square, assumed } = made.value;
    const drawn = [
      box('cut', zero, zero, clothWidth, clothHeight),
      ...tuckStrokes(firstLines),
      ...tuckStrokes(secondLines),
    ];
    const letters = times(longest(clothWidth, clothHeight), 1 / 25);
    const firstSpan = clothWidth;
    const lastSecond = second.marks.at(-1)?.secondStitching ?? zero;
    const secondSpan: Length = square ? clothHeight : add(lastSecond, given.spacing);
    return good({
      figures: [
        { kind: 'length', name: 'Cloth to cut, width', length: clothWidth },
        { kind: 'length', name: 'Cloth to cut, height', length: clothHeight },
        { kind: 'number', name: 'Down the panel, sewn first', number: first.marks.length, of: 'tucks' },
        { kind: 'number', name: 'Across them, sewn second', number: second.marks.length, of: 'tucks' },
        ...apartFigures(first.marks),
      ],
      strips: [
        tuckStrip('First tucks, flat', 'the left edge', firstSpan, first.marks),
        tuckStrip(
          square ? 'Second tucks, flat' : 'Second tucks, after the first are pressed',
          square ? 'the top edge' : 'the left upper corner, square to the tucks',
          secondSpan,
          second.marks,
        ),
      ],
      drawing: sheet('Crossed tucks, flat', [
        ...drawn,
        ...first.marks
          .filter((_, i) => i === 0 || given.spacing + 2 * given.depth > letters * 1.4)
          .map(({ fold }, i) => middleWords(String(i + 1), place(fold, times(letters, -0.4)), letters)),
        ...(square
          ? second.marks
              .filter((_, i) => i === 0 || given.spacing + 2 * given.depth > letters * 1.4)
              .map(({ fold }, i) => words(String(i + 1), place(times(letters, -1.4), fold), letters))
          : []),
      ]),
      sheets: [
        sheet(
          'Crossed tucks, flat cloth',
          [...drawn, grainLine(clothWidth, clothHeight)],
          [
            'No seam allowance.',
            'Sew the tucks that run down first and press them flat, then the others across.',
            ...(square ? [] : ['Cut the panel to size when it is tucked.']),
          ],
        ),
      ],
      advice: shallowAdvice([given.depth]),
      assumed,
      sources: [
        published(
          'Dress Making, Trade Practical, National Instructional Media Institute',
          'about 2024',
          'p. 207; seen as an excerpt',
        ),
        published('The New Dressmaker, Butterick', '1921', 'p. 98; seen as an excerpt'),
        geometry,
      ],
    });
  },
});
