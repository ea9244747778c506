import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { LatePoint } from '../../src/order/undoing/late.ts';
import { LateCurve } from '../../src/screens/running-order/late-curve.tsx';
import {
  linesAcross,
  pathOf,
  roughly,
  rowsFor,
  scaleFor,
  WIDE,
} from '../../src/screens/running-order/late-lines.ts';
import LatePart from '../../src/screens/running-order/late-part.tsx';
import { clearDesks, desk, shirt } from './describe/desk.ts';

const slips = vi.hoisted(() => ({ misfits: false }));
vi.mock('../../src/fitting/misfits.ts', async (original) => {
  const real = await original<typeof import('../../src/fitting/misfits.ts')>();
  return {
    ...real,
    likelyMisfits(...given: Parameters<typeof real.likelyMisfits>) {
      if (slips.misfits) throw new Error('a slip of the reckoning');
      return real.likelyMisfits(...given);
    },
  };
});

afterEach(() => {
  cleanup();
  clearDesks();
  slips.misfits = false;
});

/** A curve made by hand: nothing before the first cut, then more and more. */
const points: readonly LatePoint[] = [0, 10, 10, 45, 200, 200, 640].map((minutes, i) => ({
  step: `shirt/s${i + 1}/stitch`,
  done: i + 1,
  minutes,
  worst: minutes === 0 ? '' : i < 4 ? 'narrow' : 'low',
  worstMinutes: minutes * 2,
}));

const show = (now: number) =>
  render(
    <LateCurve
      points={points}
      tryOns={[{ name: 'The shirt, basted', done: 5 }]}
      now={now}
      say={(step) => `Do ${step}`}
      called={(id) => (id === 'narrow' ? 'The front is narrow' : 'The crotch sits low')}
    />,
  );

const said = (): string => document.querySelector('[data-part="late-here"]')?.textContent ?? '';

describe('the curve of finding out late', () => {
  it('begins where the work has come to, and says what it would cost there', () => {
    show(4);
    expect(said()).toContain('Now, found here: about 45 min; worst: the front is narrow, about 1 h 30 min.');
    expect(said()).toContain('Do shirt/s4/stitch');
  });

  it('is asked at any point by the slide, which says the same to those who hear it', () => {
    show(4);
    const slide = screen.getByRole('slider', { name: 'How far the work has come' });
    expect(slide.getAttribute('max')).toBe('7');
    fireEvent.input(slide, { target: { value: '7' } });
    expect(said()).toContain('After step 7 of 7, found here: about 10 h 30 min');
    expect(slide.getAttribute('aria-valuetext')).toContain(
      'after step 7 of 7, found here: about 10 h 30 min',
    );
    expect(slide.getAttribute('aria-valuetext')).toContain('the crotch sits low');
  });

  it('is asked at any point by a touch on the drawing', () => {
    show(1);
    expect(said()).toContain('Now, found here: next to nothing.');
    const drawing = document.querySelector('svg')!;
    drawing.getBoundingClientRect = () => ({ left: 100, width: WIDE }) as DOMRect;
    const at = scaleFor(points.length, 640).x(5);
    fireEvent.pointerDown(drawing, { clientX: 100 + at + 3 });
    expect(said()).toContain('After step 5 of 7');
  });

  it('lists every try-on and the end in a table', () => {
    show(4);
    const rows = within(screen.getByRole('table', { hidden: true })).getAllByRole('row', { hidden: true });
    expect(rows.map((row) => row.textContent)).toEqual([
      'Found atCostsWorst',
      '1 The shirt, bastedabout 3 h 20 minThe crotch sits low, about 6 h 30 min',
      'The endabout 10 h 30 minThe crotch sits low, about 21 h',
    ]);
  });
});

describe('the reckoning of it', () => {
  it('is waited for, and then drawn', async () => {
    render(<LatePart session={desk(shirt).session} />);
    expect(screen.getByRole('status').textContent).toBe('Reckoning…');
    await waitFor(() => expect(document.querySelector('[data-part="late-curve"]')).not.toBeNull());
  });

  it('says so where it slips, and does not keep the maker waiting', async () => {
    slips.misfits = true;
    render(<LatePart session={desk(shirt).session} />);
    await waitFor(() => expect(screen.getByRole('status').textContent).toContain('could not be reckoned'));
  });
});

describe('the lines of the curve', () => {
  it('has at most four lines across, and the highest of them reaches the most', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1e5, noNaN: true }), (most) => {
        const lines = linesAcross(most);
        expect(lines.length).toBeLessThanOrEqual(4);
        expect(lines.at(-1)).toBeGreaterThanOrEqual(most);
      }),
    );
  });

  it('takes a touch to the step that is drawn there', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), (steps, any) => {
        const done = Math.min(any, steps);
        const scale = scaleFor(steps, 100);
        expect(scale.doneAt(scale.x(done) / WIDE)).toBe(done);
        expect(scale.doneAt(0)).toBe(1);
        expect(scale.doneAt(1)).toBe(steps);
      }),
    );
  });

  it('rises at the step that makes the cost', () => {
    const scale = scaleFor(7, 640);
    const at = (done: number): string => String(Math.round(scale.x(done) * 10) / 10);
    const path = pathOf(points, scale);
    expect(path.match(/V/g)).toHaveLength(4);
    expect(path).toContain(`H${at(2)}V`);
    expect(path.endsWith(`H${at(7)}`)).toBe(true);
  });

  it('stands pins side by side, or one below the other where there is no room', () => {
    expect(rowsFor([10, 40, 45, 47, 80], 20)).toEqual([0, 0, 1, 2, 0]);
  });

  it('says working time no finer than it is known, and never in days', () => {
    expect([1, 33, 58, 200, 333, 1203, 4000].map(roughly)).toEqual([
      '5 min',
      '35 min',
      '1 h',
      '3 h 20 min',
      '5 h 30 min',
      '20 h',
      '67 h',
    ]);
  });
});
