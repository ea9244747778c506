import { type FrillCutMade, frillCut } from '../../cloth/frill-cut.ts';
import { ROW_FROM_SEAM, ROWS_APART, THREAD_END } from '../../cloth/gathers.ts';
import { geometry, published } from '../../cloth/source.ts';
import { type Length, longest, nm, times, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { place as at, box, line, sheet } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { PatternSheet, Stroke } from '../../paper/pattern-sheet.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { count, writeNumber, writeTimes } from './times.ts';

/** A frill gathered along its upper edge: what to cut, and the marks that meet. */
export const gatheredFrill = reckoning({
  id: 'gathered-frill',
  name: 'Gathered frill',
  tells: 'How long and deep to cut the strip, and the marks that are pinned together.',
  group: 'Frills',
  fields: {
    place: {
      kind: 'length',
      label: 'Seam length',
      means:
        'The finished edge that the frill is set to, all round where it is closed, such as the way round a cuff.',
      start: { in: '8', mm: '200' },
    },
    depth: {
      kind: 'length',
      label: 'Finished depth',
      means: 'From the seam to the finished lower edge.',
      start: { in: '2', mm: '50' },
    },
    frill: {
      kind: 'choice',
      label: 'Kind of frill',
      means: 'Gives the fullness: how many times its seam it is long.',
      options: [
        { value: 'usual', label: 'usual frill, 2 1/2 times' },
        { value: 'plain ruffle', label: 'plain ruffle, 1 1/3 to 1 1/2 times' },
        { value: 'full gathers', label: 'full gathers, 2 to 3 times' },
        { value: 'ruche with body', label: 'ruche, cloth with body, 2 times' },
        { value: 'sheer ruche', label: 'ruche, sheer soft cloth, 3 times' },
      ],
      start: 'usual',
    },
    ends: {
      kind: 'choice',
      usual: true,
      label: 'Ends',
      options: [
        { value: 'ring', label: 'joined into a ring' },
        { value: 'open', label: 'left open' },
      ],
      start: 'ring',
    },
    allowance: {
      kind: 'length',
      usual: true,
      label: 'Seam allowance',
      means: 'Of the gathered edge and of the joins; two gathering rows lie in it.',
      start: { in: '1/2', mm: '12' },
    },
    hem: {
      kind: 'length',
      usual: true,
      label: 'Hem allowance',
      means: 'All that the hem turns up; 0 where the edge is bound or left.',
      start: { in: '1/4', mm: '6' },
    },
    clothWidth: { kind: 'length', label: 'Cloth width', start: { in: '45', mm: '1150' } },
    grain: {
      kind: 'choice',
      usual: true,
      label: 'Strips cut',
      options: [
        { value: 'along', label: 'along the grain' },
        { value: 'across', label: 'across the cloth' },
        { value: 'bias', label: 'on the bias' },
      ],
      start: 'along',
    },
    parts: {
      kind: 'choice',
      usual: true,
      label: 'Marks',
      options: [
        { value: '4', label: 'in quarters' },
        { value: '8', label: 'in eighths' },
      ],
      start: '4',
    },
    fullness: {
      kind: 'number',
      label: 'Own fullness',
      means: 'Only where you want another than the kind gives.',
      unit: 'times',
      start: '',
      optional: true,
    },
    clothLength: {
      kind: 'length',
      label: 'Cloth length',
      means: 'Only where strips are cut along the grain of a short piece.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  blame: { join: 'allowance' },
  work: ({ frill, ends, parts, fullness, clothLength, ...given }) => {
    const made = frillCut({
      ...given,
      kind: frill,
      ring: ends === 'ring',
      parts: parts === '4' ? 4 : 8,
      ...(fullness === undefined ? {} : { fullness }),
      ...(clothLength === undefined ? {} : { clothLength }),
    });
    if (!made.ok) return made;
    const cut = made.value;
    const kinds = cut.fullnessFrom;
    return good({
      figures: [
        ...cutFigures(cut),
        {
          kind: 'words',
          name: 'Strips and joins',
          words: `${count(cut.strips, 'strip')}, ${count(cut.joins, 'join')}`,
        },
        { kind: 'length', name: 'Joined strip, along its seam line', length: cut.strip },
        { kind: 'words', name: 'Fullness', words: fullnessWords(cut) },
        { kind: 'length', name: 'Length of cloth it takes', length: cut.cloth },
        { kind: 'length', name: 'First gathering row, above the seam line', length: cut.rows[0] },
        { kind: 'length', name: 'Second gathering row, above the seam line', length: cut.rows[1] },
        {
          kind: 'length',
          name: `Gathering threads, ${cut.threads.count} of this length`,
          length: cut.threads.each,
        },
      ],
      strips: pinnedTogether(cut, given.place),
      drawing: strip(cut, given.place, given.allowance, given.hem),
      sheets: [],
      advice: cut.advice,
      assumed: cut.assumed,
      sources: [
        ...(kinds ? [kinds.source] : []),
        published('NIMI Dress Making, trade practical', 'about 2024', 'p. 203; seen as an excerpt'),
        published('Sewing and Handicraft for Girls', 'undated', 'Gathering B; seen as an excerpt'),
        published('Textiles and Clothing, Watson', '1907', 'a thread for each half'),
        ROWS_APART.source,
        ROW_FROM_SEAM.source,
        THREAD_END.source,
        geometry,
      ],
    });
  },
});

/** Pieces of one length are told once; bias pieces may differ. */
function cutFigures(cut: FrillCutMade): readonly ReckonedFigure[] {
  const alike = new Map<Length, number>();
  for (const length of cut.cutLengths) alike.set(length, (alike.get(length) ?? 0) + 1);
  const one = alike.size === 1;
  const of = (n: number, k: number) => (k === 0 ? count(n, 'strip') : `${n} more`);
  return [
    ...[...alike].slice(0, 6).map(([length, n], k) => ({
      kind: 'length' as const,
      name: one ? 'Cut length of a strip' : `${k + 1}: cut length of ${of(n, k)}`,
      length,
    })),
    { kind: 'length', name: 'Cut depth', length: cut.cutDepth },
  ];
}

function fullnessWords(cut: FrillCutMade): string {
  const [least, most] = cut.fullnessFrom?.range ?? [cut.fullness, cut.fullness];
  const range = least < most ? `, the middle of ${writeNumber(least)} to ${writeNumber(most)}` : '';
  return `${writeTimes(cut.fullness)}${range}`;
}

/** The edge and the strip, each marked from its own start; equal numbers are pinned together. */
function pinnedTogether(cut: FrillCutMade, span: Length): readonly StripMarks[] {
  const named = (k: number) => {
    const of = cut.marks.length - 1;
    return k === 0 ? 'start' : k === of ? 'end' : `${k} of ${of}`;
  };
  const marks = (side: 'place' | 'strip') => cut.marks.map((mark, k) => ({ at: mark[side], name: named(k) }));
  const joins = cut.joinsAt.map((join, i) => ({
    at: join,
    name: `join ${i + 1}`,
    stroke: 'stitch' as const,
  }));
  return [
    { name: 'The seam it is set to', from: 'the start of the seam', span, marks: marks('place') },
    {
      name: 'Frill, along its seam line',
      from: 'the first join or end',
      span: cut.strip,
      marks: [...marks('strip'), ...joins].sort((a, b) => a.at - b.at),
    },
  ];
}

/** The edge above, the strip below, and thin lines between the marks that meet. */
function strip(cut: FrillCutMade, place: Length, allowance: Length, hem: Length): PatternSheet {
  const long = cut.strip;
  const left = nm((long - place) / 2);
  const top = longest(times(long, 1 / 6), times(cut.cutDepth, 1 / 2));
  const down = (y: number) => nm(top + y);
  const level = (stroke: Stroke, y: number) => line(stroke, at(zero, down(y)), at(long, down(y)));
  return sheet('Frill and its seam', [
    line('seam', at(left, zero), at(nm(left + place), zero)),
    ...cut.marks.flatMap((mark) => [
      line('thin', at(nm(left + mark.place), zero), at(mark.strip, top)),
      line('mark', at(mark.strip, top), at(mark.strip, down(allowance))),
    ]),
    box('cut', zero, top, long, cut.cutDepth),
    ...cut.rows.map((row) => level('stitch', allowance - row)),
    level('seam', allowance),
    ...(hem > 0 ? [level('fold', cut.cutDepth - hem)] : []),
    ...cut.joinsAt
      .filter((join) => join > 0)
      .map((join) => line('seam', at(join, top), at(join, down(cut.cutDepth)))),
  ]);
}
