import { describe, expect, it } from 'vitest';
import {
  broken,
  forced,
  foundBy,
  gate,
  join,
  orderOf,
  outOfTurn,
  pair,
  piece,
  twoTucks,
  work,
} from '../make.ts';

const front = piece('front', 'neck shoulder side hem');
const back = piece('back', 'neck shoulder side hem');
const side = join('side', 'front.side', 'back.side');
const tucks = (on = 'front', marker = 'chalk') =>
  work('tucks', 'tucks', on, { from: 'side', marker, family: twoTucks });

describe('cut and mark lines first', () => {
  it('puts cutting and marking before every work, join and try-on', () => {
    const running = orderOf({
      pieces: [front, back],
      works: [work('stay-stitch', 'stay', 'front', { edge: 'neck' })],
      joins: [side],
      gates: [gate('fit', 'side')],
    });
    expect(running.sequence.slice(0, 2)).toEqual(['a/cut-cotton/cut', 'a/cut-cotton/lines']);
    expect(foundBy(running, 'cut and mark lines first')).toEqual([
      'cut-cotton/lines → stay/stitch',
      'cut-cotton/lines → side/pin',
      'cut-cotton/lines → fit/fit',
    ]);
  });

  it('asks only for the cloths that a seam holds', () => {
    const running = orderOf({
      pieces: [front, back, piece('cap', 'lower upper end', { cloth: 'knit' })],
      joins: [side, join('top', 'cap.lower', 'front.neck')],
    });
    expect(forced(running, 'cut-knit/lines', 'top/pin')).toBe(true);
    expect(forced(running, 'cut-knit/lines', 'side/pin')).toBe(false);
  });
});

describe('prepare flat', () => {
  it('does flat work before the first join of its piece, and of no other piece', () => {
    const running = orderOf({
      pieces: [front, back, piece('yoke', 'upper lower end')],
      works: [work('tucks', 'tucks', 'yoke', { from: 'end', marker: 'chalk', family: twoTucks })],
      joins: [side, join('yoke-seam', 'back.neck', 'yoke.lower')],
    });
    expect(foundBy(running, 'prepare flat')).toEqual(['tucks/press → yoke-seam/pin']);
    expect(forced(running, 'tucks/press', 'side/pin')).toBe(false);
  });

  it('leaves what the maker may do when she likes', () => {
    const own = (when: string) => ({
      when,
      steps: [{ say: 'Embroider a name', station: 'hand', minutes: 60 }],
    });
    const at = (when: string) =>
      orderOf({ pieces: [front, back], works: [work('own', 'name', 'front', own(when))], joins: [side] });
    expect(forced(at('flat'), 'name/own-1', 'side/pin')).toBe(true);
    expect(forced(at('free'), 'name/own-1', 'side/pin')).toBe(false);
    expect(forced(at('late'), 'side/press', 'name/own-1')).toBe(true);
  });
});

describe('lowest layer first', () => {
  it('goes from tucks over stiffening and tape to beads, and from there to gathering', () => {
    const running = orderOf({
      pieces: [front],
      works: [
        work('gather', 'gathers', 'front', { edge: 'hem', marker: 'chalk' }),
        work('applied-tape', 'tape', 'front', {
          edge: 'neck',
          inset: '10 mm',
          tape: 'braid',
          marker: 'chalk',
        }),
        work('interfacing', 'stiff', 'front', { material: 'Organza' }),
        tucks(),
        work('stay-stitch', 'stay', 'front', { edge: 'neck' }),
      ],
    });
    expect(
      outOfTurn(running, [
        'stay/stitch',
        'tucks/mark',
        'tucks/press',
        'stiff/baste',
        'tape/mark',
        'tape/unbaste',
      ]),
    ).toEqual([]);
    expect(forced(running, 'tape/unbaste', 'gathers/mark')).toBe(true);
    expect(
      running.constraints.find((c) => c.before === 'a/tucks/press' && c.after === 'a/stiff/baste')?.because,
    ).toBe('tucks takes up cloth of the front, so what is placed on it comes after: stiff');
  });

  it('fuses before buttonholes are marked through the stiffened layer', () => {
    const running = orderOf({
      pieces: [piece('band', 'opening upper end')],
      works: [
        work('buttonholes', 'holes', 'band', {
          along: 'opening',
          count: 2,
          first: '20 mm',
          last: '80 mm',
          from: 'the top',
          button: { diameter: '11 mm', thickness: '2 mm' },
          direction: 'along',
          top: 'left',
          marker: 'chalk',
        }),
        work('interfacing', 'stiff', 'band', {
          material: 'Fusible',
          fuse: { degrees: 140, seconds: 12, coolMinutes: 0 },
        }),
      ],
    });
    expect(outOfTurn(running, ['stiff/sample', 'stiff/fuse', 'holes/mark', 'holes/stitch'])).toEqual([]);
    expect(forced(running, 'stiff/fuse', 'holes/mark')).toBe(true);
  });

  it('leaves works of one layer free of each other', () => {
    const running = orderOf({
      pieces: [front],
      works: [
        work('press-edge', 'one', 'front', { edge: 'hem', turn: '10 mm' }),
        work('press-edge', 'two', 'front', { edge: 'neck', turn: '10 mm' }),
      ],
    });
    expect(foundBy(running, 'lowest layer first')).toEqual([]);
  });
});

describe('tuck, then cut', () => {
  const block = piece('front', 'neck shoulder side hem', { cutAfterWork: true });
  const works = [
    work('stay-stitch', 'stay', 'front', { edge: 'neck' }),
    tucks(),
    work('folded-band', 'band', 'front', { edge: 'hem' }),
    work('gather', 'gathers', 'front', { edge: 'shoulder', marker: 'chalk' }),
  ];

  it('cuts the outline after all that takes up cloth and before all that needs an edge', () => {
    const running = orderOf({ pieces: [block, back], works, joins: [side] });
    expect(
      outOfTurn(running, [
        'tucks/press',
        'band/turn-1',
        'band/press',
        'outline-front/cut',
        'stay/stitch',
        'side/pin',
      ]),
    ).toEqual([]);
    expect(forced(running, 'outline-front/cut', 'gathers/mark')).toBe(true);
    expect(forced(running, 'outline-front/cut', 'side/pin')).toBe(true);
    expect(broken(running)).toEqual([]);
  });

  it('has no outline to cut where the piece is cut at once', () => {
    const running = orderOf({ pieces: [front, back], works: [tucks()], joins: [side] });
    expect(running.steps.has('a/outline-front/cut')).toBe(false);
    expect(foundBy(running, 'tuck, then cut')).toEqual([]);
  });
});

describe('let it rest', () => {
  const fuse = { degrees: 140, seconds: 12, coolMinutes: 15 };

  it('lets a fused piece cool before it is handled, and tells for how long', () => {
    const running = orderOf({
      pieces: [front, back],
      works: [work('interfacing', 'stiff', 'front', { material: 'Fusible', fuse })],
      joins: [side],
    });
    const rest = running.constraints.filter((c) => c.wait !== undefined);
    expect(rest.map((c) => [c.before, c.after, c.wait])).toEqual([['a/stiff/fuse', 'a/side/pin', 900]]);
  });

  it('lets a hem hang after every seam of its pieces', () => {
    const running = orderOf({
      pieces: [front, back],
      works: [
        work('hem', 'skirt-hem', 'front', {
          along: ['front.hem', 'back.hem'],
          turn: '20 mm',
          by: 'hand',
          hang: 24,
        }),
      ],
      joins: [side],
    });
    const [rest] = running.constraints.filter((c) => c.wait !== undefined);
    expect([rest?.before, rest?.after, rest?.wait]).toEqual(['a/side/press', 'a/skirt-hem/level', 86_400]);
  });

  it('lets what the maker lays to dry rest between her own steps and before the first join', () => {
    const running = orderOf({
      pieces: [front, back],
      works: [
        work('own', 'starch', 'front', {
          when: 'flat',
          steps: [
            { say: 'Dip it in starch', station: 'hand', minutes: 5, rest: 120 },
            { say: 'Iron it damp', station: 'iron', minutes: 5, rest: 10 },
          ],
        }),
      ],
      joins: [side],
    });
    expect(
      running.constraints.filter((c) => c.wait !== undefined).map((c) => [c.before, c.after, c.wait]),
    ).toEqual([
      ['a/starch/own-1', 'a/starch/own-2', 7200],
      ['a/starch/own-2', 'a/side/pin', 600],
    ]);
  });
});

describe('late work last', () => {
  it('hems and threads elastic when every seam that touches the pieces is finished', () => {
    const running = orderOf({
      pieces: [pair('leg', 'waist rise inseam foot')],
      works: [
        work('casing', 'waist', 'leg', {
          along: ['leg.waist', 'other:leg.waist'],
          ring: false,
          turn: '20 mm',
          elastic: '10 mm',
        }),
        work('ribbon', 'bow', 'leg', { ribbon: '500 mm', where: 'the foot' }),
      ],
      joins: [join('rise', 'leg.rise', 'other:leg.rise')],
    });
    expect(forced(running, 'rise/press', 'waist/turn')).toBe(true);
    expect(forced(running, 'rise/press', 'bow/thread')).toBe(true);
    expect(forced(running, 'waist/elastic', 'bow/thread')).toBe(true);
  });
});
