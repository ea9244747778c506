import { describe, expect, it } from 'vitest';
import plainShirt from '../../demo-data/plain-shirt.json' with { type: 'json' };
import { mm, toMm } from '../../src/length/length.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import type { Choices, PieceChoice } from '../../src/screens/describe/trace-draft.ts';
import {
  edgeNames,
  firstChoice,
  measurables,
  scaleOf,
  tracedPiece,
} from '../../src/screens/describe/trace-make.ts';
import { boundingBox } from '../../src/shape/measure.ts';
import { drawn, fileOf } from '../traced/read.ts';

const drawing = drawn(fileOf('half-front'));
const line = drawing.lines[0]!;
const shirt = readOutfit(plainShirt);
if (!shirt.ok) throw new Error('the plain shirt cannot be read');
const { garments, cloths } = shirt.value;
const beginning = { drawing, garment: garments[0]!, number: 1, unit: 'mm', cloth: cloths[0]!.id } as const;
const first = firstChoice(line, beginning);
const named: PieceChoice = {
  ...first,
  names: { 0: 'neck', 1: 'Shoulder', 2: 'armhole', 3: 'side', 4: 'hem', 5: 'fold' },
  cut: 'fold',
};
const choices: Choices = { chosen: [line.id], known: 'points', points: [], long: '', pieces: {} };
const scale = (more: Partial<Choices>) => scaleOf(drawing, { ...choices, ...more }, () => named, 'mm');
const make = (more: Partial<PieceChoice> = {}, by = 1) =>
  tracedPiece(drawing, line, { ...named, ...more }, by, 'mm', 'front');
const fault = (more: Partial<PieceChoice>) => {
  const made = make(more);
  return made.ok ? 'none' : `${made.error.field}: ${made.error.say}`;
};

describe('what is taken first of a line', () => {
  it('has its name, its corners and the usual allowance of the rule', () => {
    expect(first).toMatchObject({
      name: 'Half front',
      corners: [0, 1, 2, 3, 4, 5],
      cut: 'one',
      allowance: '15',
    });
    expect(firstChoice({ ...line, name: '' }, { ...beginning, number: 3, unit: 'in' })).toMatchObject({
      name: 'Piece 3',
      allowance: '5/8',
    });
  });

  it('of a file written here is all that the file says, and the piece that is there already', () => {
    const piece = garments[0]!.pieces[0]!;
    const known = {
      piece: piece.id,
      cut: 'fold',
      grain: 12,
      edges: [
        { name: 'neck', count: 2 },
        { name: 'front-seam', count: 3 },
        { name: 'fold', count: 1 },
      ],
    } as const;
    expect(firstChoice({ ...line, known }, beginning)).toMatchObject({
      corners: [0, 2, 5],
      names: { 0: 'neck', 2: 'front seam', 5: 'fold' },
      cut: 'fold',
      grain: '12',
      put: piece.id,
      cloth: piece.cloth,
      // The small circle on it is a mark.
      marks: ['l3'],
    });
  });
});

describe('the size of a drawing', () => {
  it('is asked for where the file does not say it', () => {
    expect(scale({})).toMatchObject({ ok: false, error: expect.stringContaining('two points') });
    expect(scale({ how: 'found' })).toEqual({ ok: true, value: 1 });
    const points = [
      { x: 0, y: 0 },
      { x: mm(30), y: mm(40) },
    ];
    expect(scale({ points, long: '10 cm' })).toEqual({ ok: true, value: 2 });
    expect(scale({ points, long: '' })).toMatchObject({ ok: false });
    expect(scale({ points, long: '0' })).toMatchObject({
      ok: false,
      error: expect.stringContaining('more than nothing'),
    });
    expect(scale({ points, long: 'about a hand' })).toMatchObject({ ok: false });
  });

  it('is known by a width, a height, an edge or a line too', () => {
    const all = measurables(drawing, choices, () => named);
    expect(all.map(({ say }) => say)).toEqual([
      'Between two points that I touch',
      'Half front: its width',
      'Half front: its height',
      ...['neck', 'Shoulder', 'armhole', 'side', 'hem', 'fold'].map((edge) => `Half front: ${edge}`),
      'Grain',
    ]);
    const fold = all.find(({ say }) => say.endsWith('fold'))!;
    expect(toMm(fold.long)).toBeCloseTo((340 * 25.4) / 96, 3);
    const found = scale({ known: fold.key, long: '510' });
    expect(found.ok && found.value).toBeCloseTo(510 / ((340 * 25.4) / 96), 5);
  });
});

describe('a piece made of a line', () => {
  it('has its edges by name, its fold on the datum, its grain upright again', () => {
    const made = make({ grain: '20', marks: ['l3'], allowance: '1/2 in' }, 2);
    if (!made.ok) throw new Error(made.error.say);
    const { outline, grain, marks, allowance } = made.value;
    expect(outline.edges.map(({ name }) => name)).toEqual([
      'neck',
      'shoulder',
      'armhole',
      'side',
      'hem',
      'fold',
    ]);
    expect(boundingBox(outline.edges.flatMap(({ segments }) => segments.map(({ to }) => to))).left).toBe(0);
    expect([grain, toMm(allowance)]).toEqual([undefined, 12.7]);
    expect(marks).toMatchObject([{ name: 'Dart point' }]);
    // 110 units right of the fold and 210 below the top.
    expect(toMm(marks[0]!.at.x)).toBeCloseTo((110 * 2 * 25.4) / 96, 3);
    expect(toMm(marks[0]!.at.y)).toBeCloseTo((210 * 2 * 25.4) / 96, 3);
  });

  it('numbers edges that have no name and tells those of one name apart', () => {
    const names = edgeNames({ ...named, cut: 'one', names: { 0: 'side', 1: 'Side ', 2: '§', 5: 'fold' } });
    expect([...names.values()]).toEqual(['side', 'side-2', 'edge-3', 'edge-4', 'edge-5', 'fold-edge']);
  });

  it('is refused at the field that is wrong', () => {
    expect(fault({ name: ' ' })).toMatch(/^name: /);
    expect(fault({ grain: 'aslant' })).toMatch(/^grain: .*degrees/);
    expect(fault({ grain: '400' })).toMatch(/^grain: /);
    expect(fault({ allowance: 'some' })).toMatch(/^allowance: /);
    expect(fault({ allowance: '-5' })).toMatch(/^allowance: .*nothing or more/);
    expect(fault({ names: {} })).toMatch(/^: .*fold/);
    expect(fault({ corners: [0, 5], names: { 5: 'fold' } })).toMatch(/three corners/);
  });
});
