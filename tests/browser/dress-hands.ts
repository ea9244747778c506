import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { touch } from './bench-page.ts';
import { addGarment, beginOwn, described, putOn } from './describe-page.ts';

const part = (page: Page, name: string): Locator => page.locator(`[data-part="${name}"]`);
const keep = (page: Page): Promise<void> => touch(part(page, 'keep'));
const own = (page: Page, name: string): Promise<void> => touch(page.getByRole('link', { name, exact: true }));

/** Unfolds what a field is folded away in. */
async function unfold(inside: Locator, name: string): Promise<void> {
  const folded = inside.locator('details.more-fields:not([open])', {
    has: inside.page().locator(`[data-field="${name}"]`),
  });
  if ((await folded.count()) > 0) await touch(folded.locator('> summary'));
}

/** Answers what a form asks, by the names of its fields: written where there is a line to write on, else chosen. */
export async function answer(inside: Locator, entries: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(entries)) {
    const box = inside.locator(`[data-field="${name}"]`);
    // What kind of field it is can be asked only once the page is there.
    await box.first().waitFor({ state: 'attached' });
    await unfold(inside, name);
    const line = box.locator('input.field, textarea');
    const list = box.locator('select');
    if ((await line.count()) > 0) await line.fill(text);
    else if ((await list.count()) > 0) await list.selectOption(text);
    else await touch(box.locator(`label[data-kind="${text}"], label:has(input[value="${text}"])`));
  }
}

/** Chooses where a ready-made part goes, by what is said of the place; looks at the others where it is not proposed. */
async function place(page: Page, name: string, said: string | RegExp): Promise<void> {
  const box = page.locator(`[data-field="at.${name}"]`);
  const option = box.locator('label').filter({ hasText: said }).first();
  if ((await option.count()) === 0) await touch(box.getByRole('button', { name: /^Show all/ }));
  await touch(option);
}

/** Touches edges in the list below their drawing, piece by piece. */
async function edges(box: Locator, ...refs: readonly string[]): Promise<void> {
  const closed = box.locator('[data-part="choose-edges"]:not([open]) > summary');
  if ((await closed.count()) > 0) await touch(closed);
  await box.locator('[data-part="edge-picker"]').waitFor();
  for (const ref of refs) {
    const piece = box.locator(`button[data-piece="${ref.split('.')[0]}"]`);
    if ((await piece.count()) > 0) await touch(piece);
    await touch(box.locator(`button[data-edge="${ref}"]`));
  }
}

async function aboutIt(page: Page): Promise<void> {
  await touch(page.getByRole('link', { name: /^About/ }));
  const form = part(page, 'about').locator('form');
  await answer(form, {
    event: 'First night of an invented opera',
    about:
      'A ballroom dress for a community opera that does not exist. Outfit, wearer and occasion are invented. Panelled bodice and skirt of stretch satin, frill round the hem, lantern sleeves of mesh with leaves on them, floats at the wrists, a lattice of beads in front and a bow behind. It has no fastening: the neck goes over the head.',
  });
  await touch(page.getByRole('button', { name: 'Keep this' }));
  await touch(page.getByRole('link', { name: 'The Glasshouse Astronomer' }));
}

const CLOTHS = [
  {
    name: 'Dusk stretch satin',
    fibre: 'polyester and elastane',
    thread: 'dusk blue',
    needle: 'stretch 75/11',
    width: '1600',
    iron: '110',
    across: '135',
    along: '120',
  },
  {
    name: 'Dusk mesh',
    fibre: 'polyamide and elastane',
    thread: 'dusk blue',
    needle: 'stretch 75/11',
    width: '1500',
    iron: '110',
    across: '160',
    along: '140',
  },
  {
    name: 'Silver organza',
    fibre: 'polyester',
    thread: 'silver grey',
    needle: '60/8',
    width: '1500',
    iron: '110',
  },
];

async function clothsAndMarkers(page: Page): Promise<void> {
  await touch(page.getByRole('link', { name: /^Cloths and markers/ }));
  for (const cloth of CLOTHS) {
    await touch(page.getByRole('button', { name: 'Add a cloth' }));
    await answer(part(page, 'cloth-form'), cloth);
    await touch(page.getByRole('button', { name: 'Add this cloth' }));
    await part(page, 'cloth-form').waitFor({ state: 'detached' });
  }
  await touch(page.getByRole('button', { name: 'Remove Light cotton' }));
  await touch(page.getByRole('button', { name: 'Add a marker' }));
  await answer(part(page, 'marker-form'), { name: 'Water-soluble pen', kind: 'water-fading' });
  await touch(page.getByRole('button', { name: 'Add this marker' }));
  await part(page, 'marker-form').waitFor({ state: 'detached' });
  await touch(page.getByRole('button', { name: 'Remove Thread tacks' }));
  await touch(page.getByRole('link', { name: 'The Glasshouse Astronomer' }));
}

async function wearer(page: Page): Promise<void> {
  await touch(page.getByRole('link', { name: /^Add a wearer/ }));
  await answer(part(page, 'add-wearer'), { name: 'the astronomer' });
  await touch(page.getByRole('button', { name: 'Add a wearer' }));
  await answer(part(page, 'wearer'), {
    height: '1680',
    neck: '360',
    shoulder: '122',
    'across-back': '340',
    chest: '920',
    waist: '740',
    'back-waist': '405',
    armhole: '420',
    'upper-arm': '290',
    'arm-length': '580',
    wrist: '165',
    hand: '195',
    hip: '980',
    'waist-to-floor': '1050',
  });
  await touch(page.getByRole('button', { name: 'Keep the measures' }));
  await touch(page.getByRole('link', { name: 'The Glasshouse Astronomer' }));
}

/** Puts a ready-made part on with these figures. */
const put = (
  page: Page,
  unit: string,
  entries: Readonly<Record<string, string>>,
  where?: readonly [place: string, said: string | RegExp],
): Promise<void> =>
  putOn(page, unit, async () => {
    if (where) await place(page, ...where);
    await answer(part(page, 'unit'), entries);
  });

async function readyMade(page: Page): Promise<void> {
  await put(page, 'princess-front', {
    opens: 'fold',
    from: 'armhole',
    neckWide: '105',
    neckDeep: '180',
    shoulder: '90',
    name: 'Front',
  });
  await put(page, 'princess-back', { from: 'armhole', neckDeep: '60', name: 'Back' });
  await put(page, 'circle-skirt', { circles: '0.5', length: '800', name: 'Skirt' });
  await put(
    page,
    'lantern-sleeve',
    {
      ends: 'cuff',
      lower: '250',
      cuffDepth: '10',
      opening: '0',
      ease: '0',
      'cloth.main': 'dusk-mesh',
      'cloth.lower': 'dusk-mesh',
      name: 'Sleeve',
    },
    ['armhole', /armhole/],
  );
  await put(page, 'facing', { stiffening: 'none', width: '50', name: 'Neck facing' }, ['edges', /neck/]);
  await put(
    page,
    'circular-frill',
    { depth: '150', circles: '1', 'cloth.main': 'silver-organza', name: 'Hem frill' },
    ['edge', /^Skirt.*hem/],
  );
  await put(page, 'applique-on-mesh', { wide: '60', high: '90', name: 'Leaves' }, ['piece', 'Upper sleeve']);
  await put(page, 'beaded-lattice', { name: 'Lattice' }, ['piece', 'Centre front']);
  await put(page, 'loop-bow', { tail: '400', 'cloth.main': 'silver-organza', name: 'Bow' }, [
    'on',
    'Centre back',
  ]);
}

async function floats(page: Page): Promise<void> {
  await own(page, 'Own piece');
  const piece = part(page, 'piece');
  await answer(piece, { name: 'Wrist float', shape: 'corners' });
  await answer(piece, {
    corners: '0, 0 upper\n250, 0 back side\n370, 420 back point\n125, 640 front point\n-120, 420 front side',
    cloth: 'dusk-mesh',
    cut: 'pair',
    allowance: '15',
  });
  await keep(page);
  await page.getByRole('heading', { level: 1, name: 'Wrist float' }).waitFor();

  await page.locator('[data-touch="wrist-float.upper"]').tap({ force: true });
  await touch(part(page, 'join-edge'));
  const join = part(page, 'join');
  await edges(join.locator('[data-field="to"]'), 'sleeve-lower.lower');
  await part(page, 'fits').locator('[data-within="true"]').waitFor();
  await answer(join, { name: 'Float seam', finish: 'overlock', worked: 'round' });
  await keep(page);
  await described(page).garment.waitFor();

  await own(page, 'Own work');
  await touch(page.locator('[data-kind="own"]'));
  const work = part(page, 'work');
  await answer(work, { name: 'Rolled edge of the floats', on: 'wrist-float' });
  const row = (i: number): Locator => work.locator(`[data-row="${i}"]`);
  await answer(row(0), {
    say: 'Overlock the sides and points of each float with a narrow rolled edge, stopping at the seam line above',
    station: 'overlocker',
    minutes: '15',
  });
  await touch(part(page, 'add-steps'));
  await answer(row(1), {
    say: 'Press the rolled edges from the wrong side, the iron cool, without pulling',
    station: 'iron',
    minutes: '5',
  });
  const sides = ['back-side', 'back-point', 'front-point', 'front-side'];
  await unfold(work, 'finishes');
  await edges(work.locator('[data-field="finishes"]'), ...sides.map((side) => `wrist-float.${side}`));
  await keep(page);
  await described(page).garment.waitFor();
}

/** Puts in a try-on of the maker's own, from the page of the garment. */
export async function tryOn(page: Page): Promise<void> {
  await own(page, 'Try-on');
  const form = part(page, 'try-on');
  await answer(form, { name: 'The dress with its frill, danced in' });
  const looks = [
    'It goes on and off over the head without a stitch cracking',
    'The waist seam stays at the waist with both arms up',
    'A long step and a turn do not catch the hem',
  ];
  for (const [i, words] of looks.entries()) {
    if (i > 0) await touch(part(page, 'add-checks'));
    await answer(form.locator(`[data-row="${i}"]`), { words });
  }
  for (const after of ['Waist seam of the skirt', 'Hem frill seam'])
    await touch(form.locator('[data-field="after"] label').filter({ hasText: after }));
  await keep(page);
  await described(page).garment.waitFor();
}

/** Describes the whole dress by touching and typing, from the first screen of an empty app. */
export async function describeDress(page: Page): Promise<void> {
  await beginOwn(page, 'The Glasshouse Astronomer', '2027-05-29', 'millimetres');
  await aboutIt(page);
  await clothsAndMarkers(page);
  await wearer(page);
  await addGarment(page, 'Ballgown');
  await readyMade(page);
  await floats(page);
  await tryOn(page);
}

/** Saves the description with its own button on the page of the outfit, and gives back what lies in the file. */
export async function savedDescription(
  page: Page,
): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    touch(page.locator('[data-part="save-description"]')),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}
