import { describe, expect, it } from 'vitest';
import { drawn, inMm } from './read.ts';

const known = (attributes: string, d = 'M0 0H9V9H0Z') =>
  drawn(inMm(`<path ${attributes} d="${d}"/>`)).lines[0]!.known;

describe('what a file written here says of a piece', () => {
  it('is taken up', () => {
    expect(
      known('data-piece="front" data-cut="pair" data-grain="-12.5" data-edges="neck 2 front-seam 1 hem 1"'),
    ).toEqual({
      piece: 'front',
      cut: 'pair',
      grain: -12.5,
      edges: [
        { name: 'neck', count: 2 },
        { name: 'front-seam', count: 1 },
        { name: 'hem', count: 1 },
      ],
    });
  });

  it('is left where the line has been drawn anew since, or does not say all', () => {
    expect(known('data-cut="pair" data-edges="neck 2 hem 1"')).toBeUndefined();
    expect(known('data-cut="pair" data-edges="neck 4 hem 0"')).toBeUndefined();
    expect(known('data-cut="two" data-edges="neck 4"')).toBeUndefined();
    expect(known('data-cut="one" data-edges="neck 2 hem 1"', 'M0 0H9V9H0')).toBeUndefined();
    expect(known('data-cut="one"')).toBeUndefined();
    expect(known('data-cut="one" data-grain="aslant" data-edges="neck 4"')).toMatchObject({
      grain: 0,
      piece: '',
    });
  });
});
