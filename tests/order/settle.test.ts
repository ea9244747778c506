import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeoversOf } from '../../src/order/running.ts';
import { settle } from '../../src/order/settle.ts';
import type { Constraint, Station, Step } from '../../src/order/step.ts';

const step = (id: string, station: Station): Step => ({
  id,
  garment: 'g',
  of: { kind: 'work', id },
  action: station,
  setUp: { station, thread: '', tool: '' },
  say: id,
  pieces: [],
  edges: [],
  times: 1,
  minutes: 1,
  final: false,
  kills: [],
});
const arrow = (before: string, after: string): Constraint => ({
  before,
  after,
  rule: 'r',
  because: 'b',
  source: { kind: 'practice' },
  waivable: true,
});

describe('settle', () => {
  test('moves a pinning to the last pinning sitting before its seam', () => {
    const steps = new Map(
      [step('pin a', 'pin'), step('sew b', 'machine'), step('pin c', 'pin'), step('sew a', 'machine')].map(
        (s) => [s.id, s],
      ),
    );
    const order = settle(['pin a', 'sew b', 'pin c', 'sew a'], steps, [arrow('pin a', 'sew a')]);
    expect(order).toEqual(['sew b', 'pin a', 'pin c', 'sew a']);
  });

  test('keeps every constraint, loses nothing and adds no changeover, whatever the order', () => {
    const stations: Station[] = ['pin', 'machine', 'mark', 'iron', 'try-on'];
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.array(fc.nat(30), { maxLength: 3 })), {
          maxLength: 40,
        }),
        (rows) => {
          const steps = new Map(rows.map(([s], i) => [`s${i}`, step(`s${i}`, stations[s] ?? 'pin')]));
          const arrows = rows.flatMap(([, befores], i) =>
            befores.filter((b) => b < i).map((b) => arrow(`s${b}`, `s${i}`)),
          );
          const order = [...steps.keys()];
          const settled = settle(order, steps, arrows);
          expect(settled.toSorted()).toEqual(order.toSorted());
          const place = new Map(settled.map((id, i) => [id, i]));
          for (const { before, after } of arrows)
            expect(place.get(before)).toBeLessThan(place.get(after) ?? -1);
          expect(changeoversOf(settled, steps)).toBeLessThanOrEqual(changeoversOf(order, steps));
          order.forEach((id, i) => {
            if (steps.get(id)?.setUp.station === 'try-on') expect(place.get(id)).toBeLessThanOrEqual(i);
          });
        },
      ),
    );
  });
});
