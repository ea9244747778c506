import { describe, expect, it } from 'vitest';
import { broken, forced, foundBy, gate, holes, join, lattice, orderOf, pair, piece, work } from '../make.ts';

const RULE = 'try on before what cannot be undone';
const body = [
  pair('front', 'neck shoulder side hem opening'),
  piece('back', 'neck shoulder side hem', { cut: 'fold' }),
];
const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder');
const side = join('side', 'front.side', 'back.side', { closes: true });

describe('try on before what cannot be undone', () => {
  it('slits no buttonhole before the fit is known', () => {
    const running = orderOf({
      pieces: body,
      works: [work('buttonholes', 'holes', 'front', holes)],
      joins: [shoulder],
      gates: [gate('fit', 'shoulder')],
    });
    expect(foundBy(running, RULE)).toEqual(['fit/fit → holes/slit']);
    expect(forced(running, 'fit/fit', 'holes/slit')).toBe(true);
    expect(forced(running, 'fit/fit', 'holes/mark')).toBe(false);
  });

  it('puts days of beads after it, as long as the seam it needs does not need the beads', () => {
    const beaded = (on: string) =>
      orderOf({
        pieces: [...body, pair('sleeve', 'cap front-seam wrist back-seam')],
        works: [work('lattice-beads', 'beads', on, { ...lattice, marker: 'chalk' })],
        joins: [shoulder, join('long', 'sleeve.front-seam', 'sleeve.back-seam')],
        gates: [gate('fit', 'shoulder')],
      });
    expect(forced(beaded('sleeve'), 'fit/fit', 'beads/mark')).toBe(true);
    expect(beaded('sleeve').constraints.find((c) => c.rule === RULE)?.because).toBe(
      'fit comes first: beads would cost days to do again',
    );
    // Beads on the front lie flat, so they come before the shoulder that the try-on needs.
    const before = beaded('front');
    expect(foundBy(before, RULE)).toEqual([]);
    expect(forced(before, 'beads/bead', 'fit/fit')).toBe(true);
  });

  it('says the same of the maker’s own final steps', () => {
    const running = orderOf({
      pieces: body,
      works: [
        work('own', 'vent', 'back', {
          when: 'free',
          steps: [{ say: 'Slit the back for the wings', station: 'cut', minutes: 5, final: true }],
        }),
      ],
      joins: [shoulder, side],
      gates: [gate('fit', 'shoulder')],
    });
    expect(foundBy(running, RULE)).toContain('fit/fit → vent/own-1');
  });

  it('turns hems and casings where the fit wants them', () => {
    const running = orderOf({
      pieces: body,
      works: [
        work('hem', 'hem', 'back', {
          along: ['front.hem', 'back.hem', 'other:back.hem', 'other:front.hem'],
          turn: '15 mm',
          by: 'machine',
        }),
      ],
      joins: [shoulder, side],
      gates: [gate('fit', 'shoulder side')],
    });
    const found = running.constraints.find((c) => c.rule === RULE);
    expect([found?.before, found?.after, found?.because]).toEqual([
      'a/fit/fit',
      'a/hem/level',
      'fit comes first: the fit decides where hem lies',
    ]);
  });

  it('stands back where two try-ons would each wait for the other', () => {
    const running = orderOf({
      pieces: body,
      works: [work('buttonholes', 'holes', 'front', holes)],
      joins: [shoulder, side],
      gates: [gate('first', 'shoulder'), gate('second', 'side')],
    });
    expect(broken(running)).toEqual([]);
    expect(forced(running, 'first/fit', 'holes/slit')).toBe(true);
    expect(forced(running, 'second/fit', 'holes/slit')).toBe(true);
  });
});
