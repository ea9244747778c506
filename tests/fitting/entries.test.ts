import { describe, expect, it } from 'vitest';
import { CHECKS, ENTRIES, entryCalled } from '../../src/fitting/entries/all.ts';
import type { Cause, Entry, Level, Role, Want } from '../../src/fitting/entry.ts';

const causes: readonly (readonly [Entry, Cause])[] = ENTRIES.flatMap((entry) =>
  entry.causes.map((cause) => [entry, cause] as const),
);
const wants = causes.flatMap(([entry, cause]) => cause.wants.map((want) => [entry, cause, want] as const));

/** Levels that a piece of a role can have. */
const BODY: readonly Level[] = ['neck', 'shoulder', 'chest', 'waist', 'hip', 'hem'];
const LEVELS: Readonly<Record<Role, readonly Level[]>> = {
  'centre-front': BODY,
  'side-front': BODY.slice(1),
  'side-back': BODY.slice(1),
  'centre-back': BODY,
  sleeve: ['top', 'upper-arm', 'elbow', 'wrist'],
  'sleeve-head': ['top', 'upper-arm'],
  'arm-band': ['top', 'upper-arm'],
  cuff: ['wrist'],
  collar: ['neck'],
  frill: ['top', 'hem'],
  leg: ['waist', 'hip', 'crotch', 'thigh', 'knee', 'calf', 'ankle'],
  'lower-leg': ['knee', 'calf', 'ankle'],
  waistband: ['waist'],
  skirt: ['waist', 'hip', 'hem'],
  other: [],
};

const levelsOf = (want: Want): readonly Level[] =>
  want.kind === 'width' ? [want.level] : want.kind === 'length' ? [want.from, want.to] : [];

describe('the entries', () => {
  it('are at least sixty, with ids that are unique and well written', () => {
    expect(ENTRIES.length).toBeGreaterThanOrEqual(60);
    const ids = ENTRIES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(ENTRIES.map(({ seen }) => seen)).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    for (const { id, causes: all } of ENTRIES)
      expect(new Set(all.map((one) => one.id)).size, id).toBe(all.length);
  });

  it('keep the ids that ledgers hold', () => {
    const kept = {
      'surplus-at-the-upper-side': ['narrow-front', 'too-wide', 'low-armhole', 'wide-all-round'],
      'tucks-not-straight': ['narrow-panel', 'off-grain', 'uneven-marks'],
      'frill-too-far-in': ['narrow-panel', 'pressed-inward', 'lapped-too-far'],
      'crotch-low': ['long-rise', 'slipping-waist', 'short-legs'],
      'ankle-folds': ['long-leg', 'wide-ankle', 'tight-calf'],
      'cuff-tight': ['short-cuff', 'button-too-far-in'],
      'heavy-sleeve-droops': ['loose-band', 'no-support', 'soft-cloth'],
      'sleeve-slides-down': ['long-elastic', 'wide-band', 'no-anchor'],
      'band-gapes': ['narrow-front', 'wide-spacing', 'narrow-back'],
    };
    for (const [id, of] of Object.entries(kept))
      expect(
        entryCalled(id)?.causes.map((cause) => cause.id),
        id,
      ).toEqual(of);
    expect(entryCalled('no-such-thing')).toBeUndefined();
  });

  it('are short, in sentences, and shout at nobody', () => {
    for (const { id, seen, asks } of ENTRIES) {
      expect(seen, id).toMatch(/^[A-Z].{3,59}$/);
      expect(seen, id).not.toMatch(/[.!?]$/);
      if (asks !== undefined) expect(asks, id).toMatch(/^[A-Z].{5,95}\?$/);
    }
    for (const [{ id }, cause] of causes) {
      const at = `${id} ${cause.id}`;
      expect(cause.is, at).toMatch(/^[a-z].{5,90}[^.]$/);
      for (const words of [cause.test, cause.change]) expect(words, at).toMatch(/^[A-Z].{5,198}\.$/);
      for (const words of [cause.measured, cause.limits ?? 'None.'])
        expect(words, at).toMatch(/^[A-Z0-9].{3,118}\.$/);
      for (const words of Object.values(cause)) expect(String(words), at).not.toMatch(/!|\b[A-Z]{4,}\b/);
    }
  });

  it('are spelt as in Britain', () => {
    const words = JSON.stringify([ENTRIES, CHECKS]);
    expect(words).not.toMatch(/\b(center|color|fiber|gray|molding|inseams? pocket|favor)\b/i);
  });

  it('speak of the cut, and never against a body', () => {
    const said = [
      ...ENTRIES.map(({ id, seen }) => [id, seen] as const),
      ...causes.map(
        ([{ id }, one]) =>
          [`${id} ${one.id}`, `${one.is} ${one.test} ${one.change} ${one.limits ?? ''}`] as const,
      ),
    ];
    for (const [at, words] of said)
      expect(words, at).not.toMatch(
        /\b(fat|stout|skinny|bulky|bulges?|heavy figure|plump|flabby|abnormal|normal|defects?|flaws?|deform\w*|ugly|hump|knock-kneed|bow-legged|over-?weight|figure faults?)\b/i,
      );
    // The whole of a body is nobody's mistake: it is the garment that is too wide or too long.
    for (const [{ id }, { is }] of causes) expect(is, id).not.toMatch(/\bthe body is\b/);
  });

  it('have sources that are whole', () => {
    for (const { source } of [...ENTRIES, ...causes.map(([, cause]) => cause), ...CHECKS])
      if (source.kind === 'published')
        expect(`${source.title}|${source.year}|${source.where}`).toMatch(
          /^[^|]{4,}\|(\d{4}|undated)\|[^|]{4,}$/,
        );
    const kinds = new Set(causes.map(([, { source }]) => source.kind));
    expect([...kinds].sort()).toEqual(['memory', 'practice', 'published']);
  });

  it('say conjectures from memory to be that, and are backed by print for a good part', () => {
    const printed = ENTRIES.filter(({ source }) => source.kind === 'published').length;
    expect(printed).toBeGreaterThan(40);
  });
});

describe('what a cause wants', () => {
  it('is at levels that its pieces have', () => {
    for (const [entry, cause, want] of wants) {
      if (want.kind === 'add') continue;
      // A leg in two parts has its levels in both together.
      const legs = want.of.includes('lower-leg') ? want.of.flatMap((role) => LEVELS[role]) : undefined;
      for (const role of want.of)
        expect(legs ?? LEVELS[role], `${entry.id} ${cause.id} ${role}`).toEqual(
          expect.arrayContaining([...levelsOf(want)]),
        );
    }
  });

  it('goes from the upper level to the lower one', () => {
    for (const [entry, cause, want] of wants) {
      if (want.kind !== 'length') continue;
      const levels = LEVELS[want.of[0]!];
      expect(levels.indexOf(want.from), `${entry.id} ${cause.id}`).toBeLessThan(levels.indexOf(want.to));
    }
  });

  it('is nothing where a wedge runs out to nothing: that is no width or length of a whole piece', () => {
    const wedges = causes.filter(([, { change }]) => /to nothing at|wedge/.test(change));
    expect(wedges.length).toBeGreaterThan(8);
    for (const [entry, cause] of wedges) {
      // The chest is wider by the whole amount; only above it the panel runs out.
      if (entry.id === 'chest-strain') continue;
      expect(cause.wants, `${entry.id} ${cause.id}`).toEqual([]);
    }
  });

  it('is half or whole of what was measured, never nothing', () => {
    for (const [entry, cause, want] of wants) {
      if (want.kind === 'add') continue;
      expect([0.5, 1], `${entry.id} ${cause.id}`).toContain(Math.abs(want.by));
    }
  });

  it('has an amount to be reckoned from, or leaves the amount open', () => {
    for (const [entry, cause, want] of wants) {
      if (want.kind === 'add' || want.bound === 'some') continue;
      expect(entry.asks, `${entry.id} ${cause.id}`).toBeDefined();
    }
  });

  it('goes the way that its words say', () => {
    const up =
      /wider|widen|longer|lengthen|let .* out|let .* down|spread|raise|between|what the (back|front) gives up/i;
    const down =
      /narrow|shorter|shorten|\btake\b|\blap\b|\bfold\b|lower|deeper|gives? up|armhole (anew|further in)/i;
    const wrong = wants.flatMap(([entry, cause, want]) =>
      want.kind === 'add' || (want.by > 0 ? up : down).test(cause.change)
        ? []
        : [`${entry.id} ${cause.id} ${want.by}: ${cause.change}`],
    );
    expect(wrong).toEqual([]);
  });

  it('says what it sews in by steps that can be done', () => {
    const added = wants.flatMap(([, , want]) => (want.kind === 'add' ? [want] : []));
    expect(added.length).toBeGreaterThan(5);
    for (const { name, steps, on } of added) {
      expect(on.length, name).toBeGreaterThan(0);
      expect(steps.length, name).toBeGreaterThan(0);
      for (const { say, minutes } of steps) {
        expect(say, name).toMatch(/^[A-Z][^.!]{10,120}$/);
        expect(minutes).toBeGreaterThan(0);
      }
    }
  });

  it('leaves the amount open where another thing than the amount is measured', () => {
    for (const [{ id }, cause] of causes) {
      if (!/\bnot (the|what)\b/.test(cause.measured)) continue;
      for (const want of cause.wants)
        expect(want.kind === 'add' ? 'some' : want.bound, `${id} ${cause.id}`).toBe('some');
    }
  });

  it('is halved where a pinch or a gap lies over both sides', () => {
    const by = (entry: string, cause: string) =>
      entryCalled(entry)
        ?.causes.find(({ id }) => id === cause)
        ?.wants.map((want) => (want.kind === 'add' ? 0 : want.by));
    expect(by('collar-tight', 'short-collar')).toEqual([0.5]);
    expect(by('band-gapes', 'narrow-front')).toEqual([0.5]);
    expect(by('leg-waist-slips', 'wide-waist')).toEqual([-0.5]);
    for (const [{ id }, cause] of causes) {
      if (!/half of it for each (side|leg)/.test(cause.measured)) continue;
      for (const want of cause.wants)
        if (want.kind === 'width') expect(Math.abs(want.by), `${id} ${cause.id}`).toBe(0.5);
    }
    for (const [{ id }, cause] of causes) {
      if (!/on one side|round one (thigh|calf|knee|arm)|at one side/.test(cause.measured)) continue;
      for (const want of cause.wants)
        if (want.kind === 'width') expect(Math.abs(want.by), `${id} ${cause.id}`).toBe(1);
    }
  });
});

describe('the checks', () => {
  it('are short, unique and begin with how it is worn', () => {
    expect(CHECKS[0]?.id).toBe('as-worn');
    expect(CHECKS.length).toBeGreaterThanOrEqual(10);
    expect(new Set(CHECKS.map(({ id }) => id)).size).toBe(CHECKS.length);
    for (const { id, say } of CHECKS) expect(say, id).toMatch(/^[A-Z].{10,108}[^.!]$/);
  });
});
