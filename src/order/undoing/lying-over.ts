import type { Step } from '../step.ts';
import type { Open } from './closure.ts';
import { OPENED_AT_A_CROSSING } from './paces.ts';
import type { Over, Sub } from './prepared.ts';
import { shared } from './sides.ts';
import { around, covered, overlaps } from './spans.ts';

type Sewn = (step: Step) => boolean;

/** What is laid on over an opened seam comes off along the edges that it shares with it. */
export function liftWhatLiesOver(open: Map<Sub, Open>, sewn: Sewn): void {
  for (const { sub, lines } of [...open.values()]) {
    for (const over of sub.room.laidOver.get(sub.id) ?? []) {
      if (!over.steps.some(sewn)) continue;
      const found = open.get(over) ?? nothing(over);
      let any = open.has(over);
      over.lines.forEach((line, n) => {
        const under = lines[sub.lines.length === over.lines.length ? n : 0];
        const seam = sub.lines[sub.lines.length === over.lines.length ? n : 0];
        const opened = found.lines[n];
        if (!under || !seam || !opened) return;
        for (const spot of line.spots) {
          const shares = seam.spots.some(
            ({ key, span, sides }) =>
              key === spot.key && shared(sides, spot.sides) > 0 && overlaps(span, under.along),
          );
          if (!shares || opened.spots.includes(spot)) continue;
          opened.spots.push(spot);
          opened.along.push(spot.span);
          any = true;
        }
      });
      if (any) open.set(over, found);
    }
  }
}

const nothing = (sub: Sub): Open => ({
  sub,
  lines: sub.lines.map(() => ({ along: [], spots: [], crossed: [], cover: false, trims: new Map() })),
  crossing: new Map(),
  sides: 0,
  unpick: true,
});

/** What was sewn later over an end of what is opened is opened a little there. */
export function openAtCrossings(open: Map<Sub, Open>, sewn: Sewn): void {
  for (const under of [...open.values()]) {
    if (!under.lines.some(({ along }) => along.length > 0)) continue;
    for (const over of under.sub.room.over.get(under.sub.id) ?? []) {
      if (!over.sub.steps.some(sewn) || !ends(under, over)) continue;
      const found = open.get(over.sub) ?? nothing(over.sub);
      const reach = over.sub.length > 0 ? OPENED_AT_A_CROSSING.value / over.sub.length : 1;
      found.lines[over.line]?.crossed.push(...around(over.at, reach, over.sub.ring));
      found.crossing.set(under.sub.id, [
        ...(found.crossing.get(under.sub.id) ?? []),
        ...over.ends.map(({ ref }) => ref),
      ]);
      open.set(over.sub, found);
    }
  }
}

/** True where the corner at which it is run over is a corner of an edge that is opened, on the same side. */
function ends(under: Open, over: Over): boolean {
  const { looked } = under.sub.room;
  return under.lines.some((line, n) =>
    // A trim that comes out whole is at no edge of its own: then every corner of the seam is open.
    (covered(line.along) === 1 ? (under.sub.lines[n]?.spots ?? []) : line.spots).some((spot) => {
      const beside: readonly string[] = looked.beside.get(spot.key) ?? [];
      return over.ends.some(
        ({ ref, sides }) =>
          ref.piece === spot.ref.piece && beside.includes(ref.edge) && shared(sides, spot.sides) > 0,
      );
    }),
  );
}
