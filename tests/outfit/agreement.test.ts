import { describe, expect, test } from 'vitest';
import { writeProblem } from '../../src/outfit/problem.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { small } from './small.ts';
import { change } from './spoil.ts';

const said = (at: string, value?: unknown): readonly (readonly [string, string])[] => {
  const read = readOutfit(change(small(), at, value));
  return read.ok ? [] : read.error.map((problem) => [problem.at, writeProblem(problem)]);
};
const G = '/garments/0';

describe('what the names in a file must agree about', () => {
  test('the small file is good', () => {
    const read = readOutfit(small());
    expect(read.ok || read.error).toBe(true);
  });

  test.each<readonly [string, string, unknown, string]>([
    [
      'an edge that does not exist',
      `${G}/joins/1/to/0`,
      'back.sidde',
      'join `side seam`: edge `back.sidde` does not exist; did you mean `back.side`?',
    ],
    [
      'an edge of a piece that does not exist',
      `${G}/joins/1/to/0`,
      'bakc.side',
      'join `side seam`: edge `bakc.side` does not exist; did you mean `back.side`?',
    ],
    [
      'an edge that is like no other',
      `${G}/joins/1/to/0`,
      'back.gusset',
      'join `side seam`: edge `back.gusset` does not exist; back has the edges `shoulder`, `side`, `hem`, `fold`',
    ],
    [
      'a mate of a single piece',
      `${G}/joins/2/to/0`,
      'other:pocket.top',
      'join `pocket seam`: `other:pocket.top` asks for the mate of pocket, which is a single piece; leave `other:` out, or cut the piece as a pair',
    ],
    [
      'a cloth that does not exist',
      `${G}/pieces/0/cloth`,
      'lwn',
      'piece `front`: cloth `lwn` does not exist; did you mean `lawn`?',
    ],
    [
      'a piece that does not exist',
      `${G}/works/0/on`,
      'fron',
      'work `front gathers`: piece `fron` does not exist; did you mean `front`?',
    ],
    [
      'a marker that does not exist',
      `${G}/works/0/marker`,
      'pencil',
      'work `front gathers`: marker `pencil` does not exist; add it to the markers',
    ],
    [
      'a join that does not exist',
      `${G}/gates/0/after/0`,
      'sied',
      'try-on `first try-on`: join or work `sied` does not exist; did you mean `side`?',
    ],
    [
      'a name used twice',
      `${G}/joins/1/id`,
      'front',
      'join `front`: something in shirt already has this id; give it another',
    ],
  ])('%s', (_, at, value, message) => {
    expect(said(at, value).map(([, line]) => line)).toContain(message);
  });

  test('a place is given with every problem, as a JSON Pointer', () => {
    expect(said(`${G}/joins/1/to/0`, 'back.sidde')[0]?.[0]).toBe(`${G}/joins/1/to/0`);
    expect(said(`${G}/pieces/0/cloth`, 'lwn')[0]?.[0]).toBe(`${G}/pieces/0/cloth`);
  });

  test('a mistyped edge is not followed by complaints about the runs over it', () => {
    expect(said(`${G}/joins/0/to/0`, 'back.sholder')).toEqual([
      [
        `${G}/joins/0/to/0`,
        'join `shoulder seam`: edge `back.sholder` does not exist; did you mean `back.shoulder`?',
      ],
    ]);
  });

  test('a mistyped edge hides no broken run that it has nothing to do with', () => {
    const broken = ['front.hem', 'other:front.hem'];
    const places = (join: number, edge: string) => {
      const data = change(change(small(), `${G}/works/1/along`, broken), `${G}/joins/${join}/to/0`, edge);
      const read = readOutfit(data);
      return read.ok ? [] : read.error.map(({ at }) => at);
    };
    expect(places(0, 'back.sholder')).toEqual([`${G}/works/1/along`, `${G}/joins/0/to/0`]);
    // What is sewn to the opening, beside the hem, might be the other front.
    expect(places(2, 'pocket.tpo')).toEqual([`${G}/joins/2/to/0`]);
  });

  test('two joins of one id are told once, and no run over either of them', () => {
    const data = change(small(), `${G}/joins/1/id`, 'shoulder');
    expect(readOutfit(data)).toMatchObject({
      ok: false,
      error: [{ at: `${G}/joins/1/id` }, { at: `${G}/gates/0/after/0` }],
    });
  });

  test('ends that no join brings together', () => {
    const [problem, ...more] = said(`${G}/works/1/along`, ['front.hem', 'other:front.hem']);
    expect(more).toEqual([]);
    expect(problem).toEqual([
      `${G}/works/1/along`,
      'work `hem`: `front.hem` and `other:front.hem` do not lie end to end, because no join sews them together there; add that join, or take one of the two out of this run',
    ]);
  });

  test('an outline that does not close, a fold without its edge, an edge named twice', () => {
    expect(said(`${G}/pieces/1/outline/edges/3/to`, [0, 1])).toEqual([
      [
        `${G}/pieces/1/outline/edges`,
        'piece `back`: the outline does not close; let the last edge end where the first one starts',
      ],
    ]);
    expect(said(`${G}/pieces/1/outline/edges/3/name`, 'middle').map(([, line]) => line)).toContain(
      'piece `back` is cut on the fold but has no edge called `fold`; name the edge on the fold `fold`',
    );
    expect(said(`${G}/pieces/2/outline/edges/3/name`, 'top')).toContainEqual([
      `${G}/pieces/2/outline/edges/3/name`,
      'piece `pocket`: two edges are called `top`; give one of them another name',
    ]);
  });

  test('basting that would show, a cover that is missing, a try-on of nothing', () => {
    expect(said(`${G}/joins/1/catches`, [{ trim: 'pocket.top', depth: '15 mm' }])).toEqual([
      [
        `${G}/joins/1/catches/0/depth`,
        'join `side seam`: the basting of `pocket.top` is as deep as the seam or deeper, so it would show; baste less deep, or sew the seam further in',
      ],
    ]);
    expect(said(`${G}/joins/1/catches`, [{ trim: 'pocket.top', depth: '14.9 mm' }])).toEqual([]);
    expect(said(`${G}/joins/1/seam`, 'covered')).toEqual([
      [
        `${G}/joins/1`,
        'join `side seam` is covered, but nothing covers it; name the edge that is sewn over it in `cover`',
      ],
    ]);
    expect(said(`${G}/gates/0/after`, [])).toEqual([
      [
        `${G}/gates/0`,
        'try-on `first try-on`: nothing is put together for it; name joins in `after` or `tack`',
      ],
    ]);
  });

  test('names of the same kind in the outfit are told apart', () => {
    expect(said('/markers/1', { id: 'chalk', name: 'red chalk', kind: 'chalk' })).toEqual([
      ['/markers/1/id', 'two markers are called `chalk`; give one of them another id'],
    ]);
  });
});
