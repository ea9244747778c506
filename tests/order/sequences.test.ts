import { describe, expect, it } from 'vitest';
import { demo } from '../outfit/demo-files.ts';
import { forced, join, order, orderOf, pair, placeOf, work } from './make.ts';

/** The larger demonstration: a shirt with frills over the shoulders, detached sleeves, hose of two cloths. */
const clockmaker = order(demo('harbour-clockmaker'));
const shirt = order(demo('plain-shirt'));

/** Steps that must come in this order by the constraints alone, whatever the arrangement; as `a before b` where not. */
const notForced = (garment: string, steps: readonly string[], running = clockmaker): readonly string[] =>
  steps.flatMap((step, i) => {
    const last = steps[i - 1];
    return last === undefined || forced(running, last, step, garment) ? [] : [`${last} before ${step}`];
  });

describe('a frill set in a seam that runs over the shoulder', () => {
  it('comes in the order of the trade, from the centre shoulders to the try-on', () => {
    expect(
      notForced('shirt', [
        'centre-shoulder/stitch',
        'centre-shoulder/press',
        'panel/baste-trim',
        'side-shoulder/pin',
        'side-shoulder/stitch',
        'panel/pin',
        'panel/stitch',
        'side/pin',
        'side/baste',
        'try-shirt/fit',
        'side/stitch',
      ]),
    ).toEqual([]);
  });

  it('is basted from hem to hem, and its seam is stitched further in than the basting', () => {
    expect(clockmaker.steps.get('shirt/panel/baste-trim')?.say).toBe(
      'Baste the shoulder frill along the centre front and back, 3/8 in deep',
    );
    expect(clockmaker.steps.get('shirt/panel/stitch')?.say).toContain('1/2 in deep, past the basting');
  });
});

describe('flat work', () => {
  it('is done on the pieces before they are joined', () => {
    for (const flat of ['front-tucks/press', 'button-band/press', 'back-tucks/press']) {
      expect(forced(clockmaker, flat, 'centre-shoulder/pin', 'shirt')).toBe(true);
    }
    expect(forced(clockmaker, 'collar-braid/unbaste', 'collar-layers/pin', 'shirt')).toBe(true);
    expect(forced(clockmaker, 'collar-stiffening/fuse', 'collar-layers/pin', 'shirt')).toBe(true);
  });

  it('comes before the cut to the outline, when the maker cuts after tucking', () => {
    for (const takes of ['front-tucks/press', 'button-band/press']) {
      expect(forced(clockmaker, takes, 'outline-centre-front/cut', 'shirt')).toBe(true);
    }
    expect(forced(clockmaker, 'back-tucks/press', 'outline-back/cut', 'shirt')).toBe(true);
    expect(forced(clockmaker, 'outline-centre-front/cut', 'centre-shoulder/pin', 'shirt')).toBe(true);
  });
});

describe('crossed tucks of the sleeves', () => {
  it('lose their pen marks at the first pressing: the tool finds it by itself and marks again', () => {
    const [concern, ...more] = clockmaker.concerns;
    expect(more).toEqual([]);
    expect(concern).toMatchObject({
      killer: 'sleeves/sleeve-tucks/press-1',
      needed: 'sleeves/sleeve-tucks/pin-2',
    });
    expect(concern?.otherMarkers.length).toBeGreaterThan(0);
    const again = clockmaker.sequence.indexOf(concern?.again ?? '');
    expect(again).toBeGreaterThan(placeOf(clockmaker, 'sleeve-tucks/press-1', 'sleeves'));
    expect(again).toBeLessThan(placeOf(clockmaker, 'sleeve-tucks/pin-2', 'sleeves'));
  });

  it('are stitched one way, pressed, then the other, before the beads and before anything is joined', () => {
    expect(
      notForced('sleeves', [
        'sleeve-tucks/mark',
        'sleeve-tucks/stitch-1',
        'sleeve-tucks/press-1',
        'sleeve-tucks/stitch-2',
        'sleeve-tucks/press-2',
        'sleeve-beads/mark',
        'sleeve-beads/bead',
        'sleeve-beads/cluster',
        'head-seam/pin',
      ]),
    ).toEqual([]);
  });

  it('have the plain sleeves tried on before days of beads', () => {
    expect(
      notForced('sleeves', [
        'try-plain-sleeve/tack',
        'try-plain-sleeve/fit',
        'try-plain-sleeve/untack',
        'sleeve-beads/mark',
      ]),
    ).toEqual([]);
  });
});

describe('the collar', () => {
  it('is taped, stiffened, stitched, clipped, turned and pressed, basted to the neck, bound, flipped and felled', () => {
    const made = ['collar-layers/stitch', 'collar-layers/clip', 'collar-layers/turn', 'collar-layers/press'];
    const set = ['neck/baste', 'neck/bind', 'neck/clip', 'neck/flip', 'neck/fell'];
    const tape = ['collar-braid/baste', 'collar-braid/stitch', 'collar-braid/unbaste'];
    expect(notForced('shirt', [...tape, ...made, ...set])).toEqual([]);
    expect(notForced('shirt', ['collar-stiffening/sample', 'collar-stiffening/fuse', ...made])).toEqual([]);
  });

  it('says what each step is', () => {
    const say = (step: string) => clockmaker.steps.get(`shirt/${step}`)?.say;
    expect(say('collar-braid/stitch')).toContain('down both sides');
    expect(say('collar-layers/stitch')).toContain('leaving the rest open');
    expect(say('neck/bind')).toContain('close to its crease');
    expect(say('neck/fell')).toContain('by hand');
  });
});

describe('the cuff', () => {
  it('is made up with its frill and its holes, set to the gathered sleeve, and sewn inside by hand', () => {
    expect(
      notForced('sleeves', [
        'cuff-lower-turn/press',
        'cuff-ends/pin',
        'cuff-ends/stitch',
        'cuff-frill-seam/pin',
        'cuff-frill-seam/stitch',
        'cuff-frill-seam/cover',
        'cuff-buttons/mark',
        'cuff-buttons/slit',
        'cuff-seam/pin',
        'cuff-seam/stitch',
        'cuff-seam/cover',
        'sleeve-seam/pin',
      ]),
    ).toEqual([]);
    expect(notForced('sleeves', ['cuff-upper-turn/press', 'cuff-ends/pin'])).toEqual([]);
    expect(notForced('sleeves', ['lower-gathers/rows', 'cuff-seam/pin'])).toEqual([]);
    expect(clockmaker.steps.get('sleeves/cuff-frill-seam/stitch')?.say).toContain(
      'the inner cuff still held away',
    );
  });

  it('leaves the long seam of the sleeve last of its seams, stopping at the cuff', () => {
    expect(clockmaker.steps.get('sleeves/sleeve-seam/stitch')?.say).toBe(
      'Stitch the long sleeve seam, stopping at the cuff',
    );
    for (const seam of [
      'head-seam/press',
      'band-seam/press',
      'cuff-seam/cover',
      'cuff-frill-seam/cover',
      'cuff-ends/press',
    ]) {
      expect(forced(clockmaker, seam, 'sleeve-seam/pin', 'sleeves')).toBe(true);
    }
  });
});

describe('stretch legs', () => {
  it('join the two cloths, sew the frill on flat, then both rises, then one seam from foot to foot', () => {
    for (const first of ['knee/press', 'knee-frill-seam/stitch', 'front-rise/press', 'back-rise/press']) {
      expect(forced(clockmaker, first, 'inseam/pin', 'hose')).toBe(true);
    }
    expect(forced(clockmaker, 'inseam/stitch', 'waist-casing/turn', 'hose')).toBe(true);
  });

  it('are sewn with a stitch that gives', () => {
    for (const seam of ['knee', 'front-rise', 'back-rise', 'inseam']) {
      expect(clockmaker.steps.get(`hose/${seam}/stitch`)?.setUp.tool).toContain('zigzag');
    }
  });

  it('gather the frill and finish its ribbon channel before it is sewn on', () => {
    expect(forced(clockmaker, 'knee-gathers/rows', 'knee-frill-seam/pin', 'hose')).toBe(true);
    expect(forced(clockmaker, 'ribbon-channel/own-3', 'knee-frill-seam/pin', 'hose')).toBe(true);
  });

  it('do the same in a leg of one cloth', () => {
    const running = orderOf({
      pieces: [pair('leg', 'waist front-rise front-inseam foot back-inseam back-rise', { cloth: 'knit' })],
      works: [
        work('casing', 'waist', 'leg', {
          along: ['leg.waist', 'other:leg.waist'],
          ring: true,
          turn: '20 mm',
          elastic: '10 mm',
        }),
      ],
      joins: [
        join('inseam', 'leg.front-inseam other:leg.front-inseam', 'leg.back-inseam other:leg.back-inseam', {
          seam: 'stretch',
          closes: true,
        }),
        join('back-rise', 'leg.back-rise', 'other:leg.back-rise', { seam: 'stretch' }),
        join('front-rise', 'leg.front-rise', 'other:leg.front-rise', { seam: 'stretch' }),
      ],
    });
    for (const rise of ['front-rise', 'back-rise']) {
      expect(forced(running, `${rise}/press`, 'inseam/pin')).toBe(true);
    }
    expect(forced(running, 'inseam/press', 'waist/turn')).toBe(true);
  });
});

describe('fastenings', () => {
  it('are tried on a sample, sewn and slit on the side that lies on top, and only then have buttons marked', () => {
    const steps = ['sample', 'mark', 'stitch', 'slit', 'mark-buttons', 'buttons'].map(
      (s) => `front-buttons/${s}`,
    );
    expect(notForced('shirt', steps)).toEqual([]);
    expect(notForced('shirt', steps, shirt)).toEqual([]);
    expect(clockmaker.steps.get('shirt/front-buttons/stitch')?.say).toContain('on the left centre front');
    expect(clockmaker.steps.get('shirt/front-buttons/buttons')?.say).toContain('on the right centre front');
  });

  it('are slit only when the shirt has been tried on', () => {
    expect(forced(clockmaker, 'try-shirt/fit', 'front-buttons/slit', 'shirt')).toBe(true);
    expect(forced(shirt, 'try-shirt/fit', 'front-buttons/slit', 'shirt')).toBe(true);
  });
});

describe('a neckcloth of the maker’s own steps', () => {
  it('is starched first and made up last', () => {
    expect(forced(clockmaker, 'starch/own-2', 'bow-seam/pin', 'neckcloth')).toBe(true);
    expect(forced(clockmaker, 'bow-seam/press', 'make-bow/own-1', 'neckcloth')).toBe(true);
  });
});

describe('at the bench', () => {
  it('no seam of the demonstrations lies pinned for long: the sitting after it sews it, or the one after that', () => {
    const far = clockmaker.sequence.flatMap((id, place) => {
      const step = clockmaker.steps.get(id);
      if (step?.action !== 'pin' || step.of.kind !== 'join') return [];
      const next = clockmaker.constraints.find((c) => c.before === id && !c.waivable)?.after ?? '';
      const between = clockmaker.sequence.slice(place + 1, clockmaker.sequence.indexOf(next));
      const sittings = new Set(between.map((other) => JSON.stringify(clockmaker.steps.get(other)?.setUp)));
      sittings.delete(JSON.stringify(step.setUp));
      return sittings.size > 3 ? [`${id}: ${sittings.size} sittings`] : [];
    });
    expect(far).toEqual([]);
  });
});
