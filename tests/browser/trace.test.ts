import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoData } from '../outfit/demo-files.ts';
import { readSvg } from '../paper/read-svg.ts';
import { drawn } from '../traced/read.ts';
import { useApp } from './app.ts';
import { touch, wordsOf } from './bench-page.ts';

const app = useApp();

const part = (page: Page, name: string): Locator => page.locator(`[data-part="${name}"]`);
const fileAt = (name: string): string =>
  fileURLToPath(new URL(`../traced/data/${name}.svg`, import.meta.url));

const ADDRESS = '#/outfit/lamplighters/garment';

/** An invented outfit with two garments that have no pieces yet. */
const lamplighters = (): { name: string; mimeType: string; buffer: Buffer } => {
  const raw = demoData('plain-shirt') as Record<string, unknown>;
  const garments = ['blouse', 'second'].map((id) => ({
    id,
    name: id,
    pieces: [],
    works: [],
    joins: [],
    gates: [],
  }));
  const file = {
    ...raw,
    id: 'lamplighters',
    name: 'Chorus of lamplighters',
    units: 'mm',
    wearers: [],
    garments,
  };
  return {
    name: 'lamplighters.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(file)),
  };
};

/** The page for outlines of an empty garment. */
async function toTrace(page: Page): Promise<void> {
  await page.locator('[data-part="bring-in"]').setInputFiles(lamplighters());
  await page.locator('li[data-outfit="lamplighters"]').waitFor();
  await page.goto(`${app.served.origin}/${ADDRESS}/blouse/trace`);
  await part(page, 'trace').waitFor();
}

/** Touches a drawing at a place given in its own millimetres. */
async function touchAt(page: Page, drawing: string, x: number, y: number): Promise<void> {
  await part(page, drawing).scrollIntoViewIfNeeded();
  const at = await part(page, drawing).evaluate(
    (svg, [px, py]) => {
      const { x, y } = new DOMPoint(px, py).matrixTransform(
        (svg as unknown as SVGSVGElement).getScreenCTM()!,
      );
      return { x, y };
    },
    [x, y] as const,
  );
  await page.touchscreen.tap(at.x, at.y);
}

/** A place of the half front, in units of its file, as the drawing has it in millimetres. */
function placed(x: number, y: number): readonly [number, number] {
  const turn = (20 * Math.PI) / 180;
  const [dx, dy] = [x - 400, y - 400];
  return [
    ((400 + dx * Math.cos(turn) - dy * Math.sin(turn)) * 25.4) / 96,
    ((400 + dx * Math.sin(turn) + dy * Math.cos(turn)) * 25.4) / 96,
  ];
}

const pieceWords = (page: Page): Promise<string> => wordsOf(part(page, 'trace-size'));

async function savedDrawing(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), touch(part(page, 'save-pieces'))]);
  expect(download.suggestedFilename()).toMatch(/pieces\.svg$/);
  return readFileSync(await download.path(), 'utf8');
}

/** Takes the half front in: its size by two points, its edges by touch, its fold and its grain. */
async function traceFront(page: Page): Promise<void> {
  await part(page, 'trace-file').setInputFiles(fileAt('half-front'));
  await part(page, 'trace-sheet').waitFor();
  await expect.poll(() => wordsOf(part(page, 'trace-found'))).toBe('3 closed lines, 1 open line.');
  await touchAt(page, 'trace-sheet', ...placed(250, 500));
  await expect.poll(() => page.locator('[data-choose][aria-pressed="true"]').count()).toBe(1);

  // The file says no size: two corners of the test square lie 150 mm apart.
  expect(await wordsOf(part(page, 'trace-unscaled'))).toMatch(/two points/);
  await touch(part(page, 'point'));
  const unit = 25.4 / 96;
  await touchAt(page, 'trace-sheet', 562 * unit, 702 * unit);
  await touchAt(page, 'trace-sheet', 658 * unit, 701 * unit);
  await page.locator('[data-field="long"] input').fill('150');
  await part(page, 'trace-piece').waitFor();

  for (const [i, name] of ['neck', 'shoulder', 'armhole', 'side', 'hem'].entries()) {
    // After the first one the next edge is in hand by itself.
    if (i === 0) await touchAt(page, 'trace-one', ...placed(247, 245));
    await touch(page.locator(`[data-name="${name}"]`));
  }
  await touch(page.locator('[data-field="cut"]').getByText('on the fold'));
  await touchAt(page, 'trace-one', ...placed(200, 430));
  await touch(page.locator('[data-name="fold"]'));
  await touch(page.locator('[data-mode="grain"]'));
  await touchAt(page, 'trace-one', ...placed(300, 500));
  await expect.poll(() => page.locator('[data-field="grain"] input').inputValue()).toBe('20');
  await touch(page.locator('[data-mode="marks"]'));
  await touchAt(page, 'trace-one', ...placed(310, 400));
  await expect.poll(() => page.locator('[data-near][aria-pressed="true"]').count()).toBe(1);
}

describe('an outline from a drawing program', () => {
  it('is scaled, named, folded, tucked, printed, written for the drawing program and read again', async () => {
    const page = await app.open();
    await toTrace(page);
    await traceFront(page);
    // 200 units across and 410 high, each 1.5 mm, now that it stands upright on its fold.
    expect(await pieceWords(page)).toBe('Half front: 300 mm × 615 mm, 6 edges.');

    // It comes back as it was left.
    await page.reload();
    await part(page, 'trace-piece').waitFor();
    expect(await pieceWords(page)).toBe('Half front: 300 mm × 615 mm, 6 edges.');
    await touch(part(page, 'put'));
    await expect.poll(() => wordsOf(part(page, 'undo'))).toContain('traced Half front');

    await touch(page.getByRole('link', { name: 'To Half front' }));
    await touch(page.getByRole('button', { name: 'Put a work on this piece' }));
    await touch(page.locator('[data-kind="tucks"]'));
    await touch(page.locator('[data-edge$=".side"]').first());
    await touch(page.getByRole('button', { name: 'Put it on' }));
    await expect.poll(() => wordsOf(part(page, 'undo'))).toContain('put on Tucks');

    await page.goto(`${app.served.origin}/#/paper/lamplighters`);
    await part(page, 'page-count').waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), touch(part(page, 'save-svg'))]);
    const sheet = readSvg(readFileSync(await download.path(), 'utf8'));
    expect(sheet.words.map(({ words }) => words)).toEqual(
      expect.arrayContaining(['Half front, opened', 'neck', 'armhole', 'Dart point']),
    );

    await page.goto(`${app.served.origin}/${ADDRESS}/blouse/trace`);
    await part(page, 'save-pieces').waitFor();
    const written = await savedDrawing(page);
    const line = drawn(written).lines.find(({ known }) => known !== undefined)!;
    expect(line.known).toMatchObject({ cut: 'fold', grain: 0 });
    expect(line.known!.edges.map(({ name }) => name).toSorted()).toEqual([
      'armhole',
      'fold',
      'hem',
      'neck',
      'shoulder',
      'side',
    ]);

    // Read again into another garment, it is the same piece.
    await page.goto(`${app.served.origin}/${ADDRESS}/second/trace`);
    await part(page, 'trace-file').setInputFiles({
      name: 'again.svg',
      mimeType: 'image/svg+xml',
      buffer: Buffer.from(written),
    });
    await expect.poll(() => pieceWords(page)).toBe('Half front: 300 mm × 615 mm, 6 edges.');
    await touch(part(page, 'put'));
    await expect.poll(() => wordsOf(part(page, 'undo'))).toContain('traced Half front');
    const again = drawn(await savedDrawing(page)).lines.find(({ known }) => known !== undefined)!;
    expect(again.known!.edges).toEqual(line.known!.edges);
    const points = ({ start, segments }: typeof line) =>
      segments
        .flatMap((one) => (one.kind === 'curve' ? [one.first, one.second, one.to] : [one.to]))
        .map((p) => [p.x - start.x, p.y - start.y] as const);
    for (const [i, [x, y]] of points(again).entries()) {
      expect(Math.abs(x - points(line)[i]![0])).toBeLessThan(10_000);
      expect(Math.abs(y - points(line)[i]![1])).toBeLessThan(10_000);
    }
  });

  it('is chosen, scaled, named, given its grain and put in with the keyboard alone', async () => {
    const context = await app.another({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await page.goto(`${app.served.origin}/`);
    await toTrace(page);
    const active = (control: Locator): Promise<boolean> =>
      control.evaluate((one) => one === document.activeElement);
    /** Goes on with the Tab key until a control has the focus, and uses it. */
    const use = async (control: Locator, key = 'Enter'): Promise<void> => {
      await control.waitFor();
      for (let i = 0; i < 90 && !(await active(control)); i += 1) await page.keyboard.press('Tab');
      expect(await active(control), String(control)).toBe(true);
      await page.keyboard.press(key);
    };
    /** Goes to a question and through its answers with the arrow keys, until one of them is chosen. */
    const answer = async (field: string, words: string): Promise<void> => {
      const inside = page.locator(`[data-field="${field}"]`);
      await inside.waitFor();
      const holds = () => inside.evaluate((one) => one.contains(document.activeElement));
      for (let i = 0; i < 90 && !(await holds()); i += 1) await page.keyboard.press('Tab');
      const wanted = inside.getByLabel(words);
      for (let i = 0; i < 20 && !(await wanted.isChecked()); i += 1) await page.keyboard.press('ArrowDown');
      expect(await wanted.isChecked()).toBe(true);
    };

    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      use(part(page, 'trace-file'), 'Space'),
    ]);
    await chooser.setFiles(fileAt('layers-in-mm'));
    await use(page.locator('[data-choose]').first());
    expect(await pieceWords(page)).toBe('Front: 150 mm × 226 mm, 6 edges.');

    // It was drawn at half its size.
    await answer('how', 'By a length that I know');
    const known = page.locator('[data-field="known"] select');
    await use(known, 'ArrowDown');
    expect(await known.evaluate((one: HTMLSelectElement) => one.selectedOptions[0]?.label)).toMatch(
      /^Front: its width, in the drawing 150 mm$/,
    );
    await use(page.locator('[data-field="long"] input'), '3');
    await page.keyboard.type('00');
    expect(await pieceWords(page)).toBe('Front: 300 mm × 452 mm, 6 edges.');

    await use(page.locator('[data-edge="0"]'));
    await use(page.locator('[data-name="neck"]'));
    await use(page.locator('[data-name="shoulder"]'));
    // A corner is taken out and comes back, and the name of its edge with it.
    await use(page.locator('[data-mode="corners"]'));
    await use(page.getByRole('button', { name: 'Take out the corner before shoulder' }));
    await expect.poll(() => pieceWords(page)).toMatch(/5 edges/);
    expect(await active(page.locator('body'))).toBe(false);
    await use(page.getByRole('button', { name: 'Find the corners anew' }));
    await expect.poll(() => pieceWords(page)).toMatch(/6 edges/);
    await page.getByRole('button', { name: 'Take out the corner before shoulder' }).waitFor();
    await page.locator('[data-mode="corners"]').focus();
    await use(page.locator('[data-mode="grain"]'));
    await use(page.getByRole('button', { name: 'On the bias' }));
    await use(part(page, 'put'));
    await expect.poll(() => wordsOf(part(page, 'undo'))).toContain('traced Front');
    await use(page.getByRole('link', { name: 'To Front' }));
    await part(page, 'edge-picker').waitFor();
    expect(await wordsOf(page.locator('[data-edge="front.shoulder"]'))).toMatch(/shoulder/);
    expect(await page.locator('[data-field="grain"] input').inputValue()).toBe('45');
  });

  it('is refused in words where the file is hostile or broken; nothing of it runs, and what was in hand stays', async () => {
    const page = await app.open();
    await toTrace(page);
    await part(page, 'trace-file').setInputFiles(fileAt('layers-in-mm'));
    await part(page, 'trace-sheet').waitFor();
    await expect.poll(() => wordsOf(part(page, 'trace-found'))).toContain('1 picture');
    const svg = (inner: string, head = ''): Buffer =>
      Buffer.from(`<?xml version="1.0"?>${head}<svg xmlns="http://www.w3.org/2000/svg">${inner}</svg>`);
    const files: readonly (readonly [string, Buffer, RegExp])[] = [
      ['laughs.svg', svg('&b;', '<!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;">]>'), /not read here/],
      ['tags.svg', svg('<g><path d="M0 0h9v9z"></g>'), /do not fit/],
      ['deep.svg', svg('<g>'.repeat(90_000)), /60 groups/],
      ['picture.png', readFileSync('public/icons/icon-192.png'), /not an SVG/],
      ['large.svg', Buffer.alloc(5_100_000, ' '), /larger than 5 MB/],
      [
        'script.svg',
        svg(
          '<script>document.title = "run"</script><image href="https://example.org/x.png" onerror="alert(1)"/>',
        ),
        /no outline/,
      ],
    ];
    for (const [name, buffer, words] of files) {
      await part(page, 'trace-file').setInputFiles({ name, mimeType: 'image/svg+xml', buffer });
      await expect.poll(() => wordsOf(part(page, 'trace-wrong')), { message: name }).toMatch(words);
      expect(await part(page, 'trace-sheet').count()).toBe(1);
    }
    expect(await page.title()).toContain('Outlines from a drawing');
  });
});
