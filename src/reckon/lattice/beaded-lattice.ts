import { CLUSTER, FASTENING, latticeBeads, NEEDLEFUL, segmentBeads } from '../../cloth/beads.ts';
import type { LatticeMade } from '../../cloth/lattice.ts';
import { latticePanel } from '../../cloth/lattice-panel.ts';
import { latticeTucks } from '../../cloth/lattice-tucks.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { type Length, longest, mm, nm, times } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { line, place, ring, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { tuckStrip } from '../tucks/tuck-drawing.ts';
import { countsInWords } from './counts-in-words.ts';
import { latticeEdges } from './lattice-edges.ts';
import { lineNumbers } from './line-numbers.ts';

/** A gap thinner than a thread. */
const NO_GAP = mm(0.2);

/** The longest stretch between two crossings; every whole one is as long. */
function between({ lines }: LatticeMade): Length | undefined {
  let most = 0;
  for (const { segments, crossings } of lines) {
    if (crossings.length < 2) continue;
    for (const segment of segments) most = Math.max(most, segment);
  }
  return most > 0 ? nm(most) : undefined;
}

/** A lattice of beaded lines over a shaped panel. */
export const beadedLattice = reckoning({
  id: 'beaded-lattice',
  name: 'Beaded lattice',
  tells: 'Where the lines meet each edge of a panel, and the beads and thread they take.',
  group: 'Lattice and beads',
  fields: {
    top: {
      kind: 'length',
      label: 'Width at top',
      means: 'Of the finished panel.',
      start: { in: '9', mm: '230' },
    },
    bottom: { kind: 'length', label: 'Width at bottom', start: { in: '6', mm: '150' } },
    height: { kind: 'length', label: 'Height', start: { in: '10', mm: '250' } },
    spacing: {
      kind: 'length',
      label: 'Line to line',
      means: 'Square to the lines.',
      start: { in: '1', mm: '25' },
    },
    angle: {
      kind: 'number',
      label: 'Angle from the level',
      means: '45 makes squares on their points, 60 tall diamonds.',
      unit: '°',
      start: '60',
    },
    clear: {
      kind: 'length',
      usual: true,
      label: 'Clear of the seam',
      means: 'Beads nearer than this would lie under the presser foot.',
      start: { in: '1/4', mm: '6' },
    },
    bead: {
      kind: 'length',
      label: 'Length of a bead',
      means: 'Ten in a row, and a tenth of that.',
      start: { in: '1/16', mm: '2' },
    },
    tuck: {
      kind: 'length',
      label: 'Depth, if tucked',
      means: 'Where every line is sewn as a tuck; else leave it empty.',
      start: { in: '', mm: '' },
      optional: true,
    },
    weight: {
      kind: 'number',
      label: 'Hundred beads weigh',
      means: 'If you want the weight of all.',
      unit: 'g',
      start: '',
      optional: true,
    },
  },
  blame: { depth: 'tuck', milligrams: 'weight', families: 'angle', pairs: 'bead', count: 'spacing' },
  work: ({ bead, tuck, weight, ...panel }) => {
    const made = latticePanel(panel);
    if (!made.ok) return made;
    const { lattice, families, outline } = made.value;
    const way = { bead, pairs: true, clear: bead };
    const beads = latticeBeads({
      ...way,
      lattice,
      ...(weight === undefined ? {} : { milligrams: weight * 10 }),
    });
    if (!beads.ok) return beads;
    const tucked = tuck === undefined ? undefined : latticeTucks(lattice, families, tuck);
    if (tucked && !tucked.ok) return tucked;
    const full = between(lattice);
    const each = full === undefined ? undefined : segmentBeads(full, way);
    const { toBuy, alongLines, inClusters, thread, needlefuls, grams, bare } = beads.value;

    const figures: ReckonedFigure[] = [
      { kind: 'number', name: 'Beads to buy', number: toBuy },
      { kind: 'number', name: 'Beads along the lines', number: alongLines },
      { kind: 'number', name: 'Beads at crossings', number: inClusters },
      { kind: 'number', name: 'Crossings', number: lattice.crossings },
      { kind: 'number', name: 'Lines', number: lattice.lines.length },
    ];
    if (full !== undefined) figures.push({ kind: 'length', name: 'Crossing to crossing', length: full });
    if (each?.ok) {
      figures.push(
        { kind: 'number', name: 'Beads, crossing to crossing', number: each.value.count },
        each.value.gap < NO_GAP
          ? { kind: 'words', name: 'Gap between those beads', words: 'none to see' }
          : { kind: 'length', name: 'Gap between those beads', length: each.value.gap },
      );
    }
    figures.push(
      { kind: 'length', name: 'Thread', length: thread },
      { kind: 'number', name: 'Needlefuls of 45 cm', number: needlefuls },
    );
    if (grams !== undefined) {
      figures.push({ kind: 'words', name: 'Weight of the beads', words: `${grams.toPrecision(3)} g` });
    }
    if (bare > 0) figures.push({ kind: 'number', name: 'Stretches too short for beads', number: bare });
    const counts = countsInWords(beads.value.lines.map(({ count }) => count));
    if (counts !== undefined) figures.push({ kind: 'words', name: 'Beads, line by line', words: counts });
    if (tucked) {
      figures.push(
        { kind: 'length', name: 'Cloth the first tucks take', length: tucked.value[0].takeUp },
        { kind: 'length', name: 'Cloth the second tucks take', length: tucked.value[1].takeUp },
      );
    }

    const edges = latticeEdges(outline, families);
    const flat = tucked
      ? tucked.value.map((one, i) =>
          tuckStrip(
            i === 0
              ? 'First tucks, flat, square to the lines that fall right'
              : 'Second tucks, once the first are pressed, square to the lines that rise right',
            'half a spacing outside the first line',
            one.span,
            one.marks,
          ),
        )
      : [];
    const letters = times(longest(panel.top, panel.bottom, panel.height), 1 / 40);
    const lines: Drawn[] = [
      ...lattice.lines.map(({ from, to }) => line('stitch', from, to)),
      ...lineNumbers(lattice.lines, panel.spacing, panel.clear, letters),
    ];
    const middle = times(longest(panel.top, panel.bottom), 1 / 2);
    return good({
      figures,
      strips: tucked ? [...flat, ...edges.strips] : edges.strips,
      drawing: sheet('Lattice', [ring('seam', outline), ...edges.ticks, ...lines]),
      sheets: [
        sheet(
          'Lattice, finished panel',
          [
            ring('seam', outline),
            ...edges.ticks,
            ...lines,
            line(
              'grain',
              place(middle, times(panel.height, 1 / 4)),
              place(middle, times(panel.height, 3 / 4)),
            ),
          ],
          [
            'The seam line is drawn; there is no allowance.',
            ...(tucked ? ['Finished size: lay it on when both directions are tucked.'] : []),
          ],
        ),
      ],
      advice: [
        {
          say: 'Lay a rule from mark to mark and stop short of the seam by the clear distance.',
          source: practice,
        },
      ],
      assumed: [
        'One line each way goes through the middle of the top edge, so both sides are alike.',
        'Sewn two at a time, so the number on each stretch is even.',
        'One bead’s length is kept free on both sides of a crossing, for its cluster.',
        ...(tucked ? ['The panel is cut out after tucking; the beads lie on the stitching.'] : []),
        ...lattice.assumed,
        ...beads.value.assumed,
      ],
      sources: [geometry, CLUSTER.source, NEEDLEFUL.source, FASTENING.source],
    });
  },
});
