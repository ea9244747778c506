import { describe, expect, test } from 'vitest';
import { panelOutline } from '../../src/cloth/panel.ts';
import { mm, zero } from '../../src/length/index.ts';
import { at } from '../shape/shapes.ts';

describe('a panel by three measures', () => {
  test('the same on both sides, whichever end is wider', () => {
    const wide = panelOutline({ top: mm(100), bottom: mm(60), height: mm(80) });
    expect(wide).toEqual({ ok: true, value: [at(0, 0), at(100, 0), at(80, 80), at(20, 80)] });
    const narrow = panelOutline({ top: mm(60), bottom: mm(100), height: mm(80) });
    expect(narrow).toEqual({ ok: true, value: [at(20, 0), at(80, 0), at(100, 80), at(0, 80)] });
  });

  test.each(['top', 'bottom', 'height'])('refuses nothing and too much at the %s', (field) => {
    const size = { top: mm(100), bottom: mm(60), height: mm(80) };
    expect(panelOutline({ ...size, [field]: zero })).toMatchObject({ error: { field } });
    expect(panelOutline({ ...size, [field]: mm(10_001) })).toMatchObject({ error: { field } });
  });
});
