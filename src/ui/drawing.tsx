import { toMm } from '../length/length.ts';
import type { Outline, Point } from '../shape/outline.ts';
import {
  type Box,
  boxRound,
  type DrawnEdge,
  drawEdges,
  halfWay,
  mirror,
  pathThrough,
  type Spot,
} from './drawing-lines.ts';
import './drawing.css';

/** A piece to draw: the same shape as the card's own. */
export interface PieceToDraw {
  readonly name: string;
  readonly outline: Outline;
  readonly mirrored: boolean;
  readonly picked: readonly string[];
  readonly lines: readonly {
    readonly from: Point;
    readonly to: Point;
    readonly kind: 'fold' | 'stitch' | 'bead' | 'hole';
  }[];
}

interface Cell {
  readonly piece: PieceToDraw;
  readonly edges: readonly DrawnEdge[];
  readonly twins: readonly DrawnEdge[];
  readonly box: Box;
}

const high = 170;
const wide = 358;
const rim = 36;
/** Less room above and below: a letter that stands there may reach over the frame. */
const brim = 20;
const gap = 22;

function cellOf(piece: PieceToDraw): Cell {
  const edges = drawEdges(piece.outline);
  const twins = piece.mirrored ? mirror(edges) : [];
  return { piece, edges, twins, box: boxRound([...edges, ...twins].flatMap((edge) => edge.spots)) };
}

const sizeOf = (box: Box): { w: number; h: number } => ({
  w: Math.max(1, box.right - box.left),
  h: Math.max(1, box.bottom - box.top),
});

/** One scale for all where that keeps each piece legible, else each piece fills its own place. */
function scalesFor(cells: readonly Cell[]): number[] {
  const room = (wide - rim * 2 - gap * (cells.length - 1)) / cells.length;
  const own = cells.map(({ box }) => Math.min(room / sizeOf(box).w, (high - brim * 2) / sizeOf(box).h));
  const total = cells.reduce((sum, { box }) => sum + sizeOf(box).w, 0);
  const tallest = Math.max(...cells.map(({ box }) => sizeOf(box).h));
  const shared = Math.min((wide - rim * 2 - gap * (cells.length - 1)) / total, (high - brim * 2) / tallest);
  return Math.max(...own) > shared * 3 ? own : cells.map(() => shared);
}

/** Where the letter of an edge stands: beside the edge, away from the middle of the piece. */
function outward(at: Spot, middle: Spot): Spot {
  const [dx, dy] = [at.x - middle.x, at.y - middle.y];
  const away = 19 / Math.max(1, Math.hypot(dx, dy));
  return { x: at.x + dx * away, y: at.y + dy * away };
}

const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/**
 * The pieces of a step with the edges in question picked out: thick, dashed like a seam and lettered, so that they
 * are told by shape as well as colour. Drawn from the outlines; in proportion but not to scale, and it says so.
 */
export function Drawing({ pieces }: { readonly pieces: readonly PieceToDraw[] }) {
  if (pieces.length === 0) return null;
  const cells = pieces.map(cellOf);
  const scales = scalesFor(cells);
  const widths = cells.map(({ box }, i) => sizeOf(box).w * (scales[i] ?? 1));
  const used = widths.reduce((sum, w) => sum + w, 0) + gap * (cells.length - 1);
  // A narrow drawing has its words beside it, a wide one below.
  const across = used + rim * 2;
  const beside = across < wide * 0.62;
  let x = rim;
  let letter = 0;
  const legend: { letter: string; text: string }[] = [];
  const drawn = cells.map((cell, i) => {
    const scale = scales[i] ?? 1;
    const left = x;
    x += (widths[i] ?? 0) + gap;
    const top = (high - sizeOf(cell.box).h * scale) / 2;
    const put = (s: Spot): Spot => ({
      x: left + (s.x - cell.box.left) * scale,
      y: top + (s.y - cell.box.top) * scale,
    });
    const middle = { x: left + (widths[i] ?? 0) / 2, y: high / 2 };
    const picked = new Set(cell.piece.picked);
    const badges = cell.edges
      .filter((edge) => picked.has(edge.name))
      .map((edge) => {
        const sign = letters[letter++ % letters.length] ?? 'A';
        legend.push({ letter: sign, text: `${cell.piece.name}: ${edge.name}` });
        return { sign, at: outward(put(halfWay(edge.spots)), middle), edge };
      });
    if (badges.length === 0) legend.push({ letter: '', text: cell.piece.name });
    return <Piece key={`${cell.piece.name} ${i}`} cell={cell} put={put} badges={badges} />;
  });
  return (
    <figure class={beside ? 'drawing beside' : 'drawing'} data-part="drawing">
      <svg viewBox={`0 0 ${across} ${high}`} role="img" aria-label={legend.map((l) => l.text).join('; ')}>
        {drawn}
      </svg>
      <figcaption>
        {legend.map((l) => (
          <span key={l.letter + l.text} class="legend">
            {l.letter !== '' && <b>{l.letter}</b>}
            <span>{l.text}</span>
          </span>
        ))}
        <span class="not-to-scale">not to scale</span>
      </figcaption>
    </figure>
  );
}

function Piece(props: {
  readonly cell: Cell;
  readonly put: (s: Spot) => Spot;
  readonly badges: readonly { readonly sign: string; readonly at: Spot; readonly edge: DrawnEdge }[];
}) {
  const { cell, put, badges } = props;
  const round = (edges: readonly DrawnEdge[]): string =>
    `${pathThrough(
      edges.flatMap((e) => e.spots),
      put,
    )}Z`;
  return (
    <g>
      <path class="piece" d={round(cell.edges)} />
      {cell.twins.length > 0 && <path class="piece" d={round(cell.twins)} />}
      {cell.piece.lines.map((line, i) => {
        const from = put({ x: toMm(line.from.x), y: toMm(line.from.y) });
        const to = put({ x: toMm(line.to.x), y: toMm(line.to.y) });
        return (
          <line
            key={`${line.kind} ${from.x} ${from.y} ${to.x} ${to.y} ${i}`}
            class={`inner ${line.kind}`}
            x1={from.x}
            y1={from.y}
            x2={to.x}
            y2={to.y}
          />
        );
      })}
      {badges.map(({ sign, edge }) => (
        <path key={sign} class="picked" d={pathThrough(edge.spots, put)} />
      ))}
      {badges.map(({ sign, at }) => (
        <g key={sign} class="badge">
          <circle cx={at.x} cy={at.y} r={15} />
          <text x={at.x} y={at.y + 5.5} text-anchor="middle">
            {sign}
          </text>
        </g>
      ))}
    </g>
  );
}
