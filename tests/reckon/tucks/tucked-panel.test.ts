import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { tuckedPanel } from '../../../src/reckon/tucks/tucked-panel.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('a panel opened through its tucks', () => {
  test('is higher by the take-up and the allowances', () => {
    const given = reckoned(tuckedPanel);
    expect(figures(given)).toMatchObject({
      'Cut height': inches(65, 4), // 10 + 5 of take-up + two allowances of 5/8
      'Cloth that the tucks take': inches(5),
      'First stitching, from the top': inches(7, 4), // (10 - 6 - 1/2) / 2
    });
    expect(places(given).slice(0, 4)).toEqual([inches(7, 4), inches(9, 4), inches(11, 4), inches(17, 4)]);
    const [sheet] = given.sheets;
    const strokes = new Set(sheet?.drawn.flatMap((d) => (d.kind === 'path' ? [d.stroke] : [])));
    expect([...strokes].sort()).toEqual(['cut', 'fold', 'grain', 'seam', 'stitch']);
    const all = sheet?.drawn.flatMap((d) => (d.kind === 'path' ? d.points : [])) ?? [];
    expect(Math.min(...all.map((p) => p.x))).toBe(0);
    expect(Math.min(...all.map((p) => p.y))).toBe(0);
  });

  test('tucks up and down widen it instead', () => {
    const entries = { bottom: '230', run: 'down-left', depth: '6', spacing: '20' };
    const found = figures(reckoned(tuckedPanel, entries, 'mm'));
    expect(found['Cut width at the widest']).toBe(mm(230 + 60 + 30));
    expect(found['Cut height']).toBe(mm(280));
  });

  test.each([
    [{ top: '0' }, 'top'],
    [{ bottom: '0' }, 'bottom'],
    [{ height: '0' }, 'height'],
    [{ count: '0' }, 'count'],
    [{ count: '50' }, 'count'],
    [{ depth: '2' }, 'depth'],
    [{ spacing: '0' }, 'spacing'],
    [{ allowance: '-1' }, 'allowance'],
    [{ allowance: '5' }, 'allowance'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(tuckedPanel, entries)).toEqual([field]);
  });
});
