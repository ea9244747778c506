import type { Cloth } from '../../outfit/outfit.ts';

const SAY: Readonly<Record<Cloth['iron'], string>> = {
  0: 'Do not iron',
  110: 'Iron at 110 °C at most: one dot',
  150: 'Iron at 150 °C at most: two dots',
  200: 'Iron at 200 °C at most: three dots',
};

/** What a care label says of the iron, with dots as ISO 3758 has them; the drawing is ours. */
export function IronLabel({ iron }: { readonly iron: Cloth['iron'] }) {
  const dots = [0, 110, 150, 200].indexOf(iron);
  return (
    <svg class="iron-label" viewBox="0 0 48 34" role="img" aria-label={SAY[iron]}>
      <path d="M3 30H45L41 14Q39.6 9 34 9H14M3 30Q5 17 19 15H41" />
      {Array.from({ length: dots }, (_, i) => (
        <circle key={i} cx={25 + (i - (dots - 1) / 2) * 8} cy="23" r="2.6" />
      ))}
      {dots === 0 && <path d="M5 4 43 33M43 4 5 33" />}
    </svg>
  );
}
