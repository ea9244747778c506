import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeChange, pointerTo, readPointer } from '../../src/store/describe-change.ts';

const change = (description: unknown, at: string, now?: unknown, was?: unknown) => {
  const result = describeChange(description, {
    at,
    ...(now !== undefined && { now }),
    ...(was !== undefined && { was }),
  });
  return result.ok ? result.value : result.error;
};

describe('a change to the description', () => {
  it('sets, adds and takes away a field', () => {
    expect(change({ a: { b: 1 } }, '/a/b', 2, 1)).toEqual({ a: { b: 2 } });
    expect(change({ a: {} }, '/a/b', 2)).toEqual({ a: { b: 2 } });
    expect(change({ a: { b: 1, c: 2 } }, '/a/b', undefined, 1)).toEqual({ a: { c: 2 } });
    expect(change({ a: 1 }, '', { b: 2 })).toEqual({ b: 2 });
  });

  it('puts in, replaces and takes out an entry of a list', () => {
    expect(change([1, 2], '/1', 9)).toEqual([1, 9, 2]);
    expect(change([1, 2], '/-', 9)).toEqual([1, 2, 9]);
    expect(change([1, 2], '/1', 9, 2)).toEqual([1, 9]);
    expect(change([1, 2], '/0', undefined, 1)).toEqual([2]);
    expect(change({ l: [{ n: 1 }, { n: 2 }] }, '/l/1/n', 3, 2)).toEqual({ l: [{ n: 1 }, { n: 3 }] });
  });

  it('shares what is not on the way and leaves the old one alone', () => {
    const old = { a: { b: 1 }, c: { d: 1 } };
    const made = change(old, '/a/b', 2) as typeof old;
    expect(made.c).toBe(old.c);
    expect(old.a.b).toBe(1);
  });

  it('says what is wrong with a place that is not there', () => {
    expect(change({}, 'a', 1)).toContain('does not begin with "/"');
    expect(change({}, '/a~2', 1)).toContain('"~"');
    expect(change({}, '/a/b', 1)).toContain('there is no "a"');
    expect(change({ a: 1 }, '/a/b', 1)).toContain('nothing that could hold "b"');
    expect(change([1], '/7', 1)).toContain('past the end');
    expect(change([1], '/01', 1)).toContain('past the end');
  });

  it('cannot reach a prototype', () => {
    expect(change({}, '/__proto__/bad', true)).toContain('__proto__');
    expect(change({}, '/constructor/prototype/bad', true)).toContain('there is no "constructor"');
    expect(change([], '/constructor/prototype/bad', true)).toContain('there is no "constructor"');
    expect(change({}, '/toString', 'x')).toEqual({ toString: 'x' });
    expect(Object.hasOwn(change({}, '/constructor', 'x') as object, 'constructor')).toBe(true);
    expect(({} as { bad?: boolean }).bad).toBeUndefined();
  });

  it('spells and reads any names, as RFC 6901 section 5 does', () => {
    // RFC 6901 "JavaScript Object Notation (JSON) Pointer", 2013, section 5.
    expect(readPointer('/a~1b')).toEqual({ ok: true, value: ['a/b'] });
    expect(readPointer('/m~0n')).toEqual({ ok: true, value: ['m~n'] });
    expect(readPointer('/')).toEqual({ ok: true, value: [''] });
    expect(readPointer('')).toEqual({ ok: true, value: [] });
    const names = fc.array(fc.string({ unit: fc.constantFrom('~', '/', '0', '1', 'é') }));
    fc.assert(
      fc.property(names, (way) => {
        expect(readPointer(pointerTo(way))).toEqual({ ok: true, value: way });
      }),
    );
  });
});
