/**
 * Where a figure or a rule comes from. Every constant in the arithmetic and every rule of the order carries one,
 * so that the maker can see how far to trust it.
 */
export type Source =
  | { readonly kind: 'published'; readonly title: string; readonly year: string; readonly where: string }
  | { readonly kind: 'practice' }
  | { readonly kind: 'memory' }
  | { readonly kind: 'geometry' };

/** A rule of thumb that many sewers share and nobody seems to have published. */
export const practice: Source = { kind: 'practice' };
/** A value remembered and not looked up. */
export const memory: Source = { kind: 'memory' };
/** A consequence of measure and shape alone; needs no authority. */
export const geometry: Source = { kind: 'geometry' };

/** A published source: title, year as printed on it (or `undated`), and where in it. */
export const published = (title: string, year: string, where: string): Source => ({
  kind: 'published',
  title,
  year,
  where,
});

/** The source as a maker reads it. */
export function writeSource(source: Source): string {
  switch (source.kind) {
    case 'published':
      return `${source.title} (${source.year}), ${source.where}`;
    case 'practice':
      return 'common practice, no source';
    case 'memory':
      return 'from memory';
    case 'geometry':
      return 'follows from the measures';
  }
}
