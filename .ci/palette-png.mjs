import { crc32, deflateSync } from 'node:zlib';

/** Colours of a picture: enough for flat areas and their soft edges. */
const COLOURS = 64;

/** @param {string} kind @param {Uint8Array} data */
function chunk(kind, data) {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const [long, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  long.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([long, body, sum]);
}

/**
 * A square picture as a PNG with a palette (ISO/IEC 15948): a third of the size of one with all its colours. Colours past
 * the commonest 64 become the nearest of those.
 *
 * @param {Uint8Array} rgba four bytes a pixel, row by row
 * @param {number} side pixels along a side
 */
export function palettePng(rgba, side) {
  /** @type {Map<number, number>} */
  const counts = new Map();
  const view = new DataView(rgba.buffer, rgba.byteOffset, rgba.byteLength);
  for (let i = 0; i < rgba.length; i += 4) {
    const colour = view.getUint32(i);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const palette = [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0]).slice(0, COLOURS);
  const parts = palette.map(([c]) => [c >>> 24, (c >>> 16) & 255, (c >>> 8) & 255, c & 255]);
  /** @type {Map<number, number>} */
  const nearest = new Map(palette.map(([colour], i) => [colour, i]));
  /** @param {number} colour */
  const indexOf = (colour) => {
    const known = nearest.get(colour);
    if (known !== undefined) return known;
    const own = [colour >>> 24, (colour >>> 16) & 255, (colour >>> 8) & 255, colour & 255];
    const away = parts.map((part) => part.reduce((sum, value, k) => sum + (value - (own[k] ?? 0)) ** 2, 0));
    const best = away.indexOf(Math.min(...away));
    nearest.set(colour, best);
    return best;
  };
  const rows = Buffer.alloc(side * (side + 1));
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1)
      rows[y * (side + 1) + 1 + x] = indexOf(view.getUint32((y * side + x) * 4));
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('PLTE', Uint8Array.from(parts.flatMap((part) => part.slice(0, 3)))),
    chunk('tRNS', Uint8Array.from(parts.map((part) => part[3] ?? 255))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
