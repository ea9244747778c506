import { describe, expect, it } from 'vitest';
import { broken, forced, foundBy, join, orderOf, outOfTurn, pair, piece, twoTucks, work } from '../make.ts';

/** A back between two fronts: shoulder, armhole and side on each. */
const body = [
  pair('front', 'neck shoulder armhole side hem opening'),
  piece('back', 'neck shoulder armhole side hem', { cut: 'fold' }),
];
const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder');
const side = join('side', 'front.side', 'back.side', { closes: true });
const collar = piece('collar', 'neck outer end', { cut: 'fold' });
const neck = join(
  'neck',
  'front.neck back.neck other:back.neck other:front.neck',
  'collar.neck other:collar.neck',
);
const sleeve = pair('sleeve', 'cap front-seam wrist back-seam');
const sleeveSeam = join('sleeve-seam', 'sleeve.front-seam', 'sleeve.back-seam');

/** Panels that meet over the shoulder, with a ruffle caught between. */
const panels = [
  pair('centre', 'neck shoulder panel hem opening'),
  piece('back', 'neck shoulder panel hem', { cut: 'fold' }),
  pair('side-front', 'shoulder armhole side hem panel'),
  pair('side-back', 'shoulder armhole side hem panel'),
  pair('ruffle', 'inner end outer start'),
];
const centreShoulder = join('centre-shoulder', 'centre.shoulder', 'back.shoulder');
const sideShoulder = join('side-shoulder', 'side-front.shoulder', 'side-back.shoulder');
const panel = (basteTo: 'this' | 'to') =>
  join('panel', 'centre.panel back.panel', 'side-front.panel side-back.panel', {
    catches: [{ trim: 'ruffle.inner', basteTo, depth: '10 mm' }],
  });
const panelled = (basteTo: 'this' | 'to') =>
  orderOf({ pieces: panels, joins: [panel(basteTo), sideShoulder, centreShoulder] });

describe('chain is whole', () => {
  it('sews the seams that make the run one before what runs over them', () => {
    const running = orderOf({ pieces: [...body, collar], joins: [neck, shoulder, side] });
    expect(forced(running, 'shoulder/stitch', 'neck/pin')).toBe(true);
    expect(foundBy(running, 'chain is whole')).toEqual([
      'shoulder/stitch → neck/pin',
      'shoulder/stitch → neck/pin',
    ]);
    expect(running.constraints.find((c) => c.rule === 'chain is whole')?.because).toBe(
      'the neck runs over the shoulder, so that seam is sewn first to make one run',
    );
  });

  it('needs a ring closed all round: an armhole asks for shoulder and side, the sleeve for its own seam', () => {
    const set = join('armhole', 'front.armhole back.armhole', 'sleeve.cap', { ring: true, worked: 'round' });
    const running = orderOf({ pieces: [...body, sleeve], joins: [set, shoulder, side, sleeveSeam] });
    for (const first of ['shoulder/stitch', 'side/stitch', 'sleeve-seam/stitch']) {
      expect(forced(running, first, 'armhole/pin')).toBe(true);
    }
  });

  it('holds for a hem that runs over the side seams', () => {
    const hem = work('hem', 'hem', 'back', {
      along: ['front.hem', 'back.hem', 'other:back.hem', 'other:front.hem'],
      turn: '15 mm',
      by: 'machine',
    });
    const running = orderOf({ pieces: body, works: [hem], joins: [shoulder, side] });
    expect(foundBy(running, 'chain is whole')).toContain('side/stitch → hem/level');
  });

  it('asks for the rises before an inseam sewn from foot to foot', () => {
    const running = orderOf({
      pieces: [pair('leg', 'waist front-rise front-inseam foot back-inseam back-rise')],
      joins: [
        join('inseam', 'leg.front-inseam other:leg.front-inseam', 'leg.back-inseam other:leg.back-inseam', {
          closes: true,
        }),
        join('front-rise', 'leg.front-rise', 'other:leg.front-rise'),
        join('back-rise', 'leg.back-rise', 'other:leg.back-rise'),
      ],
    });
    expect(forced(running, 'front-rise/stitch', 'inseam/pin')).toBe(true);
    expect(forced(running, 'back-rise/stitch', 'inseam/pin')).toBe(true);
  });
});

describe('press before crossing', () => {
  it('presses the seam that is crossed, and says that one pressing at the end is not the same', () => {
    const running = orderOf({ pieces: [...body, collar], joins: [neck, shoulder, side] });
    expect(forced(running, 'shoulder/press', 'neck/pin')).toBe(true);
    const [found] = running.constraints.filter((c) => c.rule === 'press before crossing');
    expect(found?.because).toContain('one pressing at the end is not the same');
    expect(found?.source.kind).toBe('published');
  });

  it('asks nothing of seams that are not crossed', () => {
    const running = orderOf({ pieces: body, joins: [shoulder] });
    expect(foundBy(running, 'press before crossing')).toEqual([]);
  });
});

describe('baste, then sew deeper', () => {
  it('bastes the trim from end to end over the shoulder of its own side, then sews the seam past it', () => {
    const running = panelled('this');
    expect(
      outOfTurn(running, [
        'centre-shoulder/press',
        'panel/baste-trim',
        'side-shoulder/pin',
        'panel/pin',
        'panel/stitch',
      ]),
    ).toEqual([]);
    expect(forced(running, 'centre-shoulder/press', 'panel/baste-trim')).toBe(true);
    expect(forced(running, 'panel/baste-trim', 'side-shoulder/pin')).toBe(true);
    expect(forced(running, 'side-shoulder/press', 'panel/pin')).toBe(true);
    const inner = running.constraints.find(
      (c) => c.before === 'a/panel/baste-trim' && c.after === 'a/panel/pin',
    );
    expect(inner?.rule).toBe('baste, then sew deeper');
    expect(inner?.waivable).toBe(false);
    expect(running.steps.get('a/panel/stitch')?.say).toContain('15 mm deep, past the basting');
  });

  it('turns round when the trim is basted to the other side', () => {
    const running = panelled('to');
    expect(forced(running, 'side-shoulder/press', 'panel/baste-trim')).toBe(true);
    expect(forced(running, 'panel/baste-trim', 'centre-shoulder/pin')).toBe(true);
  });
});

describe('flat before tube', () => {
  it('does the armhole before the side seam closes the body, when the sleeve is set flat', () => {
    const flat = join('armhole', 'front.armhole back.armhole', 'sleeve.cap');
    const long = join('side', 'front.side sleeve.front-seam', 'back.side sleeve.back-seam', { closes: true });
    const running = orderOf({ pieces: [...body, sleeve], joins: [long, flat, shoulder] });
    expect(outOfTurn(running, ['shoulder/press', 'armhole/stitch', 'armhole/press', 'side/pin'])).toEqual([]);
    expect(forced(running, 'armhole/press', 'side/pin')).toBe(true);
  });

  it('sets it after the side seam, when the maker wants it in the round', () => {
    const round = join('armhole', 'front.armhole back.armhole', 'sleeve.cap', {
      ring: true,
      worked: 'round',
    });
    const running = orderOf({ pieces: [...body, sleeve], joins: [round, shoulder, side, sleeveSeam] });
    expect(forced(running, 'side/press', 'armhole/pin')).toBe(true);
    expect(forced(running, 'sleeve-seam/press', 'armhole/pin')).toBe(true);
  });

  it('takes the collar before or after the side seam, as the garment says', () => {
    const at = (worked: 'flat' | 'round') =>
      orderOf({ pieces: [...body, collar], joins: [shoulder, side, { ...neck, worked }] });
    expect(forced(at('flat'), 'neck/press', 'side/pin')).toBe(true);
    expect(forced(at('round'), 'side/press', 'neck/pin')).toBe(true);
  });

  it('sews in the round after the tube is closed, whichever of the two sides was described first', () => {
    const cuff = pair('cuff', 'upper side lower');
    for (const [one, other] of [
      ['sleeve.wrist', 'cuff.upper'],
      ['cuff.upper', 'sleeve.wrist'],
    ] as const) {
      const set = join('cuff-seam', one, other, { worked: 'round' });
      const running = orderOf({ pieces: [sleeve, cuff], joins: [set, sleeveSeam] });
      expect(forced(running, 'sleeve-seam/press', 'cuff-seam/pin')).toBe(true);
    }
  });

  it('finds the closing seam by itself: the one described last, if none is said to close', () => {
    const tube = [piece('one', 'top left bottom right'), piece('two', 'top left bottom right')];
    const seams = [join('first', 'one.left', 'two.right'), join('second', 'one.right', 'two.left')];
    expect(foundBy(orderOf({ pieces: tube, joins: seams }), 'flat before tube')).toEqual([
      'first/press → second/pin',
    ]);
    expect(foundBy(orderOf({ pieces: tube, joins: seams.toReversed() }), 'flat before tube')).toEqual([
      'second/press → first/pin',
    ]);
    const said = seams.map((seam) => (seam.id === 'first' ? { ...seam, closes: true } : seam));
    expect(foundBy(orderOf({ pieces: tube, joins: said }), 'flat before tube')).toEqual([
      'second/press → first/pin',
    ]);
  });

  it('does flat work on a piece before the seam that closes it', () => {
    const running = orderOf({
      pieces: [sleeve],
      works: [work('tucks', 'tucks', 'sleeve', { from: 'wrist', marker: 'chalk', family: twoTucks })],
      joins: [sleeveSeam],
    });
    expect(foundBy(running, 'flat before tube')).toContain('tucks/press → sleeve-seam/pin');
  });

  it('sees no tube in layers that are laid on each other', () => {
    const running = orderOf({
      pieces: [piece('upper', 'neck outer end'), piece('under', 'neck outer end')],
      joins: [
        join('outside', 'upper.outer upper.end', 'under.outer under.end', { seam: 'turned' }),
        join('inside', 'upper.neck', 'under.neck', { seam: 'turned' }),
      ],
    });
    expect(foundBy(running, 'flat before tube')).toEqual([]);
  });

  it('keeps every constraint of all these', () => {
    for (const running of [panelled('this'), panelled('to')]) expect(broken(running)).toEqual([]);
  });
});
