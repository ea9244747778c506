import { expect, test } from 'vitest';
import { interfacingChoice } from '../../../src/reckon/machine/interfacing-choice.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test.each(['in', 'mm'] as const)(
  'a collar is fused where the cloth bears it, and cooled flat: %s',
  (unit) => {
    const made = worked(interfacingChoice, {}, unit);
    expect(figure(made, 'Held')).toBe('fused');
    expect(figure(made, 'Interfacing')).toBe('medium, woven');
    expect([figure(made, 'Heat'), figure(made, 'Hold still'), figure(made, 'The cloth bears')]).toEqual([
      150, 10, 200,
    ]);
    expect(figure(made, 'Afterwards')).toContain('flat');
  },
);

test('always a sample first, and the instructions above our figures', () => {
  for (const held of ['choose', 'sewn in', 'fused']) {
    const says = worked(interfacingChoice, { held }).advice.map(({ say }) => say);
    expect(says[0]).toContain('sample');
    expect(says.join(' ')).toContain('go above these figures');
  }
});

test('sewn in where the label forbids the heat, and says why', () => {
  const made = worked(interfacingChoice, { care: '1', make: 'knit', part: 'hem' });
  expect(figure(made, 'Held')).toBe('sewn in');
  expect(figure(made, 'Interfacing')).toBe('light, knit');
  expect(figure(made, 'Why')).toContain('110 °C');
  expect(made.drawing.drawn.some((one) => one.kind === 'path' && one.stroke === 'stitch')).toBe(true);
});

test('instructions that need less heat let it be fused', () => {
  const made = worked(interfacingChoice, { care: '1', degrees: '105', seconds: '15' });
  expect(figure(made, 'Heat')).toBe(105);
});

test.each([
  [{ held: 'fused', care: '1' }, 'held'],
  [{ held: 'fused', care: '0' }, 'held'],
  [{ degrees: '20', seconds: '12' }, 'degrees'],
  [{ degrees: '150', seconds: '0' }, 'seconds'],
  [{ degrees: '150', seconds: '900' }, 'seconds'],
  [{ held: 'fused', care: '2', degrees: '190', seconds: '900' }, 'seconds'],
  [{ degrees: '150' }, 'seconds'],
  [{ seconds: '10' }, 'degrees'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(interfacingChoice, entries)).toEqual([field]);
});
