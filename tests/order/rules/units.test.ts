import { describe, expect, it } from 'vitest';
import {
  broken,
  forced,
  foundBy,
  gate,
  holes,
  join,
  orderOf,
  outOfTurn,
  pair,
  piece,
  twoTucks,
  work,
} from '../make.ts';

const sleeve = pair('sleeve', 'cap front-seam wrist back-seam');
const cuff = { unit: 'cuff' };
const outer = pair('outer', 'upper front-end lower back-end', cuff);
const inner = pair('inner', 'upper front-end lower back-end', cuff);
const frill = pair('frill', 'inner start outer end', cuff);
const ends = join('ends', 'outer.front-end outer.back-end', 'inner.front-end inner.back-end', {
  seam: 'ends',
});
const frillSeam = join('frill-seam', 'frill.inner', 'outer.lower', { seam: 'covered', cover: 'inner.lower' });
const cuffSeam = join('cuff-seam', 'sleeve.wrist', 'outer.upper', { seam: 'covered', cover: 'inner.upper' });
const long = join('long', 'sleeve.front-seam', 'sleeve.back-seam', { closes: true, stopsAt: 'the cuff' });
const cuffHoles = work('buttonholes', 'cuff-holes', 'outer', {
  ...holes,
  along: 'front-end',
  through: ['inner'],
  direction: 'across',
  top: 'each',
});
const cuffed = orderOf({
  pieces: [sleeve, outer, inner, frill],
  works: [
    cuffHoles,
    work('press-edge', 'turn', 'inner', { edge: 'upper', turn: '10 mm' }),
    work('gather', 'gathers', 'sleeve', { edge: 'wrist', marker: 'chalk' }),
  ],
  joins: [long, cuffSeam, frillSeam, ends],
});

describe('make up the unit first', () => {
  it('makes up the cuff, holes and all, before it meets the sleeve; its buttons may wait', () => {
    for (const first of ['ends/press', 'frill-seam/cover', 'turn/press', 'cuff-holes/slit']) {
      expect(forced(cuffed, first, 'cuff-seam/pin')).toBe(true);
    }
    expect(forced(cuffed, 'cuff-holes/buttons', 'cuff-seam/pin')).toBe(false);
  });

  it('asks nothing where no unit is named', () => {
    const loose = [outer, inner, frill].map(({ unit: _, ...rest }) => rest);
    const running = orderOf({ pieces: [sleeve, ...loose], joins: [cuffSeam, ends] });
    expect(foundBy(running, 'make up the unit first')).toEqual([]);
  });
});

describe('the cover hangs first', () => {
  it('sews the ends of inner and outer cuff before the seam that the inner is sewn over', () => {
    expect(forced(cuffed, 'ends/press', 'frill-seam/pin')).toBe(true);
    expect(forced(cuffed, 'ends/press', 'cuff-seam/pin')).toBe(true);
  });
});

describe('the seams of a cuffed sleeve', () => {
  it('come in the maker’s order, the long seam last and stopping at the cuff', () => {
    expect(
      outOfTurn(cuffed, [
        'turn/press',
        'ends/stitch',
        'frill-seam/stitch',
        'frill-seam/cover',
        'cuff-holes/mark',
        'cuff-holes/slit',
        'cuff-seam/stitch',
        'cuff-seam/cover',
        'long/stitch',
      ]),
    ).toEqual([]);
    expect(forced(cuffed, 'cuff-seam/cover', 'long/pin')).toBe(true);
    expect(cuffed.steps.get('a/long/stitch')?.say).toBe('Stitch the long, stopping at the cuff');
    expect(cuffed.steps.get('a/cuff-seam/stitch')?.say).toContain('held away');
    expect(broken(cuffed)).toEqual([]);
  });
});

const fronts = [pair('front', 'neck side hem opening'), pair('facing', 'neck side hem opening')];
const faced = join('faced', 'front.opening', 'facing.opening', { seam: 'turned' });
const frontHoles = work('buttonholes', 'holes', 'front', { ...holes, through: ['facing'] });

describe('all layers before holes', () => {
  it('brings the layers together before the holes go through them', () => {
    const running = orderOf({ pieces: fronts, works: [frontHoles], joins: [faced] });
    expect(foundBy(running, 'all layers before holes')).toEqual(['faced/press → holes/mark']);
  });

  it('leaves seams alone that hold only one of the layers', () => {
    const running = orderOf({
      pieces: [...fronts, piece('band', 'top side bottom', { cut: 'fold' })],
      works: [frontHoles],
      joins: [join('band-seam', 'front.side', 'band.top')],
    });
    expect(foundBy(running, 'all layers before holes')).toEqual([]);
  });
});

describe('finish the ends before holes', () => {
  it('finishes the hem and the neck that the row of holes runs into', () => {
    const running = orderOf({
      pieces: [pair('front', 'neck side hem opening'), piece('band', 'top side', { cut: 'fold' })],
      works: [
        { ...frontHoles, through: [] },
        work('hem', 'hem', 'front', { along: ['front.hem'], turn: '15 mm', by: 'machine' }),
      ],
      joins: [join('neck', 'front.neck', 'band.top')],
    });
    expect(foundBy(running, 'finish the ends before holes')).toEqual([
      'neck/press → holes/mark',
      'hem/stitch → holes/mark',
    ]);
  });
});

describe('buttonholes', () => {
  const running = orderOf({
    pieces: [pair('front', 'neck side hem opening')],
    works: [work('buttonholes', 'holes', 'front', holes)],
  });

  it('are tried on a sample, sewn, slit, and only then are buttons marked through them', () => {
    expect(
      outOfTurn(running, [
        'holes/sample',
        'holes/mark',
        'holes/stitch',
        'holes/slit',
        'holes/mark-buttons',
        'holes/buttons',
      ]),
    ).toEqual([]);
    const rules = new Map(running.constraints.map((c) => [c.after, c.rule]));
    expect(rules.get('a/holes/mark')).toBe('sample first');
    expect(rules.get('a/holes/mark-buttons')).toBe('buttonhole before button');
    expect(running.constraints.find((c) => c.after === 'a/holes/mark-buttons')?.waivable).toBe(false);
  });

  it('go on the side that lies on top, the buttons on the other', () => {
    expect(running.steps.get('a/holes/stitch')?.say).toBe('Stitch 2 buttonholes on the left front');
    expect(running.steps.get('a/holes/buttons')?.say).toBe('Sew 2 buttons on the right front');
    const right = orderOf({
      pieces: [pair('front', 'neck side hem opening')],
      works: [work('buttonholes', 'holes', 'front', { ...holes, top: 'right' })],
    });
    expect(right.steps.get('a/holes/stitch')?.say).toBe('Stitch 2 buttonholes on the right front');
    expect(right.steps.get('a/holes/mark-buttons')?.say).toContain('on the left front');
  });
});

describe('put together for the try-on', () => {
  const body = [piece('front', 'neck shoulder side hem'), piece('back', 'neck shoulder side hem')];
  const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder');

  it('sews what the try-on needs before it, and nothing more', () => {
    const running = orderOf({
      pieces: body,
      joins: [shoulder, join('side', 'front.side', 'back.side')],
      gates: [gate('fit', 'shoulder')],
    });
    expect(foundBy(running, 'put together for the try-on')).toEqual(['shoulder/press → fit/fit']);
    expect(forced(running, 'side/stitch', 'fit/fit')).toBe(false);
  });

  it('bastes a tacked seam for it, stitches that after, and takes the basting out before pressing', () => {
    const running = orderOf({
      pieces: body,
      joins: [shoulder, join('side', 'front.side', 'back.side', { tacked: true })],
      gates: [gate('fit', 'shoulder side')],
    });
    expect(
      outOfTurn(running, [
        'shoulder/press',
        'side/baste',
        'fit/fit',
        'side/stitch',
        'side/unbaste',
        'side/press',
      ]),
    ).toEqual([]);
    expect(forced(running, 'side/baste', 'fit/fit')).toBe(true);
    expect(forced(running, 'fit/fit', 'side/stitch')).toBe(true);
  });
});

describe('tack the shape, then decorate', () => {
  const body = [piece('front', 'neck shoulder side hem'), piece('back', 'neck shoulder side hem')];
  const side = join('side', 'front.side', 'back.side', { closes: true });
  const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder');
  const works = [
    work('tucks', 'tucks', 'front', { from: 'side', marker: 'chalk', family: twoTucks }),
    work('applied-tape', 'tape', 'front', { edge: 'hem', inset: '10 mm', tape: 'braid', marker: 'chalk' }),
  ];

  it('tucks before the tacking; between tacking and taking it out, nothing but the try-on', () => {
    const running = orderOf({
      pieces: body,
      works,
      joins: [side],
      gates: [gate('fit', '', { tack: ['side'] })],
    });
    expect(
      outOfTurn(running, ['tucks/press', 'fit/tack', 'fit/fit', 'fit/untack', 'tape/mark', 'side/pin']),
    ).toEqual([]);
    expect(forced(running, 'tucks/press', 'fit/tack')).toBe(true);
    expect(forced(running, 'fit/untack', 'tape/mark')).toBe(true);
    expect(forced(running, 'fit/untack', 'side/pin')).toBe(true);
  });

  it('may have some seams sewn for it and others tacked', () => {
    const running = orderOf({
      pieces: body,
      works,
      joins: [side, shoulder],
      gates: [gate('fit', 'shoulder', { tack: ['side'] })],
    });
    expect(
      outOfTurn(running, ['tucks/press', 'shoulder/press', 'fit/tack', 'fit/fit', 'fit/untack', 'side/pin']),
    ).toEqual([]);
  });
});
