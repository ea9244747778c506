import { cleanup, render, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { inches, mm, nm } from '../../src/length/length.ts';
import type { Marking } from '../../src/length/writing.ts';
import { Tape } from '../../src/ui/tape.tsx';
import { tapeWindow } from '../../src/ui/tape-marks.ts';

const sixteenths: Marking = { unit: 'in', per: 16 };
const halves: Marking = { unit: 'mm', step: 0.5 };

afterEach(cleanup);

describe('the stretch of tape in sight', () => {
  test('divisions lie a sixteenth apart, the longer ones where a rule has them', () => {
    const view = tapeWindow(inches(9), inches(20), sixteenths, 352);
    const whole = view.divisions.filter((d) => d.rank === 4);
    expect(whole.map((d) => d.label)).toEqual(['8', '9', '10']);
    const nine = view.divisions.findIndex((d) => d.label === '9');
    expect(view.divisions.slice(nine, nine + 17).map((d) => d.rank)).toEqual([
      4, 0, 1, 0, 2, 0, 1, 0, 3, 0, 1, 0, 2, 0, 1, 0, 4,
    ]);
    expect(view.divisions[nine]!.x).toBeCloseTo(176, 6);
    expect(view.divisions[nine + 1]!.x - view.divisions[nine]!.x).toBeCloseTo(352 / (2.75 * 16), 6);
  });

  test('millimetres are numbered in tens', () => {
    const view = tapeWindow(mm(200), mm(500), halves, 360);
    expect(view.divisions.filter((d) => d.label !== '').map((d) => d.label)).toEqual([
      '170',
      '180',
      '190',
      '200',
      '210',
      '220',
      '230',
    ]);
    expect(view.divisions.filter((d) => d.rank === 3)).toHaveLength(6);
  });

  test('near the datum the tape lies still with its end in sight', () => {
    const near = tapeWindow(inches(1, 16), inches(20), sixteenths, 360);
    const nearer = tapeWindow(inches(3, 2), inches(20), sixteenths, 360);
    expect(near.startX).toBeGreaterThan(20);
    expect(nearer.startX).toBe(near.startX);
    expect(near.divisions[0]).toMatchObject({ label: '0', x: near.startX });
  });

  test('no division lies before the datum or past the end, and the mark is always in sight', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2_000_000_000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom<Marking>(sixteenths, halves, { unit: 'in', per: 32 }, { unit: 'mm', step: 1 }),
        (span, part, marking) => {
          const at = nm(span * part);
          const view = tapeWindow(at, nm(span), marking, 360);
          const x = view.place(at);
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(360);
          for (const d of view.divisions) {
            expect(d.x).toBeGreaterThanOrEqual(view.startX - 1e-6);
            expect(d.x).toBeLessThanOrEqual(view.endX + 1e-6);
            expect(d.x).toBeLessThanOrEqual(360 + 1e-6);
          }
        },
      ),
    );
  });
});

test('the tape says where it is pinned, and shows each mark by its shape', () => {
  const { container } = render(
    <Tape
      span={inches(12)}
      marking={sixteenths}
      marks={[
        { item: 'a', at: inches(1), state: 'set' },
        { item: 'b', at: inches(35, 16), state: 'in-hand' },
        { item: 'c', at: inches(3), state: 'to-come' },
      ]}
    />,
  );
  expect(screen.getByRole('img').getAttribute('aria-label')).toBe('Tape, pinned at 2 3/16 in');
  expect(container.querySelectorAll('.tape-set')).toHaveLength(1);
  expect(container.querySelectorAll('.tape-pin')).toHaveLength(1);
  expect(container.querySelectorAll('.whole-tape .set')).toHaveLength(1);
  expect(container.querySelectorAll('.whole-tape .coming')).toHaveLength(1);
});
