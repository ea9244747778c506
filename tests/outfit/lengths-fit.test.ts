import { describe, expect, test } from 'vitest';
import { toMm } from '../../src/length/length.ts';
import type { Marking } from '../../src/length/writing.ts';
import { type Fit, lengthsFit } from '../../src/outfit/lengths-fit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { demo, demos } from './demo-files.ts';

const MM: Marking = { unit: 'mm', step: 1 };

/** A strip so long, with its upper edge under the name given. */
const strip = (id: string, long: number, edge: string, extra: object = {}) => ({
  id,
  name: id.charAt(0).toUpperCase() + id.slice(1).replaceAll('-', ' '),
  cloth: 'lawn',
  cut: 'one',
  allowance: '10 mm',
  outline: {
    unit: 'mm',
    start: [0, 0],
    edges: [
      { name: edge, to: [long, 0] },
      { name: 'right-end', to: [long, 50] },
      { name: 'foot', to: [0, 50] },
      { name: 'left-end', to: [0, 0] },
    ],
  },
  ...extra,
});
const cloth = (id: string, stretch: number) => ({
  id,
  name: id,
  width: '1 m',
  fibre: 'cotton',
  stretch: { across: stretch, along: 0 },
  iron: 200,
  thread: 'white',
  needle: '70/10',
});

/** How two edges of these lengths agree. */
function fitsOf(
  one: readonly [string, number, string],
  to: readonly [string, number, string],
  more: { cloth?: string; works?: readonly object[]; join?: object; pieces?: readonly object[] } = {},
): readonly Fit[] {
  const read = readOutfit({
    format: 'slipbaste-outfit',
    version: 1,
    id: 'o',
    name: 'O',
    event: { name: 'a day', date: '2027-05-29' },
    cloths: [cloth('lawn', 0), cloth('jersey', 40)],
    markers: [{ id: 'chalk', name: 'chalk', kind: 'chalk' }],
    garments: [
      {
        id: 'g',
        name: 'G',
        pieces: [
          strip(...one),
          strip(...to, more.cloth === undefined ? {} : { cloth: more.cloth }),
          ...(more.pieces ?? []),
        ],
        works: more.works ?? [],
        joins: [
          {
            id: 'seam',
            name: 'The seam',
            this: [`${one[0]}.${one[2]}`],
            to: [`${to[0]}.${to[2]}`],
            depth: '15 mm',
            ...more.join,
          },
        ],
      },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  const [garment] = read.value.garments;
  return lengthsFit(read.value, garment!, MM);
}
const gather = (on: string, edge: string, fullness: number) => ({
  kind: 'gather',
  id: 'gathers',
  name: 'Gathers',
  on,
  edge,
  fullness,
  marker: 'chalk',
});

describe('whether edges that are sewn together are as long as each other', () => {
  test.each(demos)('every seam of %s goes together as it is', (name) => {
    const outfit = demo(name);
    const fits = outfit.garments.flatMap((garment) => lengthsFit(outfit, garment, MM));
    expect(fits.length).toBeGreaterThan(7);
    expect(fits.filter(({ within, longer }) => !within || longer !== 'none')).toEqual([]);
    expect(fits.every(({ by }) => toMm(by) < 1.5)).toBe(true);
  });

  test('the two lengths are named, and by how much they differ', () => {
    const [agreed] = fitsOf(['collar', 400, 'neck'], ['front', 435, 'neck']);
    expect(agreed).toMatchObject({ join: 'seam', kind: 'edges', longer: 'to', within: false });
    expect(toMm(agreed!.by)).toBe(35);
    expect(agreed!.say).toBe(
      'The neck of the front (435 mm) is 35 mm longer than the neck of the collar (400 mm): lengthen the neck of the collar, or take the difference in at the neck of the front.',
    );
  });

  test('both ends of what is alike: three millimetres, or five thousandths of a long seam', () => {
    expect(fitsOf(['a', 300, 'x'], ['b', 303, 'x'])[0]).toMatchObject({ within: true, longer: 'none' });
    expect(fitsOf(['a', 300, 'x'], ['b', 304, 'x'])[0]).toMatchObject({ within: false, longer: 'to' });
    expect(fitsOf(['a', 2010, 'x'], ['b', 2000, 'x'])[0]).toMatchObject({ within: true, longer: 'this' });
    expect(fitsOf(['a', 2011, 'x'], ['b', 2000, 'x'])[0]).toMatchObject({ within: false });
  });

  test('a cap is eased into its armhole as far as caps are, and an armhole never into its cap', () => {
    const [eased] = fitsOf(['body', 470, 'armhole'], ['sleeve', 482, 'cap']);
    expect(eased).toMatchObject({ within: true, longer: 'to', source: { kind: 'practice' } });
    expect(eased!.say).toBe(
      'The cap of the sleeve (482 mm) is 12 mm longer than the armhole of the body (470 mm): ease it in.',
    );
    const [much] = fitsOf(['body', 470, 'armhole'], ['sleeve', 510, 'cap']);
    expect(much).toMatchObject({ within: false });
    expect(much!.say).toContain('more than can be eased in');
    expect(fitsOf(['body', 482, 'armhole'], ['sleeve', 470, 'cap'])[0]).toMatchObject({ within: false });
  });

  test('a back shoulder is eased to the front one, not the other way round', () => {
    expect(fitsOf(['front', 120, 'shoulder'], ['back', 126, 'shoulder'])[0]).toMatchObject({ within: true });
    expect(fitsOf(['front', 126, 'shoulder'], ['back', 120, 'shoulder'])[0]).toMatchObject({ within: false });
  });

  test('gathers are drawn up by their fullness, and give a little', () => {
    const works = [gather('frill', 'seam', 2.5)];
    const agreed = (long: number) => fitsOf(['frill', long, 'seam'], ['cuff', 240, 'lower'], { works })[0]!;
    expect(agreed(600)).toMatchObject({ kind: 'gather', within: true, longer: 'none' });
    expect(agreed(625)).toMatchObject({ within: true, longer: 'this' });
    expect(agreed(625).say).toContain('draw the gathers up to fit, 2.6 to 1');
    expect(agreed(720)).toMatchObject({ within: false, longer: 'this' });
    expect(agreed(720).say).toContain('(720 mm, gathered to 288 mm)');
    expect(agreed(720).say).toContain('gather it 3 to 1 instead');
    expect(agreed(200).say).toContain('there is nothing to gather');
  });

  test('the shorter edge may be stretched on where its cloth gives', () => {
    const agreed = (long: number) =>
      fitsOf(['body', long, 'neck'], ['band', 400, 'upper'], { cloth: 'jersey' })[0];
    expect(agreed(470)).toMatchObject({ within: true, longer: 'this' });
    expect(agreed(481)).toMatchObject({ within: false });
    expect(fitsOf(['body', 470, 'neck'], ['band', 400, 'upper'])[0]).toMatchObject({ within: false });
  });

  test('a trim that is caught is held against the side that it is basted to', () => {
    const trim = (long: number) =>
      fitsOf(['front', 400, 'panel'], ['side', 400, 'panel'], {
        pieces: [strip('frill', long, 'inner')],
        works: [gather('frill', 'inner', 2)],
        join: { catches: [{ trim: 'frill.inner', depth: '10 mm' }] },
      })[1]!;
    expect(trim(800)).toMatchObject({ kind: 'trim', within: true });
    expect(trim(700)).toMatchObject({ within: false, longer: 'to' });
    expect(trim(700).say).toContain('let the inner edge of the frill end before the seam does');
    expect(trim(900)).toMatchObject({ within: false, longer: 'this' });
  });

  test('an edge that covers the seam is held against it too', () => {
    const fits = fitsOf(['sleeve', 240, 'lower'], ['cuff', 240, 'upper'], {
      pieces: [strip('lining', 255, 'upper')],
      join: { seam: 'covered', cover: 'lining.upper' },
    });
    expect(fits.map(({ within }) => within)).toEqual([true, false]);
  });

  test('two sides that would bear the same name are told apart by the seam', () => {
    const outfit = demo('harbour-clockmaker');
    const panel = lengthsFit(outfit, outfit.garments[0]!, MM).find(({ join }) => join === 'panel');
    expect(panel?.say).toMatch(/^One side of the panel seam .* the other side of the panel seam /);
  });
});
