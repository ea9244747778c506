import { describe, expect, test } from 'vitest';
import { finishedPoint } from '../../src/cloth/fold-map.ts';
import { tuckedPanel } from '../../src/cloth/tucked-panel.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { toNearestSide } from '../shape/shapes.ts';
import { sizeOf } from './box-size.ts';
import { made } from './good.ts';

const asked = {
  top: mm(200),
  bottom: mm(140),
  height: mm(300),
  run: 'across' as const,
  pressed: 'away' as const,
  count: 5,
  depth: mm(6),
  spacing: mm(20),
  allowance: mm(10),
};

describe('a panel opened through its tucks', () => {
  test('grows by the take-up along the tucks only', () => {
    const across = made(tuckedPanel(asked));
    expect(across.takeUp).toBe(mm(60));
    expect(sizeOf(across.seam)).toEqual({ width: mm(200), height: mm(360) });
    const down = made(tuckedPanel({ ...asked, run: 'down' }));
    expect(sizeOf(down.seam)).toEqual({ width: mm(260), height: mm(300) });
  });

  test.each(['away', 'toward'] as const)(
    'folded %s again it is the finished panel, its cut edge one allowance off',
    (pressed) => {
      for (const run of ['across', 'down'] as const) {
        for (const count of [1, 3, 8, 11]) {
          const { map, finished, seam, cut } = made(
            tuckedPanel({ ...asked, run, pressed, count, spacing: mm(18) }),
          );
          for (const p of seam) expect(toNearestSide(finished, finishedPoint(map, p))).toBeLessThan(20);
          for (const p of cut) {
            const off = toNearestSide(finished, finishedPoint(map, p));
            expect(off).toBeGreaterThan(mm(10) - 20);
            expect(off).toBeLessThan(mm(10) * 2);
          }
        }
      }
    },
  );

  // On each side: both stitching lines, the fold between them, and the place that the fold comes to lie over.
  test('slanted sides get small points inside the tucks; straight ones do not', () => {
    expect(made(tuckedPanel(asked)).seam.length).toBe(4 + 5 * 4 * 2);
    const plain = made(tuckedPanel({ ...asked, bottom: asked.top }));
    expect(sizeOf(plain.cut)).toEqual({ width: mm(220), height: mm(380) });
    expect(plain.lines).toHaveLength(15);
  });

  test.each([
    [{ top: zero }, 'top'],
    [{ height: zero }, 'height'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ allowance: inches(5) }, 'allowance'],
    [{ count: 0 }, 'count'],
    [{ count: 40 }, 'count'],
    [{ count: 301 }, 'count'],
    [{ depth: mm(25) }, 'depth'],
  ])('refuses %j', (change, field) => {
    expect(tuckedPanel({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
