import { subtract } from '../../src/length/index.ts';
import { boundingBox, type Polygon } from '../../src/shape/index.ts';

/** How wide and how high a shape is. */
export function sizeOf(shape: Polygon) {
  const { left, top, right, bottom } = boundingBox(shape);
  return { width: subtract(right, left), height: subtract(bottom, top) };
}
