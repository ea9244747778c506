import { describe, expect, it } from 'vitest';
import { altered } from '../../src/fitting/altered.ts';
import type { Amount } from '../../src/fitting/cure-types.ts';
import { gathersAfter } from '../../src/fitting/gathers-after.ts';
import { leastWork } from '../../src/fitting/least-work.ts';
import { levelsOf } from '../../src/fitting/levels.ts';
import type { Observation } from '../../src/fitting/observation.ts';
import type { Demand } from '../../src/fitting/puzzle.ts';
import { type PuzzleOf, puzzleOf } from '../../src/fitting/puzzle-of.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import { inches, mm } from '../../src/length/length.ts';
import type { Alteration } from '../../src/order/undoing/undoing-types.ts';
import { lengthsFit } from '../../src/outfit/lengths-fit.ts';
import type { Garment, Outfit } from '../../src/outfit/outfit.ts';
import { first, garmentOf } from '../outfit/units/worn.ts';
import { demoGarment } from './demo-garments.ts';

/** Minutes that are easy to follow: an hour and a half for a new piece, a quarter for a seam moved. */
const cost = (some: readonly Alteration[]): number =>
  some.reduce((sum, { how, side }) => sum + (how === 'anew' ? 90 : 15) * (side === 'both' ? 2 : 1), 0);

type Seen = Pick<Observation, 'entry'> & Partial<Observation>;
const observed = (garment: string, ...seen: readonly Seen[]): readonly Observation[] =>
  seen.map((one, i) => ({ id: `seen-${i}`, garment, side: 'both', out: [], ...one }));
function demoPuzzle(id: 'shirt' | 'sleeves' | 'hose', ...seen: readonly Seen[]) {
  const { outfit, garment } = demoGarment('harbour-clockmaker', id);
  return { outfit, garment, ...puzzleOf(garment, observed(id, ...seen), cost) };
}

const pieces = ({ puzzle }: Pick<PuzzleOf, 'puzzle'>): readonly string[] =>
  puzzle.pieces.map(({ piece }) => piece);
const waysOf = ({ puzzle }: Pick<PuzzleOf, 'puzzle'>, piece: string): readonly string[] =>
  puzzle.pieces.find((one) => one.piece === piece)?.ways.map(({ id }) => id) ?? [];
/** Of a demand, only the terms of pieces that are cut anew on both sides. */
const anew = ({ terms }: Demand): Record<string, number> =>
  Object.fromEntries(
    terms.filter(({ unknown }) => /^[^/@]+:/.test(unknown)).map(({ unknown, factor }) => [unknown, factor]),
  );
const explanation = ({ puzzle }: Pick<PuzzleOf, 'puzzle'>, seen: number, cause: string) =>
  puzzle.seen[seen]?.explanations.find(({ id }) => id === cause);

/** The garment with a solution drawn into it, every unknown of a chosen way counted. */
function drawn(
  garment: Garment,
  { unknowns }: Pick<PuzzleOf, 'unknowns'>,
  ways: readonly string[],
  changes: ReadonlyMap<string, number>,
): Garment {
  const roles = rolesOf(garment);
  const levels = levelsOf(garment, roles);
  return {
    ...garment,
    pieces: garment.pieces.map((piece) => {
      const way = ways.find((one) => one.split('/')[0] === piece.id);
      if (way === undefined) return piece;
      const amounts = [...unknowns].flatMap(([name, { kind, level }]): readonly Amount[] =>
        name.startsWith(`${way}:`) ? [{ kind, level, by: mm(changes.get(name) ?? 0) }] : [],
      );
      const outline = altered(
        piece,
        roles.get(piece.id)!,
        levels.get(piece.id)!,
        amounts,
        way.split('/').slice(1),
      );
      return { ...piece, outline };
    }),
  };
}
const misfits = (outfit: Outfit, garment: Garment): readonly string[] =>
  lengthsFit(outfit, garment, { unit: 'mm', step: 1 }).flatMap(({ join, within }) => (within ? [] : [join]));

describe('the worked case of the panelled shirt', () => {
  const told = demoPuzzle(
    'shirt',
    { entry: 'surplus-at-the-upper-side', amount: inches(5, 8), sure: 'narrow-front' },
    { entry: 'tucks-not-straight', amount: inches(5, 8) },
    { entry: 'frill-too-far-in', amount: inches(5, 8), sure: 'narrow-panel' },
  );

  it('asks for the centre front alone, by what was measured', () => {
    expect(pieces(told)).toEqual(['centre-front']);
    expect(anew(explanation(told, 1, 'narrow-panel')!.demands[0]!)).toEqual({
      'centre-front:width:chest': 1,
    });
    // 5/8 in is 15.875 mm; what is drawn off the plumb is missing, and more may be.
    expect(explanation(told, 1, 'narrow-panel')!.demands).toMatchObject([{ least: 15.875, most: Infinity }]);
    expect(explanation(told, 2, 'narrow-panel')!.demands).toMatchObject([{ least: 12.7, most: 19.05 }]);
    // By any amount that can be marked.
    expect(explanation(told, 0, 'narrow-front')!.demands).toMatchObject([{ least: 3.175, most: Infinity }]);
  });

  it('lets the panel seam out by no more than the allowance bears', () => {
    expect(waysOf(told, 'centre-front')).toEqual(['centre-front', 'centre-front/panel']);
    // Of 1/2 in of allowance 1/4 in remains.
    const out = told.puzzle.pieces[0]!.ways[1]!.bounds.get('centre-front/panel:width:chest')!;
    expect(out.most).toBeCloseTo(6.35, 9);
    expect(out.least).toBeCloseTo(-25.4, 9);
  });

  it('has the centre fronts cut again as the only cure, and every seam fits after it', () => {
    const { best } = leastWork(told.puzzle);
    expect(best?.ways).toEqual(['centre-front']);
    expect(best?.changes.get('centre-front:width:chest')).toBeCloseTo(15.875, 6);
    const after = drawn(told.garment, told, best!.ways, best!.changes);
    expect(misfits(told.outfit, after)).toEqual(misfits(told.outfit, told.garment));
  });

  it('says what every way and every unknown stands for', () => {
    expect(told.ways.get('centre-front/panel')?.alteration).toEqual({
      garment: 'shirt',
      piece: 'centre-front',
      how: 'edges',
      edges: ['panel'],
      side: 'both',
      say: '',
    });
    expect(told.unknowns.get('centre-front:width:chest')).toEqual({
      piece: 'centre-front',
      kind: 'width',
      level: 'chest',
      side: 'both',
    });
    expect(told.puzzle.minutes(['centre-front', 'centre-front/panel'])).toBe(210);
  });
});

describe('panels side by side', () => {
  it('give to a width together, front and back of the side as well', () => {
    const told = demoPuzzle('shirt', { entry: 'surplus-at-the-upper-side', amount: inches(1, 2) });
    const [demand] = explanation(told, 0, 'too-wide')!.demands;
    expect(anew(demand!)).toEqual({ 'side-front:width:chest': 1, 'side-back:width:chest': 1 });
    expect(demand!.least).toBeCloseTo(-12.7 - 3.175, 9);
    expect(demand!.most).toBeCloseTo(-12.7 + 3.175, 9);
    expect(Object.keys(anew(explanation(told, 0, 'wide-all-round')!.demands[0]!))).toHaveLength(4);
  });

  it('follow each other in length along the seam between them', () => {
    const told = demoPuzzle('shirt', { entry: 'waist-too-high', amount: inches(1) });
    expect(pieces(told)).toEqual(expect.arrayContaining(['centre-front', 'side-front']));
    const coupled = told.puzzle.always
      .map(anew)
      .find(
        (terms) =>
          Object.keys(terms).some((one) => one.startsWith('centre-front:length')) &&
          Object.keys(terms).some((one) => one.startsWith('side-front:length')),
      );
    const sum = Object.entries(coupled!).filter(([name]) => name.includes(':length:'));
    expect(sum.some(([, factor]) => factor > 0.9) && sum.some(([, factor]) => factor < -0.9)).toBe(true);
  });

  it('bind left and right apart where something is seen on one side', () => {
    const told = demoPuzzle('shirt', { entry: 'tucks-not-straight', amount: inches(1, 2), side: 'left' });
    expect(waysOf(told, 'centre-front')).toEqual([
      'centre-front',
      'centre-front/panel',
      'centre-front@left',
      'centre-front/panel@left',
      'centre-front@right',
      'centre-front/panel@right',
    ]);
    const [demand] = explanation(told, 0, 'narrow-panel')!.demands;
    expect(demand!.terms.map(({ unknown }) => unknown).filter((name) => name.includes('@right'))).toEqual([]);
    expect(leastWork(told.puzzle).best?.ways).toEqual(['centre-front@left']);
  });

  it('ask the same of either side where one thing is seen on one and another on both', () => {
    const told = demoPuzzle(
      'shirt',
      { entry: 'tucks-not-straight', amount: inches(1, 2), side: 'left' },
      { entry: 'frill-too-far-in', amount: inches(1, 2), sure: 'narrow-panel' },
    );
    expect(explanation(told, 1, 'narrow-panel')!.demands).toHaveLength(2);
    expect(leastWork(told.puzzle).best?.ways).toEqual(['centre-front']);
  });
});

describe('cuffs', () => {
  const told = demoPuzzle('sleeves', { entry: 'cuff-tight', amount: inches(1, 2), sure: 'short-cuff' });

  it('draw the inner cuff and the flat frill along, but not the gathered sleeve', () => {
    expect([...pieces(told)].sort()).toEqual(['cuff-frill', 'cuff-inner', 'cuff-outer']);
    expect(anew(explanation(told, 0, 'short-cuff')!.demands[0]!)).toEqual({ 'cuff-outer:width:wrist': 1 });
    const coupled = told.puzzle.always.map((demand) => {
      const terms = Object.entries(anew(demand)).map(
        ([name, factor]) => [name.split(':')[0], Math.abs(factor)] as const,
      );
      return Object.fromEntries(terms.sort());
    });
    for (const terms of coupled) for (const factor of Object.values(terms)) expect(factor).toBeCloseTo(1, 2);
    const together = coupled.map((terms) => Object.keys(terms).join(' '));
    expect(new Set(together)).toEqual(new Set(['cuff-frill cuff-outer', 'cuff-inner cuff-outer']));
  });

  it('are cured together, and every seam fits after it', () => {
    const { best } = leastWork(told.puzzle);
    expect(best!.changes.get('cuff-outer:width:wrist')).toBeCloseTo(12.7, 6);
    const by = (piece: string): number =>
      [...best!.changes].find(([name]) => name.startsWith(piece))?.[1] ?? 0;
    expect(Math.abs(by('cuff-inner') - 12.7)).toBeLessThan(0.6);
    expect(Math.abs(by('cuff-frill') - 12.7)).toBeLessThan(0.6);
    const after = drawn(told.garment, told, best!.ways, best!.changes);
    // The sleeve is gathered less; once that is said of its gathers, all goes together.
    expect(misfits(told.outfit, after)).toEqual(['cuff-seam']);
    expect(misfits(told.outfit, gathersAfter(told.garment, after))).toEqual([]);
  });
});

describe('legs', () => {
  it('take a low crotch up in the rise of the thigh and couple nothing with it', () => {
    const told = demoPuzzle('hose', { entry: 'crotch-low', amount: inches(3, 4), sure: 'long-rise' });
    expect(pieces(told)).toEqual(['thigh']);
    expect(waysOf(told, 'thigh')).toEqual(['thigh']);
    const [demand] = explanation(told, 0, 'long-rise')!.demands;
    expect(Object.values(anew(demand!))).toEqual([1]);
    const [name] = Object.keys(anew(demand!));
    expect(['waist', 'hip']).toContain(told.unknowns.get(name!)?.level);
    expect(told.puzzle.always).toEqual([]);
    expect(demand!.least).toBeCloseTo(-19.05 - 3.175, 9);
    expect(demand!.most).toBeCloseTo(-19.05 + 3.175, 9);
  });

  it('take folds at the ankle out of the lower leg, whose own seams stay alike', () => {
    const told = demoPuzzle('hose', { entry: 'ankle-folds', amount: inches(1), sure: 'long-leg' });
    expect(pieces(told)).toEqual(['lower-leg']);
    expect(told.puzzle.always).toEqual([]);
    const { best } = leastWork(told.puzzle);
    expect(best!.ways).toEqual(['lower-leg']);
    const after = drawn(told.garment, told, best!.ways, best!.changes);
    expect(misfits(told.outfit, after)).toEqual(misfits(told.outfit, told.garment));
  });

  it('count both parts where a leg is too long in all', () => {
    const told = demoPuzzle('hose', { entry: 'leg-too-short', amount: inches(1) });
    const all = told.puzzle.seen.flatMap(({ explanations }) =>
      explanations.flatMap(({ demands }) => demands.map(anew)),
    );
    expect(
      all.some(
        (terms) =>
          Object.keys(terms).some((one) => one.startsWith('thigh')) &&
          Object.keys(terms).some((one) => one.startsWith('lower-leg')),
      ),
    ).toBe(true);
  });
});

describe('what is left out', () => {
  it('is what has not been measured, with what to measure', () => {
    const { left, puzzle } = demoPuzzle('shirt', { entry: 'tucks-not-straight' });
    expect(puzzle.seen).toEqual([]);
    expect(left).toHaveLength(1);
    expect(left[0]!.why).toContain('has not been noted yet. How far is the last tuck off the plumb');
  });

  it('is not what asks for some change only', () => {
    const { left, puzzle } = demoPuzzle('shirt', { entry: 'surplus-at-the-upper-side' });
    expect(left).toEqual([]);
    expect(puzzle.seen[0]!.explanations.map(({ id }) => id)).toEqual(['narrow-front']);
  });

  it('is what asks for no other shape, with what to do', () => {
    const { left } = demoPuzzle('shirt', {
      entry: 'tucks-not-straight',
      sure: 'off-grain',
      amount: inches(1),
    });
    expect(left[0]!.why).toBe(
      'Put it right by hand if the tucks were marked off the grain: open the tucks, mark them along a thread and sew them again.',
    );
  });

  it('is what no cause is left of, what no piece can give to, and what is unknown', () => {
    const { left } = demoPuzzle(
      'shirt',
      { entry: 'tucks-not-straight', out: ['narrow-panel', 'off-grain', 'uneven-marks'] },
      { entry: 'cuff-tight', sure: 'short-cuff', amount: inches(1) },
      { entry: 'no-such-entry' },
    );
    expect(left.map(({ why }) => why)).toEqual([
      expect.stringContaining('ruled out'),
      'No piece of this garment can be changed where it is seen.',
      expect.stringContaining('does not know'),
    ]);
  });

  it('is what was seen on another garment', () => {
    const { garment } = demoGarment('harbour-clockmaker', 'shirt');
    const told = puzzleOf(garment, observed('hose', { entry: 'crotch-low', amount: inches(1) }), cost);
    expect(told.left).toEqual([]);
    expect(told.puzzle.seen).toEqual([]);
    expect(told.puzzle.pieces).toEqual([]);
  });

  it('leaves causes out that are ruled out', () => {
    const told = demoPuzzle('shirt', {
      entry: 'surplus-at-the-upper-side',
      amount: inches(1),
      out: ['narrow-front', 'wide-all-round'],
    });
    expect(told.puzzle.seen[0]!.explanations.map(({ id }) => id)).toEqual(['too-wide']);
  });
});

describe('a puzzle of any garment', () => {
  const worn = garmentOf(
    ['panelled-bodice', 'plain-sleeve', 'flat-collar', 'gathered-skirt'].map((unit) => ({
      unit,
      name: unit,
    })),
  );
  it('holds a cap to what can be eased in, and has at most twelve pieces', () => {
    const garment = first(worn);
    const seen = observed(
      garment.id,
      { entry: 'upper-arm-tight', amount: mm(20) },
      { entry: 'chest-strain', amount: mm(30) },
      { entry: 'waist-tight', amount: mm(20) },
    );
    const { puzzle } = puzzleOf(garment, seen, cost);
    expect(puzzle.pieces.length).toBeLessThanOrEqual(12);
    expect(puzzle.pieces.map(({ piece }) => piece)).toContain('plain-sleeve');
    const cap = puzzle.always.find(({ terms }) =>
      terms.some(
        ({ unknown, factor }) => unknown === 'plain-sleeve:width:upper-arm' && Math.abs(factor) > 0.5,
      ),
    );
    // The sleeve may become longer against its armhole by no more than the ease that is usual, and shorter by next to nothing.
    expect(Math.max(cap!.most, -cap!.least)).toBeLessThanOrEqual(38.1 + 3.2);
    expect(Math.max(cap!.most, -cap!.least)).toBeGreaterThan(0);
    const names = new Set(
      puzzle.pieces.flatMap(({ ways }) => ways.flatMap(({ bounds }) => [...bounds.keys()])),
    );
    const used = [
      ...puzzle.always,
      ...puzzle.seen.flatMap(({ explanations }) => explanations.flatMap(({ demands }) => demands)),
    ];
    for (const { terms } of used) for (const { unknown } of terms) expect(names.has(unknown)).toBe(true);
  });
});
