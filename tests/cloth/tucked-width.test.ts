import { describe, expect, test } from 'vitest';
import { tuckedWidth } from '../../src/cloth/tucked-width.ts';
import { tucks } from '../../src/cloth/tucks.ts';
import { inches, mm } from '../../src/length/index.ts';
import { made } from './good.ts';

const group = (first: number, pressed: 'away' | 'toward' = 'away') =>
  made(tucks({ count: 3, depth: mm(10), spacing: mm(30), first: mm(first), pressed }));

describe('the width of a tucked piece', () => {
  test('as much after as before, where nothing is said', () => {
    expect(made(tuckedWidth(group(25)))).toMatchObject({ after: mm(25), finished: mm(110), flat: mm(170) });
    expect(made(tuckedWidth(group(0)))).toMatchObject({ after: mm(10), finished: mm(70) });
    expect(made(tuckedWidth(group(0, 'toward')))).toMatchObject({ after: mm(0), finished: mm(60) });
  });

  test('what is said counts, and a fold past the edge is named', () => {
    expect(made(tuckedWidth(group(25), inches(1)))).toMatchObject({ after: inches(1), assumed: [] });
    expect(made(tuckedWidth(group(25), mm(5))).assumed).toHaveLength(1);
    expect(made(tuckedWidth(group(25, 'toward'), mm(5))).assumed).toHaveLength(0);
  });

  test('refuses a far edge under the last tuck, and no tucks', () => {
    expect(tuckedWidth(group(25), mm(-1))).toMatchObject({ ok: false, error: { field: 'after' } });
    expect(tuckedWidth({ ...group(25), tucks: [] })).toMatchObject({ ok: false, error: { field: 'tucks' } });
  });
});
