import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fresh, runningOrder } from '../../src/order/running.ts';
import type { Standing } from '../../src/order/running-types.ts';
import { constraintKey } from '../../src/order/step.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { demo, demos } from '../outfit/demo-files.ts';
import {
  broken,
  data,
  forced,
  gate,
  holes,
  join,
  order,
  orderOf,
  outfit,
  pair,
  piece,
  twoTucks,
  work,
} from './make.ts';

const body = {
  pieces: [
    pair('front', 'neck shoulder side hem opening'),
    piece('back', 'neck shoulder side hem', { cut: 'fold' }),
  ],
  works: [
    work('tucks', 'tucks', 'front', { from: 'opening', marker: 'chalk', family: twoTucks }),
    work('buttonholes', 'holes', 'front', holes),
  ],
  joins: [
    join('shoulder', 'front.shoulder', 'back.shoulder'),
    join('side', 'front.side', 'back.side', { closes: true }),
  ],
  gates: [gate('fit', 'shoulder side')],
};

describe('the running order', () => {
  for (const name of demos) {
    it(`of the demonstration ${name} has every step once and keeps every constraint`, () => {
      const running = order(demo(name));
      expect([...running.sequence].sort()).toEqual([...running.steps.keys()].sort());
      expect(broken(running)).toEqual([]);
      expect(running.waived).toEqual([]);
      expect(running.doneCount).toBe(0);
    });

    it(`of the demonstration ${name} is the same each time`, () => {
      expect(order(demo(name))).toEqual(order(demo(name)));
    });
  }

  it('does not depend on how the pieces are called', () => {
    const renamed = readOutfit(JSON.parse(JSON.stringify(data(body)).replaceAll('"front', '"zz-front')));
    if (!renamed.ok) throw new Error('the renamed outfit cannot be read');
    expect(order(renamed.value).sequence).toEqual(orderOf(body).sequence);
  });

  it('takes names that JavaScript knows', () => {
    const running = orderOf({
      pieces: [
        piece('constructor', 'valueof tostring constructor'),
        piece('prototype', 'valueof tostring constructor'),
      ],
      works: [work('press-edge', 'hasownproperty', 'constructor', { edge: 'valueof', turn: '10 mm' })],
      joins: [join('valueof', 'constructor.constructor', 'prototype.constructor')],
    });
    expect(forced(running, 'hasownproperty/press', 'valueof/pin')).toBe(true);
    expect(broken(running)).toEqual([]);
  });
});

describe('what is ready', () => {
  it('is cutting at first, and then what waits for nothing', () => {
    expect([...orderOf(body).ready]).toEqual(['a/cut-cotton/cut']);
    const then = orderOf(body, { done: ['a/cut-cotton/cut', 'a/cut-cotton/lines'] });
    expect(then.ready.has('a/tucks/mark')).toBe(true);
    expect(then.ready.has('a/shoulder/pin')).toBe(false);
    expect(then.doneCount).toBe(2);
  });

  it('is every step whose earlier steps are done, whatever was done', () => {
    const whole = orderOf(body);
    fc.assert(
      fc.property(fc.nat(whole.sequence.length), (n) => {
        const done = whole.sequence.slice(0, n);
        const running = orderOf(body, { done });
        const isDone = new Set(done);
        for (const id of running.sequence) {
          const free = running.constraints.every((c) => c.after !== id || isDone.has(c.before));
          expect(running.ready.has(id)).toBe(free && !isDone.has(id));
        }
        expect(running.ready.size > 0).toBe(n < whole.sequence.length);
      }),
      { numRuns: 30 },
    );
  });
});

describe('what is done', () => {
  it('stays where it was done, in the order in which it was done, and the rest still keeps every constraint', () => {
    const whole = orderOf(body);
    fc.assert(
      fc.property(fc.shuffledSubarray([...whole.sequence]), (done) => {
        const running = orderOf(body, { done });
        expect(running.sequence.slice(0, done.length)).toEqual(done);
        expect(running.doneCount).toBe(done.length);
        expect([...running.sequence].sort()).toEqual([...whole.sequence].sort());
        const isDone = new Set(done);
        expect(broken(running).filter((c) => !isDone.has(c.after))).toEqual([]);
      }),
    );
  });

  it('leaves the rest as it was, when the maker follows the order', () => {
    const whole = orderOf(body);
    for (let n = 0; n <= whole.sequence.length; n += 1) {
      expect(orderOf(body, { done: whole.sequence.slice(0, n) }).sequence).toEqual(whole.sequence);
    }
  });

  it('leaves out steps that are not there and those named twice', () => {
    const running = orderOf(body, { done: ['a/cut-cotton/cut', 'a/gone/away', 'a/cut-cotton/cut'] });
    expect(running.doneCount).toBe(1);
  });
});

describe('a reason of the maker’s own', () => {
  const mine = (before: string, after: string): Pick<Standing, 'added'> => ({
    added: [{ before, after, because: 'I like it so' }],
  });

  it('is kept like any other', () => {
    const running = orderOf(body, mine('a/side/press', 'a/holes/sample'));
    expect(forced(running, 'side/press', 'holes/sample')).toBe(true);
    expect(broken(running)).toEqual([]);
    expect(running.constraints.find((c) => c.rule === 'your own reason')?.because).toBe('I like it so');
  });

  it('never breaks another: the order keeps all of them or a ring is told', () => {
    const ids = orderOf(body).sequence;
    const anId = fc.constantFrom(...ids);
    fc.assert(
      fc.property(fc.array(fc.tuple(anId, anId), { minLength: 1, maxLength: 4 }), (pairs) => {
        const added = pairs.map(([before, after]) => ({ before, after, because: 'mine' }));
        const found = runningOrder(outfit(body), { ...fresh, added });
        if (found.ok) {
          expect(broken(found.value)).toEqual([]);
          for (const { before, after } of added) {
            expect(found.value.constraints.some((c) => c.before === before && c.after === after)).toBe(true);
          }
        } else {
          const { ring } = found.error;
          expect(ring.length).toBeGreaterThan(0);
          ring.forEach((link, i) => {
            expect(link.after).toBe(ring[(i + 1) % ring.length]?.before);
          });
          expect(ring.some((link) => link.rule === 'your own reason')).toBe(true);
        }
      }),
    );
  });

  it('against the rules makes a ring that is told with every step and every reason', () => {
    const found = runningOrder(outfit(body), { ...fresh, ...mine('a/side/stitch', 'a/tucks/mark') });
    expect(found.ok).toBe(false);
    if (found.ok) return;
    const { ring, say } = found.error;
    ring.forEach((link, i) => {
      expect(link.after).toBe(ring[(i + 1) % ring.length]?.before);
      expect(say).toContain(link.because);
      expect(say).toContain(`(${link.rule})`);
    });
    expect(ring.map((link) => link.rule)).toContain('your own reason');
    expect(say).toMatch(/^These \d steps wait for each other in a ring, so none can come first\.\n/);
    expect(say).toContain(
      '“Stitch the side” comes before “Mark 2 tucks on each front”: I like it so (your own reason)',
    );
    expect(say).toContain('Set one of these reasons aside');
  });

  it('about steps that are not there counts for nothing', () => {
    expect(orderOf(body, mine('a/gone/away', 'a/side/pin')).sequence).toEqual(orderOf(body).sequence);
  });
});

describe('a constraint set aside', () => {
  it('is told, is not in force, and frees the order', () => {
    const whole = orderOf(body);
    const [aside] = whole.constraints.filter((c) => c.rule === 'prepare flat');
    if (!aside) throw new Error('nothing to set aside');
    const running = orderOf(body, { waived: new Set([constraintKey(aside)]) });
    expect(running.waived).toEqual([aside]);
    expect(running.constraints).not.toContainEqual(aside);
    expect(running.constraints).toHaveLength(whole.constraints.length - 1);
    expect(broken(running)).toEqual([]);
  });

  it('may be any that a rule found, each by itself', () => {
    for (const c of orderOf(body).constraints.filter((c) => c.waivable)) {
      const running = orderOf(body, { waived: new Set([constraintKey(c)]) });
      expect(running.waived.map(constraintKey)).toContain(constraintKey(c));
      expect(running.constraints.map(constraintKey)).not.toContain(constraintKey(c));
    }
  });

  it('cannot be part of one action: a seam is never pressed before it is sewn', () => {
    const whole = orderOf(body);
    const inner = whole.constraints.filter((c) => !c.waivable);
    expect(inner.length).toBeGreaterThan(10);
    const running = orderOf(body, { waived: new Set(inner.map(constraintKey)) });
    expect(running.waived).toEqual([]);
    expect(running.constraints).toEqual(whole.constraints);
  });

  it('opens a ring that it is part of', () => {
    const added = [{ before: 'a/side/stitch', after: 'a/tucks/mark', because: 'mine' }];
    let waived = new Set<string>();
    let found = runningOrder(outfit(body), { ...fresh, added, waived });
    for (let turn = 0; turn < 20 && !found.ok; turn += 1) {
      const open = found.error.ring.find((c) => c.waivable && c.rule !== 'your own reason');
      if (!open) break;
      waived = new Set([...waived, constraintKey(open)]);
      found = runningOrder(outfit(body), { ...fresh, added, waived });
    }
    expect(found.ok).toBe(true);
    if (found.ok) {
      expect(forced(found.value, 'side/stitch', 'tucks/mark')).toBe(true);
      expect(found.value.waived.map(constraintKey).sort()).toEqual([...waived].sort());
    }
  });
});
