import { describe, expect, it } from 'vitest';
import {
  broken,
  forced,
  gate,
  join,
  lattice,
  orderOf,
  outOfTurn,
  pair,
  piece,
  twoTucks,
  work,
} from '../make.ts';

const sleeve = pair('sleeve', 'upper front-seam lower back-seam');
const long = join('long', 'sleeve.front-seam', 'sleeve.back-seam');
const crossed = (marker: string) =>
  work('crossed-tucks', 'crossed', 'sleeve', {
    from: 'upper',
    marker,
    families: [
      { ...twoTucks, angle: 45 },
      { ...twoTucks, angle: -45 },
    ],
  });
const sleeveWith = (marker: string) => orderOf({ pieces: [sleeve], works: [crossed(marker)], joins: [long] });

describe('crossed tucks', () => {
  it('sew all of one direction, press it, then the other', () => {
    const running = sleeveWith('chalk');
    const steps = ['mark', 'pin-1', 'stitch-1', 'press-1', 'pin-2', 'stitch-2', 'press-2'];
    expect(
      outOfTurn(
        running,
        steps.map((step) => `crossed/${step}`),
      ),
    ).toEqual([]);
    expect(running.constraints.find((c) => c.after === 'a/crossed/pin-2')?.rule).toBe(
      'one way, press, then the other',
    );
  });

  it('lose heat-fading marks at the first pressing: one concern, and marked again before the second pinning', () => {
    const running = sleeveWith('heat-fading');
    const [concern] = running.concerns;
    expect(running.concerns).toHaveLength(1);
    expect(concern).toMatchObject({
      mark: 'a/crossed/mark',
      killer: 'a/crossed/press-1',
      by: 'heat',
      needed: 'a/crossed/pin-2',
      at: '/garments/0/works/0/marker',
    });
    expect(concern?.say).toContain('would be gone');
    expect(concern?.otherMarkers.map((m) => m.id)).toEqual(['chalk', 'thread']);
    const again = concern?.again ?? '';
    const place = (id: string) => running.sequence.indexOf(id);
    expect(place(again)).toBeGreaterThan(place('a/crossed/press-1'));
    expect(place(again)).toBeLessThan(place('a/crossed/pin-2'));
    expect(running.steps.get(again)?.say).toContain('again');
    expect(running.constraints.filter((c) => c.after === again || c.before === again)).not.toHaveLength(0);
    expect(broken(running)).toEqual([]);
  });

  for (const marker of ['chalk', 'thread', 'air-fading', 'water-fading']) {
    it(`keep ${marker} marks through the pressing`, () => {
      const running = sleeveWith(marker);
      expect(running.concerns).toEqual([]);
      expect([...running.steps.keys()].filter((id) => id.includes('mark-again'))).toEqual([]);
    });
  }
});

describe('a heat-fading mark', () => {
  const fronts = [piece('front', 'neck side hem'), piece('back', 'neck side hem')];
  const tape = work('applied-tape', 'tape', 'front', {
    edge: 'hem',
    inset: '10 mm',
    tape: 'braid',
    marker: 'heat-fading',
  });
  const edge = work('own', 'iron-first', 'front', {
    when: 'free',
    steps: [{ say: 'Press the front smooth', station: 'iron', minutes: 2 }],
  });

  it('is used before a free pressing, or made after it, without marking twice', () => {
    const running = orderOf({ pieces: fronts, works: [tape, edge] });
    expect(running.concerns).toEqual([]);
    const [mark, baste, press] = ['tape/mark', 'tape/baste', 'iron-first/own-1'].map((step) =>
      running.sequence.indexOf(`a/${step}`),
    );
    expect((press ?? 0) < (mark ?? 0) || (press ?? 0) > (baste ?? 0)).toBe(true);
    expect(
      forced(running, 'iron-first/own-1', 'tape/mark') || forced(running, 'tape/stitch', 'iron-first/own-1'),
    ).toBe(true);
  });

  it('is not made before a pressing that the description puts first', () => {
    const running = orderOf({
      pieces: fronts,
      works: [tape, work('press-edge', 'turn', 'front', { edge: 'side', turn: '10 mm' })],
    });
    expect(forced(running, 'turn/press', 'tape/mark')).toBe(true);
    expect(running.concerns).toEqual([]);
  });

  it('takes no harm from an iron on another piece', () => {
    const running = orderOf({
      pieces: fronts,
      works: [tape, work('press-edge', 'turn', 'back', { edge: 'side', turn: '10 mm' })],
    });
    expect(running.constraints.filter((c) => c.rule === 'marks must live')).toEqual([]);
  });
});

describe('a water-fading mark', () => {
  const wet = (when: string) =>
    work('own', 'starch', 'front', {
      when,
      steps: [{ say: 'Dip the front in starch', station: 'hand', minutes: 5, wets: true }],
    });
  const beads = work('lattice-beads', 'beads', 'front', { ...lattice, marker: 'water-fading' });
  const front = piece('front', 'neck side hem');

  it('is made after a wetting that is done flat, before the beads', () => {
    const running = orderOf({ pieces: [front], works: [beads, wet('flat')] });
    expect(outOfTurn(running, ['starch/own-1', 'beads/mark', 'beads/bead'])).toEqual([]);
    expect(running.concerns).toEqual([]);
  });

  it('is used up before a wetting that the maker does when she likes', () => {
    const running = orderOf({ pieces: [front], works: [beads, wet('free')] });
    expect(
      forced(running, 'beads/bead', 'starch/own-1') || forced(running, 'starch/own-1', 'beads/mark'),
    ).toBe(true);
    expect(running.concerns).toEqual([]);
  });
});

describe('an air-fading mark', () => {
  const pieces = [pair('frill', 'upper end lower start'), pair('front', 'neck side hem opening')];
  const gathers = work('gather', 'gathers', 'frill', { edge: 'upper', marker: 'air-fading' });
  const frilled = {
    pieces,
    works: [gathers],
    joins: [
      join('frill-ends', 'frill.start', 'frill.end'),
      join('frill-seam', 'frill.upper', 'front.hem', { worked: 'round' }),
    ],
    gates: [gate('fit', 'frill-ends')],
  };
  const sized = {
    pieces,
    works: [
      gathers,
      work('own', 'size', 'frill', {
        when: 'flat',
        steps: [
          { say: 'Size the frill', station: 'hand', minutes: 5, rest: 180 },
          { say: 'Shake it out', station: 'hand', minutes: 1 },
        ],
      }),
    ],
    joins: [join('frill-seam', 'frill.upper', 'front.hem')],
  };
  const mine = (before: string, after: string) => ({ added: [{ before, after, because: 'so it suits me' }] });

  it('is used up before a try-on, where that is free', () => {
    const running = orderOf(frilled);
    expect(forced(running, 'frill-seam/pin', 'fit/fit')).toBe(true);
    expect(running.concerns).toEqual([]);
  });

  it('would be gone after a try-on that is forced between', () => {
    const running = orderOf(frilled, mine('a/fit/fit', 'a/frill-seam/pin'));
    expect(running.concerns.map((c) => [c.mark, c.killer, c.by, c.needed])).toEqual([
      ['a/gathers/mark', 'a/fit/fit', 'time', 'a/frill-seam/pin'],
    ]);
    const again = running.sequence.indexOf(running.concerns[0]?.again ?? '');
    expect(again).toBeGreaterThan(running.sequence.indexOf('a/fit/fit'));
    expect(again).toBeLessThan(running.sequence.indexOf('a/frill-seam/pin'));
  });

  it('is made after a long rest, where that is free', () => {
    const running = orderOf(sized);
    expect(forced(running, 'size/own-2', 'gathers/mark')).toBe(true);
    expect(running.concerns).toEqual([]);
  });

  it('would be gone after a long rest that is forced between', () => {
    const waived = new Set(['lowest layer first|a/size/own-2|a/gathers/mark']);
    const running = orderOf(sized, { ...mine('a/gathers/mark', 'a/size/own-1'), waived });
    expect(running.concerns.map((c) => [c.killer, c.by])).toEqual([['a/size/own-2', 'time']]);
    expect(broken(running)).toEqual([]);
  });
});
