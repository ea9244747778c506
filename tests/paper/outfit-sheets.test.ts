import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { edgeUses } from '../../src/paper/edge-allowances.ts';
import { allowanceWords, BLOCK_MORE, outfitSheets } from '../../src/paper/outfit-sheets.ts';
import type { PatternSheet, Stroke } from '../../src/paper/pattern-sheet.ts';
import { boundingBox, signedArea } from '../../src/shape/measure.ts';
import type { Point } from '../../src/shape/outline.ts';
import { demo, demos } from '../outfit/demo-files.ts';
import { small } from '../outfit/small.ts';

const MARKING = { unit: 'mm', step: 0.5 } as const;

type File = ReturnType<typeof small>;

/** The small outfit with further works, and pieces changed. */
function outfit(works: readonly object[] = [], change: (file: File) => void = () => {}): Outfit {
  const file = small();
  change(file);
  (file.garments[0]!.works as object[]).push(...works);
  const read = readOutfit(file);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
}

const sheetsOf = (of: Outfit, piece: string): readonly PatternSheet[] =>
  outfitSheets(of, MARKING).find(({ key }) => key === `shirt/${piece}`)!.sheets;

const paths = (sheet: PatternSheet, stroke: Stroke): readonly (readonly Point[])[] =>
  sheet.drawn.flatMap((one) => (one.kind === 'path' && one.stroke === stroke ? [one.points] : []));

const sizeOf = (points: readonly Point[]): readonly [number, number] => {
  const { left, right, top, bottom } = boundingBox(points);
  return [(right - left) / 1e6, (bottom - top) / 1e6];
};

const tucks = (more: object = {}) => ({
  kind: 'tucks',
  id: 'tucks',
  name: 'tucks',
  on: 'pocket',
  from: 'left',
  marker: 'chalk',
  family: { depths: ['10 mm'], spacing: '20 mm', first: '50 mm', pressed: 'away' },
  ...more,
});

describe('what becomes of the edges of a piece', () => {
  it('leaves the depth of its seam, the turning of its hem, nothing on the fold', () => {
    const [garment] = outfit().garments;
    const uses = (id: string) =>
      edgeUses(garment!, garment!.pieces.find((piece) => piece.id === id)!).map((use) => [
        use.edge,
        use.how,
        use.allowance / 1e6,
      ]);
    expect(uses('front')).toEqual([
      ['shoulder', 'sewn', 15],
      ['side', 'sewn', 15],
      ['hem', 'turned', 15],
      ['opening', 'sewn', 10],
    ]);
    expect(uses('back')[3]).toEqual(['fold', 'fold', 0]);
    expect(uses('pocket')[1]).toEqual(['right', 'free', 10]);
  });

  it('leaves both turns of a band, and nothing where a raw edge is bound', () => {
    const [garment] = outfit([
      {
        kind: 'folded-band',
        id: 'band',
        name: 'band',
        on: 'pocket',
        edge: 'left',
        firstTurn: '12 mm',
        secondTurn: '25 mm',
      },
      { kind: 'bind-edge', id: 'binding', name: 'binding', on: 'pocket', edge: 'right', strip: '25 mm' },
    ]).garments;
    const uses = edgeUses(garment!, garment!.pieces[2]!);
    expect(uses.find(({ edge }) => edge === 'left')).toMatchObject({
      how: 'turned',
      allowance: mm(37),
      firstFold: mm(25),
    });
    expect(uses.find(({ edge }) => edge === 'right')).toMatchObject({ how: 'bound', allowance: 0 });
    expect(allowanceWords(uses, MARKING)).toBe('Allowance drawn: 10 mm; right none; left 37 mm.');
  });
});

describe('sheets of a piece', () => {
  it('have the cutting line with the allowance of each edge, the seam line, names and grain', () => {
    const [front, ...more] = sheetsOf(outfit(), 'front');
    expect(more).toEqual([]);
    expect(paths(front!, 'cut').map(sizeOf)).toEqual([[125, 230]]);
    expect(paths(front!, 'seam')).toHaveLength(3);
    expect(paths(front!, 'grain')).toHaveLength(1);
    const said = front!.drawn.flatMap((one) => (one.kind === 'words' ? [one.words] : []));
    expect(said).toEqual(
      expect.arrayContaining(['shoulder', 'side', 'hem', 'opening', 'front', 'cut 2, mirrored']),
    );
    expect(front!.notes[0]).toBe('shirt, lawn. Cut 2, one a mirror image.');
    expect(front!.notes[1]).toBe('Allowance drawn: 15 mm; opening 10 mm.');
  });

  it('mark the quarters of a gathered edge', () => {
    const [front] = sheetsOf(outfit(), 'front');
    const at = paths(front!, 'mark').map(([a]) => a!.x / 1e6);
    const parts = at.length + 1;
    expect([4, 8]).toContain(parts);
    expect(at).toEqual(Array.from({ length: at.length }, (_, i) => (100 * (i + 1)) / parts));
  });

  it('do not cut a half piece along its fold', () => {
    const [back] = sheetsOf(outfit(), 'back');
    const [cut] = paths(back!, 'cut');
    const onFold = cut!.filter(({ x }) => x === 0);
    expect([cut![0], cut!.at(-1)]).toEqual(onFold);
    expect(sizeOf(cut!)).toEqual([115, 230]);
    const edge = back!.drawn.find((one) => one.kind === 'words' && one.words === 'place on the fold');
    expect(edge).toBeDefined();
    expect(back!.notes[0]).toContain('Cut 1 on the fold');
  });

  it('are opened through tucks, with every line to stitch and to fold by', () => {
    const [opened, ...more] = sheetsOf(outfit([tucks()]), 'pocket');
    expect(more).toEqual([]);
    expect(paths(opened!, 'cut').map(sizeOf)).toEqual([[100 + 20 + 20, 220]]);
    expect(paths(opened!, 'seam').map(sizeOf)).toEqual([[120, 200]]);
    expect(paths(opened!, 'stitch').map(([a]) => a!.x)).toEqual([mm(50), mm(70)]);
    expect(paths(opened!, 'fold').map(([a]) => a!.x)).toEqual([mm(60)]);
    for (const run of paths(opened!, 'fold')) expect(sizeOf(run)[1]).toBe(220);
  });

  it('are a block and a sheet to cut by where a piece is cut after its tucks', () => {
    const [block, after] = sheetsOf(
      outfit([tucks()], (file) => {
        Object.assign(file.garments[0]!.pieces[2]!, { cutAfterWork: true });
      }),
      'pocket',
    );
    const more = (2 * BLOCK_MORE) / 1e6;
    expect(paths(block!, 'cut').map(sizeOf)).toEqual([[140 + more, 220 + more]]);
    expect(paths(block!, 'body').map(sizeOf)).toEqual([[140, 220]]);
    expect(paths(after!, 'cut').map(sizeOf)).toEqual([[120, 220]]);
    expect(after!.name).toBe('pocket, to cut after the tucks');
  });

  it('open a piece through tucks that cross', () => {
    const family = { depths: ['5 mm', '5 mm'], spacing: '30 mm', first: '20 mm' };
    const [opened] = sheetsOf(
      outfit([
        {
          kind: 'crossed-tucks',
          id: 'tucks',
          name: 'tucks',
          on: 'pocket',
          from: 'left',
          marker: 'chalk',
          families: [
            { ...family, angle: 0 },
            { ...family, angle: 90 },
          ],
        },
      ]),
      'pocket',
    );
    expect(paths(opened!, 'cut').map(sizeOf)).toEqual([[140, 240]]);
    expect(paths(opened!, 'stitch')).toHaveLength(8);
    expect(paths(opened!, 'fold')).toHaveLength(4);
  });

  it('show the finished piece and say why, where it cannot be opened', () => {
    const [sheet] = sheetsOf(
      outfit([tucks({ family: { depths: ['10 mm'], spacing: '20 mm', first: '105 mm', pressed: 'away' } })]),
      'pocket',
    );
    expect(paths(sheet!, 'cut').map(sizeOf)).toEqual([[120, 220]]);
    expect(sheet!.notes.join(' ')).toMatch(
      /Not opened through its tucks\. The edge of the piece cuts off the fold/,
    );
  });

  it('mark buttonholes on the middle of a band, and only their levels where there is none', () => {
    const holes = {
      kind: 'buttonholes',
      id: 'holes',
      name: 'holes',
      on: 'pocket',
      along: 'left',
      count: 3,
      first: '30 mm',
      last: '130 mm',
      from: 'the top',
      button: { diameter: '10 mm', thickness: '2 mm' },
      direction: 'along',
      top: 'left',
      marker: 'chalk',
    };
    const band = {
      kind: 'folded-band',
      id: 'band',
      name: 'band',
      on: 'pocket',
      edge: 'left',
      firstTurn: '12 mm',
      secondTurn: '24 mm',
    };
    const [banded] = sheetsOf(outfit([holes, band]), 'pocket');
    const marks = paths(banded!, 'mark');
    expect(marks).toHaveLength(3);
    for (const run of marks) {
      expect(run.every(({ x }) => x === mm(12))).toBe(true);
      expect(sizeOf(run)[1]).toBe(12);
    }
    // Each button lies 1/8 in below the upper end of its hole.
    expect(marks.map(([a]) => a!.y / 1e6 + 3.175)).toEqual([30, 80, 130]);
    const [plain] = sheetsOf(outfit([holes]), 'pocket');
    expect(paths(plain!, 'mark').map(([a]) => a!.y)).toEqual([mm(30), mm(80), mm(130)]);
    expect(plain!.notes.join(' ')).toContain('Only the levels');
  });
});

describe.each(demos)('sheets of %s', (name) => {
  const read = demo(name);
  const all = outfitSheets(read, MARKING);

  it('are one or more for every piece, each under a key of its own', () => {
    const pieces = read.garments.flatMap(({ id, pieces }) => pieces.map((piece) => `${id}/${piece.id}`));
    expect(all.map(({ key }) => key)).toEqual(pieces);
    for (const { sheets } of all) expect(sheets.length).toBeGreaterThan(0);
  });

  it('all have a line to cut by that lies outside the seam line, a grain line and their allowance in words', () => {
    for (const sheet of all.flatMap(({ sheets }) => sheets)) {
      const cut = boundingBox(paths(sheet, 'cut').flat());
      const seam = boundingBox([...paths(sheet, 'seam'), ...paths(sheet, 'stitch')].flat());
      // To the nanometre to which both are rounded.
      expect(cut.left).toBeLessThanOrEqual(seam.left + 1);
      expect(cut.top).toBeLessThanOrEqual(seam.top + 1);
      expect(cut.right).toBeGreaterThanOrEqual(seam.right - 1);
      expect(cut.bottom).toBeGreaterThanOrEqual(seam.bottom - 1);
      expect(paths(sheet, 'grain'), sheet.name).toHaveLength(1);
      expect(sheet.notes.join(' ')).toContain('Allowance drawn');
    }
  });

  it('open every piece with tucks, to more cloth than it is when finished', () => {
    const tucked = read.garments.flatMap(({ id, works }) =>
      works.flatMap((work) => (/tucks/.test(work.kind) ? [`${id}/${work.on}`] : [])),
    );
    for (const { key, sheets } of all.filter((one) => tucked.includes(one.key))) {
      const [opened, after] = sheets;
      expect(paths(opened!, 'stitch').length, key).toBeGreaterThan(0);
      const area = (sheet: PatternSheet, stroke: Stroke) =>
        Math.abs(signedArea(paths(sheet, stroke)[0] ?? []));
      if (after) expect(area(opened!, 'cut')).toBeGreaterThan(area(after, 'cut'));
    }
  });
});
