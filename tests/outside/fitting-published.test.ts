import { describe, expect, test } from 'vitest';
import { BALL_TIMES } from '../../src/cloth/buttonhole.ts';
import { type Source, writeSource } from '../../src/cloth/source.ts';
import { CHECKS, ENTRIES, entryCalled } from '../../src/fitting/entries/all.ts';
import type { Cause, Want } from '../../src/fitting/entry.ts';
import { bodies } from './stretch-bodies.ts';

/*
 * What the entries of a try-on say and ask for, against what was printed. Each source stands beside its check; where a
 * statement was read in part only, it says so.
 */

function cause(entry: string, id: string): Cause {
  const found = entryCalled(entry)?.causes.find((one) => one.id === id);
  if (!found) throw new Error(`${entry} has no ${id}`);
  return found;
}

const from = (source: Source): string => writeSource(source);
const asked = (wants: readonly Want[]): readonly string[] =>
  wants.map((want) =>
    want.kind === 'add'
      ? `add ${want.name}`
      : `${want.kind} ${want.of.join('+')} ${want.kind === 'width' ? want.level : `${want.from}-${want.to}`} ${want.by > 0 ? 'more' : 'less'}`,
  );

const number = (words: string): number =>
  words
    .trim()
    .split(' ')
    .reduce((sum, part) => {
      const [top = '0', bottom = '1'] = part.split('/');
      return sum + Number(top) / Number(bottom);
    }, 0);

/** Every `3/8 in` of a text, in inches. */
const inchesIn = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+(?: \d+\/\d+)?|\d+\/\d+) in\b/g)].map(([, found = '']) => number(found));

const FRONT = 'centre-front+side-front';
const BACK = 'centre-back+side-back';

describe('which way and where, as printed', () => {
  test.each([
    // Fitting Dresses, US Department of Agriculture, 1946, part 5, and Garment Fitting, Washington State University E.M. 2246, 1962: a shoulder that is too long is cut
    // shorter in front and behind.
    [
      'shoulder-seam-on-arm',
      'long-shoulder',
      'Fitting Dresses (1946)',
      [`width ${FRONT} shoulder less`, `width ${BACK} shoulder less`],
    ],
    // Garment Fitting, 1962: a shoulder that is too short is lengthened.
    [
      'shoulder-seam-short',
      'short-shoulder',
      'Garment Fitting (1962)',
      [`width ${FRONT} shoulder more`, `width ${BACK} shoulder more`],
    ],
    // Fitting Dresses, part 9: change the padding before anything else where folds slant below the armhole.
    ['underarm-folds', 'padding', 'Fitting Dresses (1946)', ['add Shoulder pads']],
    // The New Dressmaker, 1921, ch. 4, ill. 40: a back that is too narrow is slashed from shoulder to hem and spread.
    [
      'back-pulls-across',
      'narrow-back',
      'The New Dressmaker, Butterick (1921)',
      [`width ${BACK} chest more`],
    ],
    // The same, p. 22: a collar that is too small is parted at the centre back, one too large folded there.
    ['collar-tight', 'short-collar', 'The New Dressmaker, Butterick (1921)', ['width collar neck more']],
    ['collar-loose', 'long-collar', 'The New Dressmaker, Butterick (1921)', ['width collar neck less']],
    // Watson, Textiles and Clothing, 1907, Full busted waist: the front is widened at the bust, tucked fronts above all.
    ['chest-strain', 'narrow-front', 'Textiles and Clothing, Watson (1907)', [`width ${FRONT} chest more`]],
    [
      'tucks-spread-open',
      'narrow-front',
      'Textiles and Clothing, Watson (1907)',
      [`width ${FRONT} chest more`],
    ],
    // The same, Altering waist patterns: folds in back and front of a body that is long-waisted.
    [
      'folds-above-waist',
      'long-body',
      'Textiles and Clothing, Watson (1907)',
      ['length centre-front chest-waist less', 'length centre-back chest-waist less'],
    ],
    // The same, Cloak buttons: a strip of tape or canvas as long as the closing.
    ['band-dragged-by-buttons', 'no-stay', 'Textiles and Clothing, Watson (1907)', ['add Button stay']],
    // Clothing pressure analysis of women’s leggings, 2022, abstract: it presses hardest at the calf.
    [
      'calf-tight',
      'narrow-calf',
      'Clothing pressure analysis of commercial women’s leggings',
      ['width leg+lower-leg calf more'],
    ],
  ])('%s: %s', (entry, id, title, wants) => {
    const { source, wants: has } = cause(entry, id);
    expect(from(source)).toContain(title);
    expect(asked(has)).toEqual(wants);
  });

  // What runs out to nothing on one side is said in words alone.
  test.each([
    // Fitting Dresses, 1946, part 9: the front that sags, or the back, is taken up at the neck end of its shoulder.
    [
      'front-sags',
      'long-front',
      'Fitting Dresses (1946)',
      /^Take the front up at the neck end .* nothing at the armhole/,
    ],
    [
      'back-sags',
      'long-back',
      'Fitting Dresses (1946)',
      /^Take the back up at the neck end .* nothing at the armhole/,
    ],
    // The use of patterns, part 7 (its book is not shown): the front is slashed across, opened for a full bust and lapped
    // for a small one; part 8: the back is opened for round shoulders.
    ['front-rides-up', 'full-bust', 'The Use of Butterick Patterns', /^Spread the front pattern across/],
    ['front-sags', 'small-bust', 'The Use of Butterick Patterns', /^Lap the front pattern across/],
    ['back-pulled-up', 'round-shoulders', 'The Use of Butterick Patterns', /^Spread the back pattern across/],
    // Garment Fitting, 1962: square shoulders; the seam is let out at the armhole or lifted at the neck.
    [
      'shoulder-tip-wrinkles',
      'square-shoulders',
      'Garment Fitting (1962)',
      /out at the armhole end, or lift it at the neck end/,
    ],
  ])('%s: %s, in words', (entry, id, title, change) => {
    const found = cause(entry, id);
    expect(from(found.source)).toContain(title);
    expect(found.change).toMatch(change);
    expect(found.wants).toEqual([]);
  });

  // Derived: both sides of a shoulder seam are equally long before it and after.
  test('widths of front and back that a shoulder seam gains or gives stay alike', () => {
    for (const entry of ['shoulder-seam-on-arm', 'shoulder-seam-short'])
      for (const { wants } of entryCalled(entry)?.causes ?? []) {
        const by = wants.map((want) => (want.kind === 'add' ? 0 : want.by));
        expect(new Set(by).size).toBe(1);
      }
  });
});

describe('how much, as printed', () => {
  const by = (entry: string, id: string): readonly number[] =>
    cause(entry, id).wants.map((want) => (want.kind === 'add' ? Number.NaN : want.by));

  // Watson, 1907, Sleeves, Altering patterns: 2 in is 1 in above and 1 in below the elbow.
  test.each([
    ['sleeve-short', 'cut-short', 1],
    ['sleeve-long', 'cut-long', -1],
  ])('%s by 2 in: an inch above and an inch below the elbow', (entry, id, inch) => {
    expect(by(entry, id).map((factor) => factor * 2)).toEqual([inch, inch]);
    const levels = cause(entry, id).wants.map((want) => (want.kind === 'length' ? [want.from, want.to] : []));
    expect(levels).toEqual([
      ['upper-arm', 'elbow'],
      ['elbow', 'wrist'],
    ]);
  });

  // The New Dressmaker, 1921, p. 22: the collar gains its whole shortage at the centre back; a fold has half of it.
  test('a collar on the fold gains in both halves what was short', () => {
    for (const short of [0.25, 0.5, 1.5]) {
      const [half = 0] = by('collar-tight', 'short-collar').map((factor) => factor * short);
      expect(2 * half).toBe(short);
    }
  });

  // From memory (no source): a gap G over both side seams is G/4 at each of their four edges.
  test('a girth that is short is shared by four edges', () => {
    const gap = 40;
    const [factor = 0] = by('chest-strain', 'narrow-all-round');
    expect((factor * (gap / 2)) / 2).toBe(gap / 4);
    const [closed = 0] = by('fronts-do-not-meet', 'narrow-all-round');
    expect((closed * gap) / 2).toBe(gap / 4);
  });

  // The New Dressmaker, 1921, p. 13: the neck of a shirt with an ease of 1/2 in.
  test('the ease of a collar', () => {
    expect(inchesIn(cause('collar-tight', 'short-collar').measured)).toEqual([1 / 2]);
  });

  test.each([
    // Watson, 1907, Altering waist patterns: the fold of the back lies 2 in above the waist.
    ['folds-above-waist', 'long-body', 'change', 2, 'Watson (1907)'],
    // Fitting Dresses, 1946, part 5: keep 3/8 in of seam when a neckline is shaped.
    ['neckline-binds', 'high-neck', 'limits', 3 / 8, 'Fitting Dresses (1946)'],
    // Baldt, Clothing for Women, 1916, tailored waist 2: the back shoulder is 1/4 in longer, eased.
    ['shoulder-seam-bridges', 'no-ease', 'change', 1 / 4, 'Baldt (1916)'],
    // The same, testing the shirtwaist pattern 3: the first fold is 1 in behind the shoulder seam.
    ['sleeve-gathers-uneven', 'wrong-place', 'test', 1, 'Baldt (1916)'],
    // The use of patterns, part 7: to within 3/4 in of the armhole notch; part 8: to within 3/8 in of the side seam.
    ['front-rides-up', 'full-bust', 'limits', 3 / 4, 'part 7'],
    ['back-pulled-up', 'round-shoulders', 'limits', 3 / 8, 'part 8'],
    // The same, part 13: the top of the skirt front is raised 1 in or more.
    ['skirt-stands-out-front', 'full-abdomen', 'change', 1, 'part 13'],
    // Watson, 1907, Stroking: the second row of gathers 1/8 in from the first.
    ['frill-thick-in-places', 'one-row', 'change', 1 / 8, 'Watson (1907)'],
    // Common practice, no source (a trade magazine of 2021): 2 in of ease at the upper arm.
    ['upper-arm-tight', 'narrow-sleeve', 'test', 2, 'common practice'],
    // Common practice, no source (a newspaper column of 2004): a cap up to 1 1/2 in longer than its armhole.
    ['cap-puckers', 'long-cap', 'test', 1.5, 'common practice'],
  ] as const)('%s, %s, in its %s: %s in', (entry, id, words, inch, title) => {
    const found = cause(entry, id);
    expect(inchesIn(found[words] ?? '')[0]).toBe(inch);
    expect(from(found.source)).toContain(title);
  });

  // Watson, 1907, Making button holes: 1 1/4 times the diameter of a round button.
  test('a buttonhole for a round button', () => {
    const { change } = cause('buttonhole-tight', 'wrong-length');
    const [, times = ''] = /([\d /]+) times/.exec(change) ?? [];
    expect(number(times)).toBe(BALL_TIMES.value);
  });

  // Baldt, 1916, Self-trimmings 4, seen as an excerpt: twice the depth times the number of tucks.
  test('what tucks take is said as it is reckoned', () => {
    for (const id of ['deep-tucks', 'small-block']) {
      const { change, measured, test: quick } = cause('tucks-take-too-much', id);
      expect(`${change} ${measured} ${quick}`).toMatch(/twice (the|its) (surplus )?depth/i);
    }
  });

  // ANSUR II, 2012, rows of tests/outside/data: round heel and instep against the ankle.
  test('a heel is about one and a half ankles round, and never more than one and three quarters', () => {
    const ratios = bodies
      .map(({ at }) => at('heelanklecircumference') / at('anklecircumference'))
      .sort((a, b) => a - b);
    const middle = ratios[Math.floor(ratios.length / 2)] ?? 0;
    const [about = 0, most = 0] = [
      ...cause('foot-will-not-pass', 'narrow-ankle').test.matchAll(/(\d \d\/\d)/g),
    ].map(([, found = '']) => number(found));
    expect(Math.abs(middle - about)).toBeLessThan(0.08);
    expect(ratios.length).toBeGreaterThan(40);
    expect(Math.max(...ratios)).toBeLessThanOrEqual(most);
    // Medians of all rows: 1.443 of the women, 1.498 of the men; the largest 1.750.
    expect(most).toBe(1.75);
  });
});

describe('limits against bodies', () => {
  // ANSUR II, 2012, rows of tests/outside/data: the ease of a cuff lets no hand pass, and the widest hardly any.
  test('a closed cuff with its ease does not pass the hand', () => {
    const { measured, limits = '' } = cause('cuff-tight', 'short-cuff');
    const [, least = 0, most = 0] = (/(\d+) to (\d+) mm/.exec(measured) ?? []).map(Number);
    expect([least, most]).toEqual([13, 25]);
    expect(limits).toMatch(/must pass the hand/);
    const more = bodies.map(({ at }) => at('handcircumference') - at('wristcircumference'));
    // The survey leaves the thumb out, so that a hand in truth asks for more than this.
    expect(Math.min(...more)).toBeGreaterThan(least);
    expect(more.filter((mm) => mm > most).length / more.length).toBeGreaterThan(0.85);
  });

  // ANSUR II, 2012, the same rows: a waist elastic that suits the waist has to stretch further over the hips.
  test('the waist of stretch legs has to stretch over the hips', () => {
    const limits = `${cause('leg-waist-slips', 'long-elastic').limits} ${cause('leg-waist-slips', 'wide-waist').limits}`;
    const [, short = 1, long = 1] = (/(0\.\d+) and (0\.\d+) of the waist/.exec(limits) ?? []).map(Number);
    expect(short).toBeLessThan(long);
    expect(limits).toMatch(/still stretch over the hips/);
    const over = bodies.map(({ at }) => at('buttockcircumference') / (long * at('waistcircumference')));
    // Also the longest that is allowed is stretched further by the hips of nearly everybody than by the waist.
    expect(over.filter((times) => times > 1 / long).length / bodies.length).toBeGreaterThan(0.8);
  });

  // Derived: a curve that lies a millimetre further out all round is two pi millimetres longer.
  test('a neckline that is lowered all round is about six times as much longer', () => {
    const { change } = cause('collar-tight', 'high-neckline');
    const [, deeper = 0, longer = 0] = (/(\d+) mm all round makes it about (\d+) mm/.exec(change) ?? []).map(
      Number,
    );
    expect(longer).toBe(Math.round(2 * Math.PI * deeper));
  });
});

describe('causes in the order of what was printed or remembered', () => {
  test.each([
    // Fitting Dresses, 1946, part 9: try a change of the padding before the seams.
    ['underarm-folds', ['padding', 'too-wide']],
    // The same, part 15: the waist, the hips, then how the hem was marked.
    ['hem-uneven', ['loose-waist', 'wide-hips', 'marked-early']],
    // Common practice, no source (a sewing page): the front, then the back.
    ['band-gapes', ['narrow-front', 'wide-spacing', 'narrow-back']],
    // Watson, 1907: made apart, or arms that differ.
    ['sleeves-differ', ['made-apart', 'arms-differ']],
    // From memory (no source), each.
    ['neckline-gapes-front', ['long-neck-edge', 'stretched']],
    ['collar-stands-away-back', ['long-neck-edge', 'low-back-neck']],
    ['tucks-spread-open', ['narrow-front', 'short-stitching']],
    ['side-seam-swings-forward', ['short-front', 'narrow-front']],
    ['side-seam-swings-back', ['short-back', 'narrow-back']],
    ['cap-collapses', ['high-cap', 'no-support']],
    ['ankle-folds', ['long-leg', 'wide-ankle', 'tight-calf']],
    ['knee-bags', ['weak-cloth', 'wide-knee', 'long-thigh']],
    ['leg-twists', ['spiral-cloth', 'unequal-inseams']],
    ['crotch-to-hip-lines', ['narrow-hips', 'flat-curve']],
  ] as const)('%s', (entry, ids) => {
    expect(entryCalled(entry)?.causes.map(({ id }) => id)).toEqual(ids);
  });
});

describe('every figure in the words', () => {
  const texts = ENTRIES.flatMap((entry) => [
    [entry.id, `${entry.seen} ${entry.asks ?? ''}`] as const,
    ...entry.causes.map(
      (one) =>
        [`${entry.id} ${one.id}`, `${one.test} ${one.change} ${one.measured} ${one.limits ?? ''}`] as const,
    ),
  ]);

  // An inch is 25.4 mm by the agreement of 1959 on the yard; rounded to what a tape is read to.
  test('is the same in inches and in millimetres', () => {
    const pair = /(\d+(?: \d+\/\d+)?|\d+\/\d+) in \((\d+) mm\)|(\d+) mm \((\d+(?: \d+\/\d+)?|\d+\/\d+) in\)/g;
    let found = 0;
    for (const [at, text] of texts)
      for (const [whole, inA, mmA, mmB, inB] of text.matchAll(pair)) {
        const [inch, mm] = [number(inA ?? inB ?? '') * 25.4, Number(mmA ?? mmB)];
        expect(Math.abs(inch / mm - 1), `${at}: ${whole}`).toBeLessThan(0.06);
        found += 1;
      }
    expect(found).toBeGreaterThan(40);
  });
});

describe('the checks that come first, as printed', () => {
  test.each([
    ['as-worn', 'Fitting Dresses (1946), US Department of Agriculture, part 2'],
    ['grain-level', 'Fitting Dresses (1946), US Department of Agriculture, part 1'],
    ['side-seams-plumb', 'Garment Fitting (1962)'],
    ['shoulder-seam-on-top', 'Fitting Dresses (1946), US Department of Agriculture, part 5'],
    ['neckline-close', 'Fitting Dresses (1946), US Department of Agriculture, part 5'],
    ['armhole-smooth', 'Fitting Dresses (1946), US Department of Agriculture, part 10'],
    ['sleeve-hangs-straight', 'Fitting Dresses (1946), US Department of Agriculture, part 10'],
    ['sleeve-bends', 'Fitting Dresses (1946), US Department of Agriculture, part 10'],
    ['collar-one-finger', 'common practice, no source'],
    ['arms-forward', 'common practice, no source'],
    ['band-stays', 'from memory'],
  ])('%s: %s', (id, source) => {
    const check = CHECKS.find((one) => one.id === id);
    expect(check && from(check.source)).toContain(source);
  });

  // Fitting Dresses, 1946, part 5: the grain is levelled before the shoulders, the shoulders before the neckline.
  test('come in the order of the handbook', () => {
    const at = (id: string): number => CHECKS.findIndex((one) => one.id === id);
    expect(at('grain-level')).toBeLessThan(at('shoulder-seam-on-top'));
    expect(at('shoulder-seam-on-top')).toBeLessThan(at('neckline-close'));
    // Part 10: the armhole is right before the sleeve is set.
    expect(at('armhole-smooth')).toBeLessThan(at('sleeve-hangs-straight'));
  });
});

test('what is printed bears the year of its book', () => {
  const years: Readonly<Record<string, string>> = {
    'Fitting Dresses': '1946',
    'Garment Fitting': '1962',
    'The New Dressmaker, Butterick': '1921',
    'Textiles and Clothing, Watson': '1907',
    'Clothing for Women, Baldt': '1916',
    'A Complete Course in Dressmaking': '1921',
    'Encyclopedia of Needlework, Dillmont': 'undated',
  };
  const named = [...ENTRIES, ...ENTRIES.flatMap(({ causes }) => causes), ...CHECKS].map(
    ({ source }) => source,
  );
  const found = new Set<string>();
  for (const source of named) {
    const year = source.kind === 'published' ? years[source.title] : undefined;
    if (source.kind !== 'published' || year === undefined) continue;
    expect(source.year).toBe(year);
    found.add(source.title);
  }
  expect([...found].sort()).toEqual(Object.keys(years).sort());
});
