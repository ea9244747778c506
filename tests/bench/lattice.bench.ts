import { diamonds, type LatticeMade, lattice } from '../../src/cloth/lattice.ts';
import { mm } from '../../src/length/index.ts';
import { flattenOutline, type Outline, type Polygon, pointOf } from '../../src/shape/index.ts';
import { ratio } from './ratio.ts';

const MOST_MS = 50;

/** A sleeve with a curved head, in mm: hollow and round, like what beads are laid on. */
const at = (x: number, y: number) => pointOf(mm(x), mm(y));
const sleeve: Outline = {
  start: at(0, 125),
  edges: [
    {
      name: 'head',
      segments: [
        { kind: 'curve', first: at(87, 125), second: at(114, 0), to: at(207, 0) },
        { kind: 'curve', first: at(299, 0), second: at(342, 125), to: at(425, 125) },
      ],
    },
    { name: 'front', segments: [{ kind: 'line', to: at(404, 560) }] },
    { name: 'wrist', segments: [{ kind: 'line', to: at(20, 560) }] },
    { name: 'back', segments: [{ kind: 'line', to: at(0, 125) }] },
  ],
};
const shape = flattenOutline(sleeve, mm(0.1));

/** Diamonds so small that about so many crossings lie on the sleeve. */
function closeness(wanted: number): number {
  let [low, high] = [0.2, 50];
  for (let round = 0; round < 24; round++) {
    const middle = Math.sqrt(low * high);
    if (made(middle).crossings > wanted) low = middle;
    else high = middle;
  }
  return high;
}

function made(size: number): LatticeMade {
  const found = lattice({
    outline: shape,
    clear: mm(6),
    families: diamonds(mm(size), mm(size * 1.4), at(207, 300)),
  });
  if (!found.ok) throw new Error(found.error.wrong);
  return found.value;
}

/**
 * The least that it could cost: the corners of diamonds, straight from their two indices, each asked whether it lies within
 * (crossings of a ray with the sides that reach its height), and only counted.
 */
function plainCount(within: Polygon, size: number): number {
  const [w, h] = [size * 1e6, size * 1.4e6];
  const through = at(207, 300);
  const [top, bottom] = [Math.min(...within.map((p) => p.y)), Math.max(...within.map((p) => p.y))];
  let count = 0;
  for (let row = Math.ceil(((top - through.y) * 2) / h); through.y + (row * h) / 2 <= bottom; row++) {
    const y = through.y + (row * h) / 2;
    const cuts: number[] = [];
    for (let i = 0; i < within.length; i++) {
      const [p, q] = [within[i], within[(i + 1) % within.length]];
      if (!p || !q || p.y <= y === q.y <= y) continue;
      cuts.push(p.x + ((y - p.y) * (q.x - p.x)) / (q.y - p.y));
    }
    cuts.sort((a, b) => a - b);
    const odd = row % 2 === 0 ? 0 : w / 2;
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const from = Math.ceil(((cuts[i] ?? 0) - through.x - odd) / w);
      for (let k = from; through.x + odd + k * w <= (cuts[i + 1] ?? 0); k++) count++;
    }
  }
  return count;
}

/** What one run takes of the processor, in ms, clearing up included: what else the machine does does not count. */
function once(size: number): number {
  const start = process.cpuUsage();
  made(size);
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

const times: number[] = [];
for (const wanted of [12_500, 25_000, 50_000, 100_000]) {
  const size = closeness(wanted);
  const { within, crossings, lines } = made(size);
  const plain = plainCount(within, size);
  if (Math.abs(crossings - plain) > plain * 0.001)
    throw new Error(`${crossings} crossings, but ${plain} by counting.`);
  ratio(
    `${crossings} crossings of ${lines.length} lines, clipped and counted, against counting corners`,
    () => made(size),
    () => plainCount(within, size),
  );
  const best = Math.min(...Array.from({ length: 40 }, () => once(size)));
  console.log(`  least of 40 runs ${best.toFixed(1)} ms of the processor`);
  times.push(best / crossings);
  if (wanted === 100_000 && best > MOST_MS)
    throw new Error(
      `100 000 crossings took ${best.toFixed(1)} ms of the processor; ${MOST_MS} ms is the most.`,
    );
}
const [first = 0, , , last = 0] = times;
console.log(
  `  a crossing costs ${(last / first).toFixed(2)} times as much among 100 000 as among 12 500; 1 is linear`,
);
