import { inches, type Length, mm, NM_PER_MM, toMm } from '../length/length.ts';
import { type Marking, writeLength } from '../length/writing.ts';
import type { PatternSheet } from '../paper/pattern-sheet.ts';
import { type SheetPath, sheetLines } from './sheet-lines.ts';
import './sheet-drawing.css';

/** A drawing takes about so many pixels along its larger side on a phone. */
const ON_PHONE = 350;
/** Letters are never smaller than this part of the larger side: 11 px on a phone. */
const SMALLEST_LETTER = 1 / 32;

const BARS: Readonly<Record<Marking['unit'], readonly Length[]>> = {
  in: [
    inches(1, 8),
    inches(1, 4),
    inches(1, 2),
    ...[1, 2, 4, 6, 12, 24, 36, 72, 144, 360].map((n) => inches(n)),
  ],
  mm: [2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000].map((n) => mm(n)),
};

/** The longest round length that takes at most a third of a drawing so many millimetres wide. */
export function scaleBar(wideMm: number, unit: Marking['unit']): Length {
  const bars = BARS[unit];
  return bars.findLast((bar) => toMm(bar) <= wideMm / 3) ?? bars[0] ?? mm(1);
}

const round = (n: number): number => Math.round(n * 100) / 100;

const pathOf = ({ stroke, piece, d }: SheetPath) => (
  <path
    key={`${stroke} ${piece}`}
    class={`sheet-lines sheet-${stroke}${piece ? ' sheet-piece' : ''}`}
    d={d}
  />
);

/** A sheet drawn to scale, with a bar that says the scale. The strokes keep their weight at any size. */
export function SheetDrawing({
  sheet,
  marking,
}: {
  readonly sheet: PatternSheet;
  readonly marking: Marking;
}) {
  const { extent, paths, words } = sheetLines(sheet, ON_PHONE * 2, true);
  const side = Math.max(extent.wide, extent.high, 0.01);
  const rim = side / 40;
  const bar = scaleBar(Math.max(extent.wide, side / 3), marking.unit);
  const barMm = toMm(bar);
  const barY = extent.top + extent.high + rim * 2.5;
  const tick = rim / 2;
  const view = [
    extent.left - rim,
    extent.top - rim,
    Math.max(extent.wide, barMm) + rim * 2,
    extent.high + rim * 4.5,
  ].map(round);
  const said = words.map((one) => one.words).slice(0, 12);
  return (
    <figure class="sheet-drawing" data-part="sheet-drawing">
      <svg
        viewBox={view.join(' ')}
        role="img"
        aria-label={`${sheet.name}, drawn to scale${said.length > 0 ? `: ${said.join(', ')}` : ''}`}
      >
        {paths.map(pathOf)}
        {words.map((one, i) => {
          const [x, y] = [round(one.at.x / NM_PER_MM), round(one.at.y / NM_PER_MM)];
          return (
            <text
              // Words may stand twice on a sheet, never at one place.
              key={`${one.words} ${i}`}
              class="sheet-words"
              x={x}
              y={y}
              font-size={round(Math.max(toMm(one.high), side * SMALLEST_LETTER))}
              text-anchor={one.from}
              transform={one.turn === undefined ? undefined : `rotate(${one.turn} ${x} ${y})`}
            >
              {one.words}
            </text>
          );
        })}
        <path
          class="sheet-bar"
          d={`M${round(extent.left)} ${round(barY - tick)}v${round(tick * 2)}M${round(extent.left)} ${round(barY)}h${round(barMm)}M${round(extent.left + barMm)} ${round(barY - tick)}v${round(tick * 2)}`}
        />
      </svg>
      <figcaption>
        To scale. The bar is {writeLength(bar, marking.unit === 'in' ? { unit: 'in', per: 8 } : marking).text}{' '}
        long.
      </figcaption>
    </figure>
  );
}

/** A sheet as a small picture to choose by: lines only, hidden from readers because its name stands beside it. */
export function SheetPicture({ sheet }: { readonly sheet: PatternSheet }) {
  const { extent, paths } = sheetLines(sheet, 72, false);
  const rim = Math.max(extent.wide, extent.high, 0.01) / 24;
  const view = [extent.left - rim, extent.top - rim, extent.wide + rim * 2, extent.high + rim * 2].map(round);
  return (
    <svg class="sheet-small" viewBox={view.join(' ')} aria-hidden="true">
      {paths.map(pathOf)}
    </svg>
  );
}
