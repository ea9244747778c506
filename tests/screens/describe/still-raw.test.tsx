import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { clearDesks, desk } from './desk.ts';
import { forEdda, PageAt } from './pages.tsx';

afterEach(() => {
  cleanup();
  clearDesks();
});

const wearing = (...units: readonly (readonly [string, string])[]): Outfit =>
  units.reduce((now: Outfit, [unit, name]) => {
    const at = suggestPlaces(now.garments[0]!, unitCalled(unit)!);
    const made = putOn(now, 'blouse', unit, { name, entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    return made.value.outfit;
  }, forEdda);
const BODY = [
  ['plain-front', 'Front'],
  ['plain-back', 'Back'],
] as const;
const section = (): HTMLElement => document.querySelector<HTMLElement>('[data-part="still-raw"]')!;
const links = (): readonly string[] =>
  [...section().querySelectorAll('a')].map(({ textContent }) => textContent);

test('a garment tells the edges that are still raw by their pieces, and each leads to what fits it', () => {
  const { session } = desk(wearing(...BODY, ['plain-sleeve', 'Sleeve']));
  render(<PageAt session={session} at="garment/blouse" />);
  const rows = within(section()).getAllByRole('listitem');
  expect(rows.map((row) => row.querySelector('b')?.textContent)).toEqual(['Front', 'Back', 'Sleeve']);
  expect(links()).toContain('Sleeve, lower edge');
  expect(links()).not.toContain('Front, armhole');
  expect(within(section()).getByRole('link', { name: 'Sleeve, lower edge' }).getAttribute('href')).toMatch(
    /garment\/blouse\/edge\/sleeve\.lower$/,
  );
});

test('nothing is said of an empty garment, and a finished one is told so', () => {
  const bare = desk(forEdda);
  render(<PageAt session={bare.session} at="garment/blouse" />);
  expect(section()).toBeNull();
  cleanup();
  const tie = desk(wearing(['neckcloth-bow', 'Neckcloth']));
  render(<PageAt session={tie.session} at="garment/blouse" />);
  expect(links()).toEqual([]);
  expect(section().textContent).toContain('every edge');
});

test('an edge shows the parts that fit it, and the part is put on just there', async () => {
  const { session, outfit } = desk(wearing(...BODY, ['plain-sleeve', 'Sleeve']));
  render(<PageAt session={session} at="garment/blouse/edge/sleeve.lower" />);
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Sleeve, lower edge');
  const hem = document.querySelector<HTMLAnchorElement>('a[data-unit="hem"]')!;
  expect(hem.getAttribute('href')).toMatch(/garment\/blouse\/add\/hem\/sleeve\.lower$/);
  expect(document.querySelector('a[data-unit="flat-collar"]')).toBeNull();
  cleanup();
  render(<PageAt session={session} at="garment/blouse/add/hem/sleeve.lower" />);
  fireEvent.submit(screen.getByRole('button', { name: 'Put it on' }).closest('form')!);
  await session.settled();
  expect(outfit().garments[0]?.units.at(-1)?.at).toEqual({ edges: ['sleeve.lower'] });
  cleanup();
  render(<PageAt session={session} at="garment/blouse/edge/sleeve.lower" />);
  expect(document.querySelector('main')?.textContent).toContain('This edge is finished');
});

test('an edge that no part fits names the maker’s own ways', () => {
  const worn = wearing(['plain-front', 'Front']);
  const [garment] = worn.garments;
  const [front] = garment!.pieces;
  const edges = front!.outline.edges.map((edge) => ({
    ...edge,
    name: `flap-${edge.name.length}${edge.name}x`,
  }));
  const flap = { ...front!, id: 'flap', name: 'Flap', outline: { ...front!.outline, edges } };
  const { session } = desk({ ...worn, garments: [{ ...garment!, pieces: [...garment!.pieces, flap] }] });
  render(<PageAt session={session} at={`garment/blouse/edge/flap.${edges[0]!.name}`} />);
  expect(document.querySelector('a[data-unit]')).toBeNull();
  for (const name of ['Own work', 'Own join']) expect(screen.getByRole('link', { name })).toBeTruthy();
});
