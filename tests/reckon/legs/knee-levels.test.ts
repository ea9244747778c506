import { expect, test } from 'vitest';
import { stretchLeg } from '../../../src/cloth/stretch-leg.ts';
import { add, mm, subtract } from '../../../src/length/index.ts';
import { kneeOf, levelUpFromKnee } from '../../../src/reckon/legs/knee-levels.ts';
import { made } from '../../cloth/good.ts';
import { bodies, legOf } from '../../outside/stretch-bodies.ts';

const gauge = {
  round: { rest: mm(100), stretched: mm(190) },
  along: { rest: mm(100), stretched: mm(150) },
};

test('up from the knee is up on the draft, on every body, and ends at the crotch', () => {
  for (const body of bodies.slice(0, 12)) {
    const leg = made(stretchLeg({ gauge, measures: legOf(body) }));
    const knee = kneeOf(leg);
    expect(made(levelUpFromKnee(leg, mm(50), 'up', 'mm'))).toBe(subtract(knee, mm(50)));
    expect(made(levelUpFromKnee(leg, mm(-50), 'up', 'mm'))).toBe(add(knee, mm(50)));
    const most = subtract(knee, leg.crotchLevel);
    expect(levelUpFromKnee(leg, most, 'up', 'in')).toMatchObject({ ok: false, error: { field: 'up' } });
    expect(levelUpFromKnee(leg, subtract(most, mm(1)), 'up', 'in').ok).toBe(true);
  }
});
