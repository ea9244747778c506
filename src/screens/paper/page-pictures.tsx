import { type Length, mm, toMm } from '../../length/length.ts';
import { type Ink, inkOf, type Page } from '../../paper/ink.ts';
import type { Laid, Pages } from '../../paper/pages.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { mapInk, pageInk } from '../../paper/small-picture.ts';

const ROOM = { wide: mm(60), high: mm(60) };

function InkPicture(props: {
  readonly ink: readonly Ink[];
  readonly wide: Length;
  readonly high: number;
  readonly says: string;
}) {
  const [wide, high] = [toMm(props.wide), props.high / 1e6];
  return (
    <svg class="page-picture" viewBox={`-1 -1 ${wide + 2} ${high + 2}`} role="img" aria-label={props.says}>
      {props.ink.map((one, i) => {
        if (one.kind === 'words') {
          return (
            <text key={`${i} ${one.words}`} x={toMm(one.at.x)} y={toMm(one.at.y)} text-anchor="middle">
              {one.words}
            </text>
          );
        }
        const d = `M${one.points.map(({ x, y }) => `${toMm(x).toFixed(2)} ${toMm(y).toFixed(2)}`).join('L')}`;
        const closed = one.kind === 'line' && one.closed;
        return (
          <path
            key={`${i} ${d.length}`}
            class={one.kind === 'line' ? one.pen : 'sign'}
            d={closed ? `${d}Z` : d}
          />
        );
      })}
    </svg>
  );
}

const pagesSaid = ({ pages }: Laid): string =>
  pages.length === 1 ? `page ${pages[0]}` : `${pages.length} pages, ${pages[0]} to ${pages.at(-1)}`;

function SheetPicture(props: { readonly sheet: PatternSheet; readonly laid: Laid }) {
  const { sheet, laid } = props;
  if (!laid.grid) return null;
  const { grid, pages } = laid.grid;
  const { ink, high } = mapInk(inkOf(sheet.drawn), grid, pages, 0, 0, ROOM);
  return (
    <li>
      <InkPicture
        ink={ink}
        wide={ROOM.wide}
        high={high}
        says={`${sheet.name} on ${grid.tiles.length} pages, with the number of each`}
      />
      <p>
        {sheet.name}
        <span class="quiet"> {pagesSaid(laid)}</span>
      </p>
    </li>
  );
}

function SharedPicture(props: {
  readonly page: Page;
  readonly number: number;
  readonly names: readonly string[];
}) {
  const { page, number, names } = props;
  const wide = mm(page.wide > page.high ? 48 : 34);
  const { ink, high } = pageInk(page, wide);
  const edge = [0, 1, 2, 3].map((i) => ({
    x: i === 1 || i === 2 ? wide : mm(0),
    y: i > 1 ? high : mm(0),
  }));
  const frame: Ink = { kind: 'line', pen: 'frame', points: edge, closed: true, phase: mm(0) };
  return (
    <li>
      <InkPicture
        ink={[frame, ...ink]}
        wide={ROOM.wide}
        high={high}
        says={`Page ${number} with ${names.join(', ')}`}
      />
      <p>
        {names.join(', ')}
        <span class="quiet"> page {number}</span>
      </p>
    </li>
  );
}

/** What will come out of the printer, drawn: each large sheet with its pages, each page that several share. */
export function PagePictures(props: { readonly pages: Pages; readonly sheets: readonly PatternSheet[] }) {
  const { pages, sheets } = props;
  const shared = new Map<number, string[]>();
  for (const { name, pages: on, grid } of pages.laid) {
    if (grid) continue;
    for (const number of on) shared.set(number, [...(shared.get(number) ?? []), name]);
  }
  return (
    <ul class="page-pictures" data-part="page-map">
      {sheets.map((sheet, i) => {
        const laid = pages.laid[i];
        return laid && <SheetPicture key={`${i} ${sheet.name}`} sheet={sheet} laid={laid} />;
      })}
      {[...shared]
        .sort(([a], [b]) => a - b)
        .map(([number, names]) => {
          const page = pages.pages[number - 1];
          return page && <SharedPicture key={number} page={page} number={number} names={names} />;
        })}
    </ul>
  );
}
