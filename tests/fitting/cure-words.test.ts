import { describe, expect, it } from 'vitest';
import { onMarks } from '../../src/fitting/cure-marks.ts';
import type { Amount } from '../../src/fitting/cure-types.ts';
import { listed, sayAmounts } from '../../src/fitting/cure-words.ts';
import { inches } from '../../src/length/length.ts';
import { sum } from './puzzles.ts';

const marking = { unit: 'in', per: 16 } as const;
const by = (kind: Amount['kind'], level: Amount['level'], top: number): Amount => ({
  kind,
  level,
  by: inches(top, 8),
});

describe('what a cure says', () => {
  it('says levels that change alike together, and lengths below their level', () => {
    const amounts = [
      by('width', 'chest', 5),
      by('width', 'waist', 5),
      by('width', 'hip', -2),
      by('length', 'knee', -4),
    ];
    expect(sayAmounts({ cut: 'pair' }, 'both', amounts, marking)).toBe(
      '5/8 in wider at the chest and the waist, 1/4 in narrower at the hips, 1/2 in shorter below the knee',
    );
  });

  it('says of a folded piece that it is each half, and of one side which', () => {
    const wider = [by('width', 'chest', 5)];
    expect(sayAmounts({ cut: 'fold' }, 'both', wider, marking)).toBe(
      '5/8 in wider at the chest on each half',
    );
    expect(sayAmounts({ cut: 'pair' }, 'left', wider, marking)).toBe(
      '5/8 in wider at the chest, the left one only',
    );
    expect(sayAmounts({ cut: 'pair' }, 'both', [], marking)).toBe('');
  });

  it('lists words', () => {
    expect([listed([]), listed(['a']), listed(['a', 'b', 'c'])]).toEqual(['', 'a', 'a, b and c']);
  });
});

describe('amounts on marks', () => {
  const puzzle = (least: number, most: number) => ({
    pieces: [
      {
        piece: 'a',
        ways: [
          {
            id: 'a',
            bounds: new Map([
              ['a', { least: 0, most: 50 }],
              ['b', { least: 0, most: 50 }],
            ]),
          },
        ],
      },
    ],
    seen: [{ id: 's', explanations: [{ id: 'c', demands: [sum({ a: 1, b: 1 }, least, most)], minutes: 0 }] }],
    always: [],
    minutes: () => 0,
  });
  const solution = (a: number, b: number) => ({
    ways: ['a'],
    causes: new Map([['s', 'c']]),
    changes: new Map([
      ['a', a],
      ['b', b],
    ]),
    minutes: 0,
  });

  it('are the nearest, moved on where that would break what was asked', () => {
    expect(onMarks(puzzle(9, 11), solution(4.9, 5.2), 1)).toEqual(
      new Map([
        ['a', 5],
        ['b', 5],
      ]),
    );
    const moved = onMarks(puzzle(10.6, 12), solution(5.4, 5.3), 1);
    expect([...moved.values()].reduce((all, one) => all + one, 0)).toBe(11);
  });

  it('are half marks where whole ones will not do, and left alone where neither will', () => {
    expect(
      [...onMarks(puzzle(10.4, 10.6), solution(5.2, 5.3), 1).values()].reduce((all, one) => all + one, 0),
    ).toBe(10.5);
    const off = solution(5.1, 5.11);
    expect(onMarks(puzzle(10.2, 10.22), off, 1)).toEqual(off.changes);
  });
});
