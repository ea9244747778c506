import { describe, expect, it } from 'vitest';
import { broken, forced, gate, join, order, orderOf, pair, piece, twoTucks, work } from '../order/make.ts';
import { demo } from '../outfit/demo-files.ts';

/*
 * Published rules of order within one garment, each with its source in brackets. Where a rule can be told from the
 * description, the constraints alone must keep it, whatever the arrangement.
 *
 * Not told by the description, and so not checked: altering the pattern before cutting (Butterick, The New Dressmaker,
 * 1921, ch. 3), shrinking cloth before cutting (School Sewing, Tailored waist; The New Dressmaker, p. 13) and a trial in
 * cheap cloth (Watson, Textiles and Clothing, 1907, Testing patterns) come before any piece exists. Overcasting what
 * frays (Univ. of Wisconsin, Construction of clothing) and pressing flannel before its edges are finished (Watson,
 * Flannel seams) need to know how a cloth frays. Level grain before shoulders and padding before armholes (Fitting
 * Dresses, 1946, parts 5 and 9) happen inside a try-on. Shrinking out the fullness of a sleeve (Baldt, Clothing for
 * Women, 1916, Simple dress of wool) needs wool; a lining fitted first (Watson, Finish lining first) needs linings; a
 * faced lace collar (Watson, Putting on collars) needs lace.
 */

const shirt = order(demo('plain-shirt'));
const inShirt = (before: string, after: string) => forced(shirt, before, after, 'shirt');

const front = pair('front', 'neck shoulder armhole side hem opening');
const back = piece('back', 'neck shoulder armhole side hem', { cut: 'fold' });
const sleeve = pair('sleeve', 'cap front-seam wrist back-seam');
const shoulder = join('shoulder', 'front.shoulder', 'back.shoulder', { finish: 'overlock' });
const side = join('side', 'front.side', 'back.side', { closes: true });
const sleeveSeam = join('sleeve-seam', 'sleeve.front-seam', 'sleeve.back-seam');
const armhole = (extra = {}) => join('armhole', 'front.armhole back.armhole', 'sleeve.cap', extra);
const round = { ring: true, worked: 'round' };
const inTheRound = orderOf({
  pieces: [front, back, sleeve],
  works: [work('gather', 'cap-gathers', 'sleeve', { edge: 'cap', marker: 'chalk' })],
  joins: [armhole({ ...round, tacked: true }), shoulder, side, sleeveSeam],
  gates: [gate('hang', 'armhole')],
});
const collar = piece('collar', 'neck outer end', { cut: 'fold' });
const neck = (extra = {}) =>
  join(
    'neck',
    'front.neck back.neck other:back.neck other:front.neck',
    'collar.neck other:collar.neck',
    extra,
  );

describe('fronts, shoulders, collar, underarm (Conover, A Complete Course in Dressmaking, 1921, vol. 4, p. 36)', () => {
  it('the fronts are worked before the shoulder seams', () => {
    for (const done of ['front-band/press', 'band-top/own-3', 'pockets/own-4', 'front-neck-stay/stitch']) {
      expect(inShirt(done, 'shoulder/pin')).toBe(true);
    }
  });

  it('the front hem is finished before the collar is joined', () => {
    expect(inShirt('front-band/press', 'neck/baste')).toBe(true);
    expect(inShirt('band-top/own-3', 'neck/baste')).toBe(true);
  });

  it('the shoulder seams come before the collar', () => {
    expect(inShirt('shoulder/press', 'neck/baste')).toBe(true);
  });

  it('the collar comes before the underarm seams, which is easier while the waist is flat', () => {
    expect(inShirt('neck/fell', 'underarm/pin')).toBe(true);
  });

  it('the collar is stitched round its outer edge, turned and pressed before it is sewn to the neck (also Baldt, Clothing for Women, 1916, Tailored waist; Watson, Textiles and Clothing, 1907, Putting on collars)', () => {
    expect(inShirt('collar-layers/stitch', 'collar-layers/turn')).toBe(true);
    expect(inShirt('collar-layers/turn', 'collar-layers/press')).toBe(true);
    expect(inShirt('collar-layers/press', 'neck/baste')).toBe(true);
  });
});

describe('before cutting and handling', () => {
  it('tucks and a front fold come before the piece is cut (Watson, Textiles and Clothing, 1907, Tucked waist; Baldt, Clothing for Women, 1916, Tailored waist)', () => {
    const running = orderOf({
      pieces: [pair('front', 'neck shoulder armhole side hem opening', { cutAfterWork: true }), back],
      works: [
        work('tucks', 'tucks', 'front', { from: 'opening', marker: 'chalk', family: twoTucks }),
        work('folded-band', 'band', 'front', { edge: 'opening' }),
      ],
      joins: [shoulder],
    });
    expect(forced(running, 'tucks/press', 'outline-front/cut')).toBe(true);
    expect(forced(running, 'band/press', 'outline-front/cut')).toBe(true);
    expect(forced(running, 'outline-front/cut', 'shoulder/pin')).toBe(true);
  });

  it('seam lines, centre lines and notches are marked before the first basting (Fitting Dresses, 1946, part 2)', () => {
    for (const basting of ['neck/baste', 'underarm/baste']) {
      expect(inShirt('cut-shirting/lines', basting)).toBe(true);
    }
  });

  it('open necks are stayed before fitting (Univ. of Wisconsin, Construction of clothing, undated)', () => {
    expect(inShirt('front-neck-stay/stitch', 'try-shirt/fit')).toBe(true);
    expect(inShirt('back-neck-stay/stitch', 'try-shirt/fit')).toBe(true);
  });
});

describe('seams and pressing', () => {
  it('seams are basted and tried on before they are stitched (Watson, Textiles and Clothing, 1907, Plan for a shirt waist)', () => {
    expect(inShirt('underarm/baste', 'try-shirt/fit')).toBe(true);
    expect(inShirt('try-shirt/fit', 'underarm/stitch')).toBe(true);
  });

  it('a seam is pressed before another crosses it (Fitting Dresses, 1946, part 2)', () => {
    expect(inShirt('shoulder/press', 'neck/baste')).toBe(true);
    expect(inShirt('shoulder/press', 'armhole/pin')).toBe(true);
    expect(inShirt('armhole/press', 'underarm/pin')).toBe(true);
  });

  it('work is planned so that the iron is not heated again for every seam (Fitting Dresses, 1946, part 2)', () => {
    for (const running of [shirt, order(demo('harbour-clockmaker'))]) {
      const stations = running.sequence.map((id) => running.steps.get(id)?.setUp.station);
      const pressings = stations.filter((station) => station === 'iron').length;
      const heatings = stations.filter(
        (station, i) => station === 'iron' && stations[i - 1] !== 'iron',
      ).length;
      expect(heatings).toBeLessThan(0.6 * pressings);
    }
  });

  it('bastings come out before the seam is pressed (Watson, Textiles and Clothing, 1907, Finishing seams)', () => {
    expect(inShirt('underarm/unbaste', 'underarm/press')).toBe(true);
  });

  it('curved seams are notched before anything closes over them (Watson, Textiles and Clothing, 1907, Boning)', () => {
    expect(inShirt('neck/clip', 'neck/flip')).toBe(true);
    expect(inShirt('collar-layers/clip', 'collar-layers/turn')).toBe(true);
  });
});

describe('units', () => {
  it('cuffs and collar are made up before the body is fitted (Watson, Textiles and Clothing, 1907, Plan for a shirt waist)', () => {
    expect(inShirt('cuff-layers/press', 'try-shirt/fit')).toBe(true);
    expect(inShirt('collar-layers/press', 'try-shirt/fit')).toBe(true);
  });

  it('stiffening is put to one collar or cuff layer before the layers are joined (The New Dressmaker, 1921, p. 45; Watson, 1907, Collars)', () => {
    expect(inShirt('collar-stiffening/fuse', 'collar-layers/pin')).toBe(true);
    expect(inShirt('cuff-stiffening/fuse', 'cuff-layers/pin')).toBe(true);
  });

  it('one layer of a band is sewn to the neck before the other is turned in over the seam (The New Dressmaker, 1921, p. 45; Baldt, 1916, Tailored waist)', () => {
    const running = orderOf({
      pieces: [
        front,
        back,
        piece('band-out', 'lower end upper', { cut: 'fold', unit: 'band' }),
        piece('band-in', 'lower end upper', { cut: 'fold', unit: 'band' }),
      ],
      joins: [
        shoulder,
        join('band-layers', 'band-out.upper other:band-out.upper', 'band-in.upper other:band-in.upper', {
          seam: 'turned',
        }),
        join(
          'neck',
          'front.neck back.neck other:back.neck other:front.neck',
          'band-out.lower other:band-out.lower',
          { seam: 'covered', cover: 'band-in.lower' },
        ),
      ],
    });
    expect(forced(running, 'band-layers/press', 'neck/pin')).toBe(true);
    expect(forced(running, 'neck/stitch', 'neck/cover')).toBe(true);
  });
});

describe('sleeves and cuffs', () => {
  const cuff = pair('cuff', 'upper front-end lower back-end');

  it('the lower edge is gathered and the cuff sewn flat before the long seam (Watson, Textiles and Clothing, 1907, Making plain sleeve)', () => {
    expect(inShirt('wrist-gathers/rows', 'cuff-seam/pin')).toBe(true);
    expect(inShirt('cuff-seam/cover', 'underarm/pin')).toBe(true);
  });

  it('the sleeve seam comes before the cuff where the opening is elsewhere (Watson, 1907, Making plain sleeve)', () => {
    const running = orderOf({
      pieces: [sleeve, cuff],
      joins: [join('cuff-seam', 'sleeve.wrist', 'cuff.upper', { worked: 'round' }), sleeveSeam],
    });
    expect(forced(running, 'sleeve-seam/press', 'cuff-seam/pin')).toBe(true);
  });

  it('a placket is finished, underlap first, before the cuff (The New Dressmaker, 1921, p. 45)', () => {
    const step = (say: string) => ({ say, station: 'machine', minutes: 5 });
    const running = orderOf({
      pieces: [sleeve, cuff],
      works: [
        work('own', 'placket', 'sleeve', {
          when: 'flat',
          steps: [
            'Sew the underlap to the back edge',
            'Sew the overlap to the front edge',
            'Stitch across the top',
          ].map(step),
        }),
      ],
      joins: [join('cuff-seam', 'sleeve.wrist', 'cuff.upper'), sleeveSeam],
    });
    expect(forced(running, 'placket/own-1', 'placket/own-2')).toBe(true);
    expect(forced(running, 'placket/own-2', 'placket/own-3')).toBe(true);
    expect(forced(running, 'placket/own-3', 'cuff-seam/pin')).toBe(true);
  });

  it('sleeve seams are sewn and pressed before the sleeve is set (Butterick Dressmaking Book, 1940, p. 58)', () => {
    expect(forced(inTheRound, 'sleeve-seam/press', 'armhole/pin')).toBe(true);
  });

  it('all seams that enter the armhole are finished and pressed before the sleeve is set (Fitting Dresses, 1946, part 10)', () => {
    expect(forced(inTheRound, 'shoulder/overlock', 'armhole/pin')).toBe(true);
    expect(forced(inTheRound, 'shoulder/press', 'armhole/pin')).toBe(true);
    expect(forced(inTheRound, 'side/press', 'armhole/pin')).toBe(true);
    // Set flat, only the shoulder enters it.
    expect(inShirt('shoulder/overlock', 'armhole/pin')).toBe(true);
  });

  it('the underarm seam is stitched before a sleeve with fullness is placed (Baldt, Clothing for Women, 1916, Simple dress of wool)', () => {
    expect(forced(inTheRound, 'side/stitch', 'armhole/pin')).toBe(true);
  });

  it('the sleeve is basted and tried on before it is stitched (Baldt, Clothing for Women, 1916, Testing shirtwaist pattern)', () => {
    expect(forced(inTheRound, 'armhole/baste', 'hang/fit')).toBe(true);
    expect(forced(inTheRound, 'hang/fit', 'armhole/stitch')).toBe(true);
    expect(broken(inTheRound)).toEqual([]);
  });

  it('two rows of gathering are sewn before the edge is joined (Baldt, 1916, Testing shirtwaist pattern; Dillmont, Encyclopedia of Needlework, Plain sewing; Watson, 1907, Stroking)', () => {
    expect(forced(inTheRound, 'cap-gathers/rows', 'armhole/pin')).toBe(true);
  });

  it('an edge is divided into equal parts before the gathers are drawn up (Dillmont, Encyclopedia of Needlework, Plain sewing)', () => {
    expect(forced(inTheRound, 'cap-gathers/mark', 'armhole/pin')).toBe(true);
    expect(inTheRound.steps.get('a/armhole/pin')?.say).toMatch(/^Draw up the gathers to fit/);
  });
});

describe('fastenings', () => {
  it('all holes are marked at one time, before any is cut (Watson, Textiles and Clothing, 1907, Making button holes)', () => {
    expect(shirt.steps.get('shirt/front-buttons/mark')?.say).toContain('Mark 7 buttonholes');
    expect(inShirt('front-buttons/mark', 'front-buttons/slit')).toBe(true);
  });

  it('machine rows come before the hole is cut in cloth that ravels (Watson, Textiles and Clothing, 1907, Overcasting buttonholes)', () => {
    expect(inShirt('front-buttons/stitch', 'front-buttons/slit')).toBe(true);
  });

  // Common practice, no source (a weak one: a sewing diary of January 2011). Watson 1907 would mark holes and buttons at one time.
  it('buttons are marked through the finished holes', () => {
    expect(inShirt('front-buttons/slit', 'front-buttons/mark-buttons')).toBe(true);
  });
});

describe('stretch', () => {
  // Common practice, no source (a weak one: a pattern company’s page on swimwear).
  it('seams, then the try-on, then the edges are finished', () => {
    const hose = order(demo('harbour-clockmaker'));
    for (const seam of ['front-rise/press', 'back-rise/press', 'inseam/press']) {
      expect(forced(hose, seam, 'try-hose/fit', 'hose')).toBe(true);
    }
    expect(forced(hose, 'try-hose/fit', 'waist-casing/turn', 'hose')).toBe(true);
  });
});

describe('where published sources differ, the garment chooses', () => {
  it('shoulder early in an unlined blouse (Conover, 1921, vol. 4, p. 36), last in a fitted lined waist (Watson, 1907, Fitting of neck and sleeves)', () => {
    const closed = (last: 'shoulder' | 'side') =>
      orderOf({
        pieces: [front, back],
        joins: [
          join('shoulder', 'front.shoulder', 'back.shoulder', { closes: last === 'shoulder' }),
          join('side', 'front.side', 'back.side', { closes: last === 'side' }),
        ],
      });
    expect(forced(closed('side'), 'shoulder/press', 'side/pin')).toBe(true);
    expect(forced(closed('shoulder'), 'side/press', 'shoulder/pin')).toBe(true);
  });

  it('sleeve set flat before the side seam (Garments for Girls, Shirt waist, part 2), or in the round after it (Baldt, 1916, Simple dress of wool)', () => {
    const flat = orderOf({
      pieces: [front, back, sleeve],
      joins: [
        shoulder,
        armhole(),
        join('side', 'front.side sleeve.front-seam', 'back.side sleeve.back-seam', { closes: true }),
      ],
    });
    expect(forced(flat, 'shoulder/press', 'armhole/pin')).toBe(true);
    expect(forced(flat, 'armhole/press', 'side/pin')).toBe(true);
    expect(forced(inTheRound, 'side/press', 'armhole/pin')).toBe(true);
  });

  it('collar before the underarm seam (Conover, 1921, vol. 4, p. 36), or after all body seams (Watson, 1907, Plan for a shirt waist)', () => {
    const at = (worked: string) =>
      orderOf({ pieces: [front, back, collar], joins: [shoulder, side, neck({ worked })] });
    expect(forced(at('flat'), 'neck/press', 'side/pin')).toBe(true);
    expect(forced(at('round'), 'side/press', 'neck/pin')).toBe(true);
  });
});
