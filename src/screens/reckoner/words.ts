import { inMetres, inYards } from '../../cloth/cloth-bought.ts';
import { writeSource } from '../../cloth/source.ts';
import { inches, type Length, longer, mm } from '../../length/length.ts';
import { type Marking, sayLength, writeLength } from '../../length/writing.ts';
import type { Reckoned, ReckonedFigure, Reckoning } from '../../reckon/reckoning.ts';
import { hairOff } from '../bench/marks.tsx';
import { entryWords, type Written } from './entries.ts';

/** A number as it is shown: two decimals at the most. */
export const writeNumber = (n: number): string => String(Math.round(n * 100) / 100 + 0);

/** A length of two yards or metres or more as it is bought, such as thread; undefined where the rule says it better. */
export function longWords(length: Length, marking: Marking): string | undefined {
  if (marking.unit === 'in') return longer(length, inches(72)) ? `about ${inYards(length)}` : undefined;
  return longer(length, mm(2000)) ? `about ${inMetres(length)}` : undefined;
}

/** A figure in one string: `2 1/2 in`, `12 beads`. */
export function writeFigure(figure: ReckonedFigure, marking: Marking): string {
  if (figure.kind === 'length') return writeLength(figure.length, marking).text;
  if (figure.kind === 'words') return figure.words;
  return figure.of === undefined ? writeNumber(figure.number) : `${writeNumber(figure.number)} ${figure.of}`;
}

/** The figures for the ear, a sentence each. */
export const sayFigures = (name: string, figures: readonly ReckonedFigure[], marking: Marking): string[] => [
  `${name}.`,
  ...figures.map((figure) => {
    const said = figure.kind === 'length' ? sayLength(figure.length, marking) : writeFigure(figure, marking);
    return `${figure.name}: ${said}.`;
  }),
];

/** A length with how far its mark is off, where that matters. */
function fullLength(length: Parameters<typeof writeLength>[0], marking: Marking): string {
  const { text, off } = writeLength(length, marking);
  const hair = hairOff(off, marking);
  return hair === undefined ? text : `${text} (${hair})`;
}

const unique = (lines: readonly string[]): string[] => [...new Set(lines)];

/** Everything on one reckoning as plain text, to paste anywhere. */
export function plainText(told: {
  readonly reckoning: Pick<Reckoning, 'name' | 'fields'>;
  readonly written: Written;
  readonly reckoned: Reckoned;
  readonly marking: Marking;
}): string {
  const { reckoning, written, reckoned, marking } = told;
  const paragraphs: string[][] = [
    [reckoning.name],
    Object.entries(reckoning.fields).flatMap(([name, field]) => {
      const entry = entryWords(written, name, field);
      return entry === '' ? [] : [`${field.label}: ${entry}`];
    }),
    reckoned.figures.map((figure) =>
      figure.kind === 'length'
        ? `${figure.name}: ${fullLength(figure.length, marking)}`
        : `${figure.name}: ${writeFigure(figure, marking)}`,
    ),
    ...reckoned.strips.map((strip) => [
      `${strip.name}, from ${strip.from}`,
      ...strip.marks.map((mark, i) => `${i + 1}. ${mark.name}: ${fullLength(mark.at, marking)}`),
    ]),
    reckoned.advice.map(({ say, source }) => `${say} (${writeSource(source)})`),
    reckoned.assumed.map((line) => `Assumed: ${line}`),
    unique(reckoned.sources.map(writeSource)).map((line) => `From: ${line}`),
  ];
  return paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
}

/** The figures as they stand on a card of the bench, and after them every mark. */
export const cardFigures = (
  reckoned: Reckoned,
  marking: Marking,
): readonly { readonly name: string; readonly figure: string }[] => [
  ...reckoned.figures.map((figure) => ({ name: figure.name, figure: writeFigure(figure, marking) })),
  ...reckoned.strips.flatMap((strip) =>
    strip.marks.map((mark) => ({
      name: `${mark.name}, from ${strip.from}`,
      figure: writeLength(mark.at, marking).text,
    })),
  ),
];
