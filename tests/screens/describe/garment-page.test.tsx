import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length.ts';
import { addGarment } from '../../../src/outfit/changing/garments.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import { clearDesks, desk, empty, shirt } from './desk.ts';
import { edda, forEdda, PageAt, whereTo, withBlouse } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const field = (form: HTMLElement, name: string): HTMLInputElement =>
  form.querySelector<HTMLInputElement>(`[data-field="${name}"] input`)!;
const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const card = (id: string): HTMLElement => document.querySelector<HTMLElement>(`li[data-unit="${id}"]`)!;

/** Front, back on a garment, with what is proposed. */
function bodied(outfit: Outfit): Outfit {
  let now = outfit;
  for (const [unit, name] of [
    ['plain-front', 'Front'],
    ['plain-back', 'Back'],
  ] as const) {
    const at = suggestPlaces(now.garments[0]!, unitCalled(unit)!);
    const made = putOn(now, 'blouse', unit, { name, entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    now = made.value.outfit;
  }
  return now;
}

describe('the outfit', () => {
  test('with nothing in it asks for a garment, adds it and goes there', async () => {
    const { session, outfit } = desk(empty);
    render(<PageAt session={session} at="" />);
    const buttons = screen.getAllByRole('button');
    expect(buttons.map((one) => one.textContent)).toEqual(['Add it']);
    const form = part('add-garment');
    fireEvent.submit(form);
    expect(form.textContent).toContain('Give it a name');
    fireEvent.input(field(form, 'name'), { target: { value: 'Blouse' } });
    fireEvent.submit(form);
    await session.settled();
    expect(outfit().garments.map(({ name }) => name)).toEqual(['Blouse']);
    expect(whereTo()).toBe('garment/blouse');
  });

  test('keeps the name of a garment that was begun and not added', () => {
    const { session } = desk(empty);
    const first = render(<PageAt session={session} at="" />);
    fireEvent.input(field(part('add-garment'), 'name'), { target: { value: 'Petti' } });
    first.unmount();
    render(<PageAt session={session} at="" />);
    expect(field(part('add-garment'), 'name').value).toBe('Petti');
  });

  test('says of each garment whose it is, and how much there is of it', () => {
    const { session } = desk(shirt);
    render(<PageAt session={session} at="" />);
    const [garment] = shirt.garments;
    const steps = session.running.value!.sequence.length;
    expect(document.querySelector(`[data-garment="${garment!.id}"]`)!.textContent).toContain(
      `${garment!.pieces.length} pieces, ${steps} steps`,
    );
  });
});

describe('a garment', () => {
  test('offers what is likely next, and to begin with only what hangs on nothing', () => {
    const next = () =>
      [...part('next').querySelectorAll<HTMLElement>('a[data-unit]')].map((one) => one.dataset.unit);
    const first = render(<PageAt session={desk(withBlouse).session} at="garment/blouse" />);
    expect(next()).toContain('plain-front');
    expect(next()).not.toContain('plain-back');
    first.unmount();
    render(<PageAt session={desk(bodied(withBlouse)).session} at="garment/blouse" />);
    expect(next()).toEqual(expect.arrayContaining(['flat-collar', 'plain-sleeve']));
    expect(next()).not.toContain('plain-front');
  });

  test('lists its parts by the unit that brought them, and the maker’s own', () => {
    const bodiedBlouse = bodied(withBlouse);
    const [garment] = bodiedBlouse.garments;
    const own = { ...garment!.pieces[0]!, id: 'pocket', name: 'Pocket' };
    const { session } = desk({
      ...bodiedBlouse,
      garments: [{ ...garment!, pieces: [...garment!.pieces, own] }],
    });
    render(<PageAt session={session} at="garment/blouse" />);
    expect(card('front').querySelector('svg.sketch')).not.toBeNull();
    expect(card('front').querySelector('a[data-part-of="front"]')!.getAttribute('href')).toBe(
      '#/outfit/lamplighter/garment/blouse/piece/front',
    );
    expect(card('').querySelector('a[data-part-of="pocket"]')).not.toBeNull();
    expect(card('front').querySelector('a[data-part-of="pocket"]')).toBeNull();
  });

  test('shows what falls with a part before it is taken off', async () => {
    const { session, outfit } = desk(bodied(withBlouse));
    render(<PageAt session={session} at="garment/blouse" />);
    const before = outfit();
    fireEvent.click(within(card('front')).getByRole('button', { name: 'Take off Front' }));
    expect(part('take-off')).not.toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Leave it on', hidden: true }));
    expect(part('take-off')).toBeNull();
    expect(outfit()).toEqual(before);
    fireEvent.click(within(card('front')).getByRole('button', { name: 'Take off Front' }));
    fireEvent.click(screen.getByRole('button', { name: 'Take it off', hidden: true }));
    await session.settled();
    expect(outfit().garments[0]!.units.map(({ id }) => id)).not.toContain('front');
    fireEvent.click(screen.getByRole('button', { name: /^Undo/ }));
    await session.settled();
    expect(outfit()).toEqual(before);
  });

  test('tells lengths that do not fit at their part, and by how much', () => {
    const [garment] = shirt.garments;
    // The side of the front is drawn longer by 1 in at its lower end.
    const join = garment!.joins.find(
      ({ seam, this: run, to }) => seam === 'plain' && run.length === 1 && to.length === 1,
    )!;
    const longer = garment!.pieces.map((piece) =>
      piece.id !== join.this[0]!.piece ? piece : stretched(piece, join.this[0]!.edge),
    );
    const { session } = desk({
      ...shirt,
      garments: [{ ...garment!, pieces: longer }, ...shirt.garments.slice(1)],
    });
    render(<PageAt session={session} at={`garment/${garment!.id}`} />);
    const misfits = [...document.querySelectorAll('[data-part="misfit"]')];
    expect(misfits.length).toBeGreaterThan(0);
    expect(
      misfits.some((one) => one.querySelector('a')!.getAttribute('href')!.endsWith(`/join/${join.id}`)),
    ).toBe(true);
    expect(misfits[0]!.textContent).toMatch(/\d (in|mm)/);
  });

  test('is made once more for another wearer, with the figures that follow their measures', async () => {
    const two = { ...forEdda, wearers: [edda, { id: 'bo', name: 'Bo', measures: { chest: inches(44) } }] };
    const { session, outfit } = desk(bodied(two));
    render(<PageAt session={session} at="garment/blouse" />);
    const form = part('another');
    expect(within(form).getByRole<HTMLInputElement>('radio', { name: 'Bo' }).checked).toBe(true);
    fireEvent.input(field(form, 'another'), { target: { value: 'Blouse for Bo' } });
    fireEvent.submit(form);
    await session.settled();
    expect(problem.value).toBe('');
    const [first, second] = outfit().garments;
    expect(second).toMatchObject({ name: 'Blouse for Bo', wearer: 'bo' });
    expect(second!.units.map(({ unit }) => unit)).toEqual(first!.units.map(({ unit }) => unit));
    expect(second!.pieces[0]!.outline).not.toEqual(first!.pieces[0]!.outline);
    expect(whereTo()).toBe(`garment/${second!.id}`);
  });

  test('is renamed, and taken out of the outfit', async () => {
    const { outfit: two } = addGarment(bodied(withBlouse), { name: 'Skirt' });
    const { session, outfit } = desk(two);
    render(<PageAt session={session} at="garment/blouse" />);
    const form = screen.getByRole('form', { name: 'Name', hidden: true });
    fireEvent.input(field(form, 'rename'), { target: { value: 'Shirt' } });
    fireEvent.submit(form);
    await session.settled();
    expect(outfit().garments.map(({ name }) => name)).toEqual(['Shirt', 'Skirt']);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Shirt');
    fireEvent.click(screen.getByRole('button', { name: 'Take Shirt out of the outfit', hidden: true }));
    fireEvent.click(screen.getByRole('button', { name: 'Take it off', hidden: true }));
    await session.settled();
    expect(outfit().garments.map(({ name }) => name)).toEqual(['Skirt']);
    expect(whereTo()).toBe('');
  });
});

type PieceOf = Outfit['garments'][number]['pieces'][number];

/** The piece with one edge drawn out to the side by a kink, so that it is longer between the same two corners. */
function stretched(piece: PieceOf, edge: string): PieceOf {
  let from = piece.outline.start;
  const edges = piece.outline.edges.map((one) => {
    const end = one.segments.at(-1)!.to;
    const middle = {
      x: Math.round((from.x + end.x) / 2 + inches(2)),
      y: Math.round((from.y + end.y) / 2 + inches(2)),
    } as PieceOf['outline']['start'];
    from = end;
    return one.name !== edge
      ? one
      : {
          ...one,
          segments: [
            { kind: 'line' as const, to: middle },
            { kind: 'line' as const, to: end },
          ],
        };
  });
  return { ...piece, outline: { ...piece.outline, edges } };
}
