import { describe, expect, it } from 'vitest';
import { practice } from '../../src/cloth/source.ts';
import { findLoop, heldUp } from '../../src/order/loop.ts';
import type { Constraint } from '../../src/order/step.ts';
import { weave } from '../../src/order/web.ts';

const arrow = (before: string, after: string, extra: Partial<Constraint> = {}): Constraint => ({
  before,
  after,
  rule: 'test',
  because: `${before} then ${after}`,
  source: practice,
  waivable: true,
  ...extra,
});
const ids = ['constructor', '__proto__', 'toString', 'hasOwnProperty'];

describe('a web of constraints', () => {
  it('walks both ways, each step once, and not back to where it started', () => {
    const web = weave([arrow('a', 'b'), arrow('a', 'c'), arrow('b', 'd'), arrow('c', 'd')]);
    expect([...web.after('a')].sort()).toEqual(['b', 'c', 'd']);
    expect([...web.before('d')].sort()).toEqual(['a', 'b', 'c']);
    expect(web.after('d').size).toBe(0);
    expect(web.out('a').map((c) => c.after)).toEqual(['b', 'c']);
    expect(web.into('d').map((c) => c.before)).toEqual(['b', 'c']);
  });

  it('holds a step itself where a loop leads back to it', () => {
    const web = weave([arrow('a', 'b'), arrow('b', 'a')]);
    expect(web.after('a').has('a')).toBe(true);
    expect(web.leads('a', 'a')).toBe(true);
  });

  it('sees what is added later', () => {
    const web = weave([arrow('a', 'b')]);
    expect(web.leads('a', 'c')).toBe(false);
    web.add(arrow('b', 'c'));
    expect(web.leads('a', 'c')).toBe(true);
    expect(web.leads('c', 'a')).toBe(false);
  });

  it('is not confused by names that JavaScript knows', () => {
    const web = weave(ids.slice(1).map((id, i) => arrow(ids[i] ?? '', id)));
    expect([...web.after('constructor')]).toEqual(ids.slice(1));
    expect(web.out('valueOf')).toEqual([]);
    expect(web.before('isPrototypeOf').size).toBe(0);
  });

  it('walks a chain of 20 000 without running out of stack', () => {
    const web = weave(Array.from({ length: 20_000 }, (_, i) => arrow(`s${i}`, `s${i + 1}`)));
    expect(web.after('s0').size).toBe(20_000);
    expect(web.before('s20000').size).toBe(20_000);
    expect(web.leads('s0', 's20000')).toBe(true);
  });
});

describe('a loop', () => {
  it('is found link by link, without what only waits behind it', () => {
    const web = weave([arrow('a', 'b'), arrow('b', 'c'), arrow('c', 'a'), arrow('c', 'z'), arrow('y', 'a')]);
    const held = heldUp(['y', 'z', 'a', 'b', 'c'], web);
    expect([...held].sort()).toEqual(['a', 'b', 'c', 'z']);
    const { ring } = findLoop(held, web, new Map());
    expect(ring).toHaveLength(3);
    ring.forEach((link, i) => {
      expect(link.after).toBe(ring[(i + 1) % ring.length]?.before);
    });
    expect(ring.map((link) => link.before).sort()).toEqual(['a', 'b', 'c']);
  });

  it('may be a step that waits for itself', () => {
    const web = weave([arrow('a', 'a')]);
    expect(findLoop(heldUp(['a'], web), web, new Map()).ring).toHaveLength(1);
  });

  it('holds nothing up where there is none, and leaves out constraints about unknown steps', () => {
    const web = weave([arrow('a', 'b'), arrow('ghost', 'a'), arrow('b', 'ghost')]);
    expect(heldUp(['a', 'b'], web).size).toBe(0);
  });

  it('is told in the maker’s words: each link with its rule, and what would open it', () => {
    const web = weave([arrow('a', 'b'), arrow('b', 'a', { waivable: false })]);
    const { say } = findLoop(heldUp(['a', 'b'], web), web, new Map());
    expect(say.split('\n')).toHaveLength(4);
    expect(say).toContain('These 2 steps wait for each other in a ring, so none can come first.');
    expect(say).toContain('“a” comes before “b”: a then b (test)');
    expect(say).toContain('“b” comes before “a”: b then a (test)');
    expect(say).toContain('Set one of these reasons aside');
  });

  it('does not offer to set a reason aside where none can be', () => {
    const fixed = { waivable: false };
    const web = weave([arrow('a', 'b', fixed), arrow('b', 'a', fixed)]);
    expect(findLoop(heldUp(['a', 'b'], web), web, new Map()).say).not.toContain('Set one');
  });

  it('is found whole among 20 000 steps, under names that JavaScript knows', () => {
    const name = (i: number): string => ids[i] ?? `s${i}`;
    const size = 20_000;
    const web = weave(Array.from({ length: size }, (_, i) => arrow(name(i), name((i + 1) % size))));
    const start = performance.now();
    const held = heldUp(
      Array.from({ length: size }, (_, i) => name(i)),
      web,
    );
    expect(findLoop(held, web, new Map()).ring).toHaveLength(size);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
