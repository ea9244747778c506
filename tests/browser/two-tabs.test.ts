import { describe, expect, it } from 'vitest';
import { demo } from '../outfit/demo-files.ts';
import { useApp } from './app.ts';
import { bringIn, deedsIn, parts, press, settled, shown, touch, workCard } from './bench-page.ts';
import { firstWith, savedCopy, worked } from './demo.ts';

const app = useApp();
const { step, before, card } = firstWith(demo('harbour-clockmaker'), 'count');
if (card.readout.kind !== 'count') throw new Error('This card counts nothing.');
const [line] = card.readout.lines;

async function twoTabs() {
  const one = await app.open();
  await bringIn(one, await savedCopy('harbour-clockmaker', worked(before, step)));
  await touch(one.getByRole('link', { name: /^Go on/ }));
  await settled(one);
  const two = await app.open(`#/bench/${demo('harbour-clockmaker').id}`);
  await settled(two);
  return { one, two };
}

describe('two tabs at the same card', () => {
  it('show each other’s counts and undos, and none is lost', async () => {
    const { one, two } = await twoTabs();
    await one.bringToFront();
    await press(one);
    await expect.poll(async () => (await shown(two)).figure).toBe('2');
    await two.bringToFront();
    await press(two);
    await expect.poll(async () => (await shown(one)).figure).toBe('4');
    await one.bringToFront();
    await touch(parts(one).undo);
    await expect.poll(async () => (await shown(two)).figure).toBe('2');
    // Both at once, with nothing waited for in between.
    const middle = { x: 195, y: 760 };
    const touches = Math.floor((line!.target - 2) / 4);
    for (let i = 0; i < touches; i += 1) {
      await Promise.all([one, two].map((page) => page.touchscreen.tap(middle.x, middle.y)));
    }
    const figure = String(2 + 4 * touches);
    for (const page of [one, two]) {
      await expect.poll(() => shown(page)).toMatchObject({ figure, inFlight: false });
    }
    const taps = (await deedsIn(one)).filter((deed) => deed.act.kind === 'tap');
    expect(taps).toHaveLength(2 + 2 * touches);
    await two.reload();
    await settled(two);
    expect((await shown(two)).figure).toBe(figure);
  });

  it('agree on what is done', async () => {
    const { one, two } = await twoTabs();
    await one.bringToFront();
    while ((await shown(one)).step === step && (await shown(one)).pad !== 'Line done') await press(one);
    await press(one);
    await expect.poll(() => shown(two)).toMatchObject({ step, figure: '0', undo: 'Undo: line done' });
    await touch(one.getByRole('link', { name: 'Outfits' }));
    await touch(one.getByRole('button', { name: 'Open the plain shirt' }));
    await settled(one);
    await workCard(one);
    expect(await shown(two)).toMatchObject({ step, undo: 'Undo: line done' });
  });
});
