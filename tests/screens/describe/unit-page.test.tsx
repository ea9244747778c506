import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import type { Session } from '../../../src/screens/session.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { clearDesks, desk } from './desk.ts';
import { forEdda, PageAt, whereTo, withBlouse } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const box = (name: string): HTMLElement =>
  document.querySelector<HTMLElement>(`[data-field="${CSS.escape(name)}"]`)!;
const input = (name: string): HTMLInputElement => box(name).querySelector('input')!;
const fault = (name: string): string | undefined =>
  box(name).querySelector('[data-part="fault"]')?.textContent ?? undefined;
const type = (name: string, text: string): void => {
  fireEvent.input(input(name), { target: { value: text } });
};
const press = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name }));
};

/** Puts a unit on with what is proposed, as a maker does. */
async function putOn(session: Session, unit: string): Promise<void> {
  const { unmount } = render(<PageAt session={session} at={`garment/blouse/add/${unit}`} />);
  press('Put it on');
  await session.settled();
  expect(problem.value).toBe('');
  unmount();
}

const unitsOf = (outfit: Outfit): readonly string[] => outfit.garments[0]!.units.map((use) => use.unit);

describe('a ready-made part', () => {
  test('is put on any piece there is: those that are less likely are shown when they are asked for', async () => {
    const { session, outfit } = desk(withBlouse);
    for (const unit of ['plain-front', 'plain-back', 'puffed-sleeve', 'buttoned-cuff'])
      await putOn(session, unit);
    const [garment] = outfit().garments;
    render(<PageAt session={session} at="garment/blouse/add/beaded-lattice" />);
    const names = (): readonly string[] =>
      [...box('at.piece').querySelectorAll('label')].map((one) => one.textContent ?? '');
    const [likely] = names();
    expect(names()).toEqual(['Puffed sleeve']);
    press('Show all pieces');
    expect([...names()].sort()).toEqual(garment!.pieces.map(({ name }) => name).sort());
    const last = names().at(-1)!;
    fireEvent.click(within(box('at.piece')).getByRole('radio', { name: last }));
    press('Show fewer');
    expect(names()[0]).toBe(likely);
    expect(names().at(-1)).toBe(last);
    expect(names().length).toBeLessThan(garment!.pieces.length);
    expect(within(box('at.piece')).getByRole<HTMLInputElement>('radio', { name: last }).checked).toBe(true);
  });

  test('is put on with one touch, and the way leads back to the garment, which says so', async () => {
    const { session, acts, outfit } = desk(withBlouse);
    await putOn(session, 'plain-front');
    expect(acts()).toHaveLength(1);
    expect(acts()[0]).toMatchObject({ kind: 'redescribed', say: 'put on Front' });
    expect(unitsOf(outfit())).toEqual(['plain-front']);
    expect(outfit().garments[0]!.units[0]!.entries).toEqual({});
    expect(whereTo()).toBe('garment/blouse');
    render(<PageAt session={session} at="garment/blouse" />);
    const card = document.querySelector('[data-unit="front"]')!;
    expect(card.textContent).toContain('New.');
    expect(screen.getByRole('status').textContent).toBe('Front is on.');
    press(/^Undo/);
    await session.settled();
    expect(unitsOf(outfit())).toEqual([]);
  });

  test('proposes figures from the measures, each with its reason', () => {
    const { session } = desk(forEdda);
    render(<PageAt session={session} at="garment/blouse/add/plain-front" />);
    // A quarter of 36 in and 3 in.
    expect(input('chest').value).toBe('9 3/4');
    expect(box('chest').textContent).toContain('A quarter of the chest, with 3 in');
    // A fifth of 15 in.
    expect(input('neckWide').value).toBe('3');
    type('chest', '11');
    expect(box('chest').textContent).toContain('Proposed: 9 3/4. A quarter of the chest');
    press('Back to the proposed figures');
    expect(input('chest').value).toBe('9 3/4');
  });

  test('asks at most six figures at once and says what stands in those folded away', () => {
    const { session } = desk(withBlouse);
    render(<PageAt session={session} at="garment/blouse/add/plain-front" />);
    const more = document.querySelector('[data-part="more-fields"]')!;
    const all = [...document.querySelectorAll('.field-box')];
    const open = all.filter((one) => !more.contains(one) && one.getAttribute('data-field') !== 'name');
    expect(open.length).toBeLessThanOrEqual(7);
    expect(more.querySelector('summary')!.textContent).toContain('seam allowance 1/2 in');
  });

  test('keeps what was typed when the page is left, and forgets it once it is on', async () => {
    const { session, outfit } = desk(withBlouse);
    const at = 'garment/blouse/add/plain-front';
    const first = render(<PageAt session={session} at={at} />);
    type('shoulder', '4 3/4');
    type('name', 'Left and right front');
    first.unmount();
    const second = render(<PageAt session={session} at={at} />);
    expect(input('shoulder').value).toBe('4 3/4');
    expect(input('name').value).toBe('Left and right front');
    press('Put it on');
    await session.settled();
    second.unmount();
    expect(outfit().garments[0]!.units[0]).toMatchObject({
      name: 'Left and right front',
      entries: { shoulder: '4 3/4' },
    });
    render(<PageAt session={session} at={at} />);
    expect(input('shoulder').value).toBe('5');
    // The name of the one that is on is taken.
    expect(input('name').value).toBe('Front');
  });

  test('a fault stands at its field; nothing is put on, and the last good drawing stays', async () => {
    const { session, acts } = desk(withBlouse);
    render(<PageAt session={session} at="garment/blouse/add/plain-front" />);
    expect(document.querySelector('[data-part="outcome"] svg')).not.toBeNull();
    type('chest', '9 3/');
    expect(fault('chest')).toContain('9 3/');
    press('Put it on');
    await session.settled();
    expect(acts()).toEqual([]);
    expect(document.querySelector('[data-part="outcome"]')!.className).toContain('stale');
    expect(document.activeElement).toBe(input('chest'));
    type('chest', '9 3/4');
    expect(fault('chest')).toBeUndefined();
  });

  test('says what it needs where it has no place yet', async () => {
    const { session, acts } = desk(withBlouse);
    render(<PageAt session={session} at="garment/blouse/add/plain-sleeve" />);
    expect(box('at.armhole').querySelector('[data-part="fault"]')!.textContent).toContain('armhole');
    press('Put it on');
    await session.settled();
    expect(acts()).toEqual([]);
  });

  test('offers the likeliest place, picked', async () => {
    const { session, outfit } = desk(withBlouse);
    await putOn(session, 'plain-front');
    await putOn(session, 'plain-back');
    render(<PageAt session={session} at="garment/blouse/add/plain-sleeve" />);
    const picked = within(box('at.armhole'))
      .getAllByRole<HTMLInputElement>('radio')
      .filter((one) => one.checked);
    expect(picked).toHaveLength(1);
    press('Put it on');
    await session.settled();
    const { units } = outfit().garments[0]!;
    expect(units.at(-1)!.unit).toBe('plain-sleeve');
    expect(units.at(-1)!.at.armhole!.length).toBe(2);
  });

  test('folds the other places away until they are asked for', async () => {
    const { session } = desk(withBlouse);
    await putOn(session, 'plain-front');
    await putOn(session, 'plain-back');
    render(<PageAt session={session} at="garment/blouse/add/facing" />);
    const places = () => within(box('at.edges')).getAllByRole<HTMLInputElement>('radio');
    expect(places().map(({ checked }) => checked)).toEqual([true]);
    fireEvent.click(within(box('at.edges')).getByRole('button', { name: 'Show all places' }));
    expect(places().length).toBeGreaterThan(1);
    expect(places().filter(({ checked }) => checked)).toHaveLength(1);
  });

  test('says which length would not fit, and by how much, before it is put on', async () => {
    const { session, acts } = desk(withBlouse);
    await putOn(session, 'plain-front');
    const before = acts().length;
    render(<PageAt session={session} at="garment/blouse/add/plain-back" />);
    const misfits = () => [...document.querySelectorAll('.put-on [data-part="misfit"]')];
    expect(misfits()).toEqual([]);
    type('side', '17');
    expect(misfits().map(({ textContent }) => textContent)).toEqual([expect.stringContaining('1 in longer')]);
    type('side', '16');
    expect(misfits()).toEqual([]);
    expect(acts().length).toBe(before);
  });

  test('changed, those put on after it follow', async () => {
    const { session, acts, outfit } = desk(withBlouse);
    for (const unit of ['plain-front', 'plain-back', 'plain-sleeve']) await putOn(session, unit);
    const cap = (): number => {
      const sleeve = outfit().garments[0]!.pieces.find(({ id }) => id === 'plain-sleeve')!;
      return edgeLengths(sleeve.outline).get('cap')!;
    };
    const before = cap();
    render(<PageAt session={session} at="garment/blouse/unit/front" />);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Front');
    type('armhole', '10 1/2');
    press('Change it');
    await session.settled();
    expect(problem.value).toBe('');
    expect(acts().at(-1)).toMatchObject({ kind: 'redescribed', say: 'changed Front' });
    expect(outfit().garments[0]!.units[0]!.entries).toEqual({ armhole: '10 1/2' });
    expect(cap()).toBeGreaterThan(before + inches(1, 2));
    press(/^Undo/);
    await session.settled();
    expect(cap()).toBe(before);
  });
});

describe('what there is to put on', () => {
  const link = (id: string): HTMLElement =>
    document.querySelector<HTMLElement>(`[data-part="units"] [data-unit="${id}"]`)!;

  test('puts what fits now first, and says of the rest what it needs', async () => {
    const { session } = desk(withBlouse);
    const { unmount } = render(<PageAt session={session} at="garment/blouse/add" />);
    expect(link('plain-front').dataset.fits).toBe('yes');
    expect(link('plain-sleeve').dataset.fits).toBeUndefined();
    expect(link('plain-sleeve').textContent).toMatch(/Needs .*armhole/);
    expect(link('plain-front').compareDocumentPosition(link('plain-sleeve'))).toBe(
      Node.DOCUMENT_POSITION_FOLLOWING,
    );
    expect(link('plain-front').getAttribute('href')).toBe(
      '#/outfit/lamplighter/garment/blouse/add/plain-front',
    );
    unmount();
    await putOn(session, 'plain-front');
    await putOn(session, 'plain-back');
    render(<PageAt session={session} at="garment/blouse/add" />);
    expect(link('plain-sleeve').dataset.fits).toBe('yes');
  });
});
