import type { Sketch } from '../../outfit/units/sketch.ts';

const round = (n: number): number => Math.round(n * 10) / 10;

/** A unit as it looks when it is finished, small; hidden from readers because its name stands beside it. */
export function SketchPicture({ sketch }: { readonly sketch: Sketch }) {
  return (
    <svg class="sketch" viewBox="0 0 100 100" aria-hidden="true">
      {sketch.map(({ pen, points, closed }, i) => (
        <path
          // The lines of a sketch never change places.
          key={`${pen} ${i}`}
          class={`sketch-${pen}`}
          d={`M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${closed ? 'Z' : ''}`}
        />
      ))}
    </svg>
  );
}
