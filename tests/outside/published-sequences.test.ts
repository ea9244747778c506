import { describe, expect, it } from 'vitest';
import type { Running } from '../../src/order/running-types.ts';
import { forced } from '../order/make.ts';
import { byHand, garmentOf, orderOfWorn } from '../outfit/units/worn.ts';

/*
 * Three published ways to put a blouse together. Each is described as a maker would describe hers, from ready-made units
 * with few figures written and nothing said about the order; what the book says goes first must then be forced by the
 * constraints alone, whatever the arrangement.
 */

const FRONT = { unit: 'plain-front', name: 'Front' } as const;
const BACK = { unit: 'plain-back', name: 'Back' } as const;
const BAND = { unit: 'button-band', name: 'Band' } as const;
const CUFF = { unit: 'buttoned-cuff', name: 'Cuff' } as const;
const HEM = { unit: 'hem', name: 'Hem' } as const;

/** Pairs of a sequence that the constraints do not force, as `a before b`. */
const notForced = (running: Running, steps: readonly string[]): readonly string[] =>
  steps.flatMap((step, i) => {
    const last = steps[i - 1];
    return last === undefined || forced(running, last, step, 'waist') ? [] : [`${last} before ${step}`];
  });

describe('a blouse (Conover, A Complete Course in Dressmaking, 1921, vol. 4, p. 36)', () => {
  const running = orderOfWorn(
    garmentOf([
      FRONT,
      BAND,
      BACK,
      { unit: 'flat-collar', name: 'Collar' },
      { unit: 'plain-sleeve', name: 'Sleeve' },
      HEM,
    ]),
  );

  it('fronts, shoulder seams, collar, underarm seams, in this order', () => {
    expect(
      notForced(running, [
        'band/press',
        'back-shoulder-seam/pin',
        'back-shoulder-seam/press',
        'collar-neck/baste',
        'collar-neck/fell',
        'back-side-seam/pin',
      ]),
    ).toEqual([]);
  });

  it('the hem of the front edge is finished, its top too, before the collar is joined', () => {
    expect(notForced(running, ['band-top/own-3', 'collar-neck/baste'])).toEqual([]);
  });

  it('the collar is stitched round its outer edge, turned and pressed, and only then sewn to the neck', () => {
    expect(
      notForced(running, [
        'collar-layers/stitch',
        'collar-layers/turn',
        'collar-layers/press',
        'collar-neck/baste',
      ]),
    ).toEqual([]);
  });
});

describe('a shirt waist (Watson, Textiles and Clothing, 1907, Tucked waist, Plan for a shirt waist, Making plain sleeve, Putting on collars, Making button holes)', () => {
  const sewn = garmentOf([
    FRONT,
    BAND,
    { unit: 'parallel-tucks', name: 'Tucks', at: { piece: ['front'], from: ['front.opening'] } },
    BACK,
    { unit: 'standing-band', name: 'Collar band' },
    { unit: 'puffed-sleeve', name: 'Sleeve', entries: { ends: 'cuff' } },
    CUFF,
    HEM,
  ]);
  // The maker bastes the shoulders too, as the book says, and cuts the front to shape once it is tucked.
  const tacked = byHand(sewn, 'joins', 'back-shoulder-seam', { tacked: true });
  const tried = byHand(tacked, 'gates', 'back-try', { after: ['back-shoulder-seam', 'back-side-seam'] });
  const running = orderOfWorn(byHand(tried, 'pieces', 'front', { cutAfterWork: true }));

  it('the tucks and the fold of the front are made before the front is cut to shape', () => {
    expect(notForced(running, ['tucks/press', 'outline-front/cut', 'back-shoulder-seam/pin'])).toEqual([]);
    expect(notForced(running, ['band/press', 'outline-front/cut'])).toEqual([]);
  });

  it('shoulders and underarm are basted, tried on and corrected before they are stitched', () => {
    for (const seam of ['back-shoulder-seam', 'back-side-seam']) {
      expect(notForced(running, [`${seam}/baste`, 'back-try/fit', `${seam}/stitch`])).toEqual([]);
    }
  });

  it('the lower edge of the sleeve is gathered and the cuff sewn on flat before the long seam is closed', () => {
    expect(
      notForced(running, ['cuff-gathers/rows', 'cuff-seam/pin', 'cuff-seam/cover', 'sleeve-seam/pin']),
    ).toEqual([]);
  });

  it('cuff and collar band are made up by themselves, stiffened first, before they are sewn on', () => {
    expect(
      notForced(running, ['cuff-stiffening/baste', 'cuff-layers/pin', 'cuff-layers/press', 'cuff-seam/pin']),
    ).toEqual([]);
    expect(notForced(running, ['collar-band-layers/press', 'collar-band-neck/pin'])).toEqual([]);
  });

  it('all holes are marked together before one is cut, and the buttons after', () => {
    expect(
      notForced(running, ['band-buttons/mark', 'band-buttons/slit', 'band-buttons/mark-buttons']),
    ).toEqual([]);
  });
});

describe('a tailored waist (Baldt, Clothing for Women, 1916, chapter 16, Tailored waist; Testing shirtwaist pattern; Simple dress of wool)', () => {
  const sewn = garmentOf([
    FRONT,
    BAND,
    BACK,
    { unit: 'stand-and-collar', name: 'Collar' },
    { unit: 'puffed-sleeve', name: 'Sleeve', entries: { ends: 'cuff' } },
    CUFF,
    HEM,
  ]);
  const running = orderOfWorn(byHand(sewn, 'pieces', 'front', { cutAfterWork: true }));

  it('the plait or hem of the front is made before the front is cut to shape', () => {
    expect(notForced(running, ['band/press', 'outline-front/cut', 'back-shoulder-seam/pin'])).toEqual([]);
  });

  it('seam lines and notches are marked before the first basting', () => {
    for (const basting of ['back-side-seam/baste', 'sleeve-armhole/baste']) {
      expect(notForced(running, ['cut-cotton/lines', basting])).toEqual([]);
    }
  });

  it('underarm basted, tried on, stitched', () => {
    expect(notForced(running, ['back-side-seam/baste', 'back-try/fit', 'back-side-seam/stitch'])).toEqual([]);
  });

  it('the collar is stitched, turned and pressed before it is sewn to its band; one layer of the band to the neck, the other turned in over both seams', () => {
    expect(
      notForced(running, [
        'collar-layers/stitch',
        'collar-layers/turn',
        'collar-layers/press',
        'collar-fall-seam/pin',
      ]),
    ).toEqual([]);
    expect(notForced(running, ['collar-stand-neck/stitch', 'collar-stand-neck/cover'])).toEqual([]);
    expect(notForced(running, ['collar-fall-seam/stitch', 'collar-fall-seam/cover'])).toEqual([]);
  });

  it('the underarm seam of the waist is stitched and the top of the sleeve gathered before the sleeve is placed; it is basted, tried on, stitched', () => {
    expect(notForced(running, ['back-side-seam/press', 'sleeve-armhole/pin'])).toEqual([]);
    expect(
      notForced(running, [
        'sleeve-gathers/rows',
        'sleeve-armhole/pin',
        'sleeve-armhole/baste',
        'sleeve-try/fit',
        'sleeve-armhole/stitch',
      ]),
    ).toEqual([]);
  });
});
