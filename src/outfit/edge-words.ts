/** Names of edges that say only on which side of the piece they lie. */
const SIDES = new Set([
  'upper',
  'lower',
  'outer',
  'inner',
  'top',
  'bottom',
  'left',
  'right',
  'front',
  'back',
]);

/** An edge as a maker names it: `neck`, `lower edge`, `front end`. */
export const edgeWords = (edge: string): string =>
  `${edge.replaceAll('-', ' ')}${SIDES.has(edge) ? ' edge' : ''}`;

/** `the neck, the armhole and the hem` */
export const listWords = (names: readonly string[]): string =>
  names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}` : (names[0] ?? '');
