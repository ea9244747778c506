import type { Work, WorkKind } from '../outfit/outfit.ts';

/** What the rules need to know about a kind of work. */
export interface Kind {
  /**
   * `flat`: done before the piece is first joined. `free`: when the maker likes. `late`: after everything else that
   * touches the piece.
   */
  readonly when: 'flat' | 'free' | 'late';
  /** Works on one piece are done from the lowest layer up: first what takes up cloth, last what lies on top. */
  readonly layer: number;
  /** True where it takes up cloth, so that a piece cut after its work is cut after this. */
  readonly takesUp: boolean;
  /** True where unpicking it would cost days or leave a trace, so that a try-on should come before it. */
  readonly costly: boolean;
}

const kind = (when: Kind['when'], layer: number, extra: Partial<Kind> = {}): Kind => ({
  when,
  layer,
  takesUp: false,
  costly: false,
  ...extra,
});

/** Common practice, no source: the layers of work on a flat piece, from the cloth up. */
const kinds: Readonly<Record<WorkKind, Kind>> = {
  'stay-stitch': kind('flat', 0),
  tucks: kind('flat', 1, { takesUp: true }),
  'crossed-tucks': kind('flat', 1, { takesUp: true }),
  'folded-band': kind('flat', 2, { takesUp: true }),
  interfacing: kind('flat', 3),
  'press-edge': kind('flat', 4),
  'bind-edge': kind('flat', 4),
  own: kind('flat', 5),
  'applied-tape': kind('flat', 5),
  'lattice-beads': kind('flat', 6, { costly: true }),
  gather: kind('flat', 7),
  buttonholes: kind('free', 8, { costly: true }),
  hem: kind('late', 9),
  casing: kind('late', 9),
  ribbon: kind('late', 10),
};

/** The kind of a work, with what the maker said of it. */
export const kindOf = (work: Work): Kind =>
  work.kind === 'own'
    ? {
        ...kinds.own,
        when: work.when,
        layer: work.when === 'late' ? kinds.hem.layer : kinds.own.layer,
        costly: work.steps.some((step) => step.final),
      }
    : kinds[work.kind];
