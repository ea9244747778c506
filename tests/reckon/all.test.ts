import { describe, expect, test } from 'vitest';
import { writeSource } from '../../src/cloth/source.ts';
import { askedFirst, type Field, startOf } from '../../src/fields/fields.ts';
import type { ReadingUnit } from '../../src/length/reading.ts';
import { markingStrip } from '../../src/paper/marking-strip.ts';
import type { PatternSheet } from '../../src/paper/pattern-sheet.ts';
import { RECKONINGS, reckoningOf } from '../../src/reckon/all.ts';

const UNITS: readonly ReadingUnit[] = ['in', 'mm'];
const MARKING = { in: { unit: 'in', per: 16 }, mm: { unit: 'mm', step: 1 } } as const;
const cases = RECKONINGS.flatMap((one) => UNITS.map((unit) => [one.id, unit, one] as const));

/** What a tired finger may leave in a field. */
const odd = (field: Field): readonly string[] => {
  switch (field.kind) {
    case 'length':
      return ['', '0', '-5 mm', '0.01 mm', '1 mm', '3 m', '900 m', 'a hand'];
    case 'number':
      return ['', '0', '-1', '1', '2.5', '100', '100000', '999999999', 'a few'];
    case 'choice':
      return [...field.options.map(({ value }) => value), 'none of these'];
    case 'lines':
      return ['', '\n\n', 'nothing that can be read', '1 2 3'];
  }
};

/** Everything drawn has points or words, and every number of it is one. */
function sound(drawing: PatternSheet): void {
  expect(drawing.name).not.toBe('');
  expect(drawing.drawn.length).toBeGreaterThan(0);
  const across = new Set<number>();
  const down = new Set<number>();
  let points = 0;
  for (const one of drawing.drawn) {
    const places = one.kind === 'path' ? one.points : [one.at];
    if (one.kind === 'path') expect(one.points.length).toBeGreaterThan(1);
    else expect(one.words.trim() !== '' && one.high > 0, `words on ${drawing.name}`).toBe(true);
    points += places.length;
    for (const { x, y } of places) {
      if (!Number.isSafeInteger(x) || !Number.isSafeInteger(y)) throw new Error(`${x}, ${y} is no place`);
      across.add(x);
      down.add(y);
    }
  }
  expect(points).toBeLessThan(600_000);
  expect(across.size > 1 && down.size > 1, `${drawing.name} has a width and a height`).toBe(true);
}

describe('every reckoning', () => {
  test('has an address, a name and a line of its own', () => {
    expect(new Set(RECKONINGS.map(({ id }) => id)).size).toBe(RECKONINGS.length);
    expect(new Set(RECKONINGS.map(({ name }) => name)).size).toBe(RECKONINGS.length);
    for (const { id, name, tells } of RECKONINGS) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(name).toMatch(/^[A-Z]/);
      expect(tells).toMatch(/^[A-Z].*\.$/);
    }
    expect(reckoningOf(RECKONINGS[0]?.id ?? '')).toBe(RECKONINGS[0]);
    expect(reckoningOf('none')).toBeUndefined();
  });

  test.each(RECKONINGS.map((one) => [one.id, one] as const))('%s asks plainly', (_, { fields }) => {
    expect(Object.keys(fields).length).toBeGreaterThan(0);
    for (const field of Object.values(fields)) {
      expect(field.label.split(' ').length, field.label).toBeLessThanOrEqual(5);
      expect(field.label.length, field.label).toBeLessThanOrEqual(30);
      if (field.means !== undefined) expect(field.means).toMatch(/^[A-Z0-9].*\.$/s);
      const optional = 'optional' in field && field.optional === true;
      for (const unit of UNITS) {
        const start = startOf(field, unit);
        if (!optional) expect(start, field.label).not.toBe('');
        if (field.kind === 'choice') expect(field.options.map(({ value }) => value)).toContain(start);
      }
    }
  });

  test.each(RECKONINGS.map((one) => [one.id, one] as const))('%s asks little at first', (_, { fields }) => {
    // A body is measured once for all reckonings that share its measures.
    const asked = Object.values(fields).filter((field) => askedFirst(field) && field.shared === undefined);
    expect(asked.length).toBeLessThanOrEqual(6);
    expect(Object.values(fields).filter(askedFirst).length).toBeGreaterThan(0);
  });

  test('fields that share what is typed are of one kind, and begin alike', () => {
    const found = new Map<string, Field>();
    for (const { fields } of RECKONINGS) {
      for (const field of Object.values(fields)) {
        if (field.shared === undefined) continue;
        const first = found.get(field.shared) ?? field;
        found.set(field.shared, first);
        expect([field.kind, field.start], field.shared).toEqual([first.kind, first.start]);
      }
    }
    expect(found.size).toBeGreaterThanOrEqual(13);
  });

  test.each(cases)('%s works from what stands there first, in %s', (_, unit, one) => {
    const result = one.reckon({}, unit);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    const { figures, strips, drawing, sheets, advice, assumed, sources } = result.value;
    expect(figures.length).toBeGreaterThan(0);
    expect(new Set(figures.map(({ name }) => name)).size, 'names of figures').toBe(figures.length);
    for (const figure of figures) {
      expect(figure.name).toMatch(/^[A-Z0-9]/);
      if (figure.kind === 'length') expect(Number.isSafeInteger(figure.length), figure.name).toBe(true);
      else if (figure.kind === 'number') expect(Number.isFinite(figure.number), figure.name).toBe(true);
      else expect(figure.words.trim(), figure.name).not.toBe('');
    }
    sound(drawing);
    for (const piece of sheets) sound(piece);
    for (const strip of strips) {
      expect(strip.from).not.toBe('');
      expect(strip.marks.length).toBeGreaterThan(0);
      for (const { name } of strip.marks) expect(name).not.toBe('');
      sound(markingStrip(strip, MARKING[unit]));
    }
    const printed = [...strips, ...sheets].map(({ name }) => name);
    expect(new Set(printed).size, 'names of what is printed').toBe(printed.length);
    expect(sources.length).toBeGreaterThan(0);
    for (const source of [...sources, ...advice.map((a) => a.source)])
      expect(writeSource(source)).not.toBe('');
    for (const says of [...assumed, ...advice.map(({ say }) => say)])
      expect(says).toMatch(/^[A-Z0-9“].*\.$/s);
  });

  test.each(RECKONINGS.map((one) => [one.id, one] as const))(
    '%s refuses kindly and at a field',
    (_, one) => {
      for (const [name, field] of Object.entries(one.fields)) {
        for (const entry of odd(field)) {
          const result = one.reckon({ [name]: entry }, 'mm');
          if (result.ok) {
            sound(result.value.drawing);
            continue;
          }
          expect(result.error.length).toBeGreaterThan(0);
          for (const fault of result.error) {
            expect(Object.keys(one.fields)).toContain(fault.field);
            expect(fault.say, `${name}: ${entry}`).toMatch(/\.$/);
            expect(fault.say).not.toMatch(/undefined|NaN|Infinity|!/);
          }
        }
      }
    },
    60_000,
  ); // a layout is tried anew for every entry
});
