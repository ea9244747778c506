import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import harbourFile from '../../demo-data/harbour-clockmaker.json' with { type: 'json' };
import type { Cures } from '../../src/fitting/cure-types.ts';
import type { Observation } from '../../src/fitting/observation.ts';
import { inches } from '../../src/length/length.ts';
import { readLength } from '../../src/length/reading.ts';
import { fresh, runningOrder } from '../../src/order/running.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { acceptCure, ownPieces } from '../../src/screens/try-on/cure-accept.ts';
import { CureBody } from '../../src/screens/try-on/cure-page.tsx';
import type { Act } from '../../src/store/deed.ts';
import { madeCure, madeMeans, nothingToBuy, surplus } from './cure-made.ts';
import { clearDesks, desk } from './describe/desk.ts';

afterEach(() => {
  cleanup();
  clearDesks();
});

const read = readOutfit(harbourFile);
if (!read.ok) throw new Error(read.error.map((one) => one.wrong).join('; '));
const outfit = read.value;
const order = runningOrder(outfit, fresh);
if (!order.ok) throw new Error(order.error.say);
const { sequence } = order.value;
const upToTryOn = sequence.slice(
  0,
  sequence.findIndex((step) => step.startsWith('shirt/try-shirt')),
);
const done = upToTryOn.map((step): Act => ({ kind: 'step-done', step }));
const seen: Act = { kind: 'seen', garment: 'shirt', entry: surplus.id, side: 'both', amount: 15_875_000 };

/** What is found: a cure that meets all that was seen, and another that costs an hour more. */
const found = (observations: readonly Observation[], id: string): Cures => {
  const taken = observations.map((one) => ({ observation: one.id, cause: 'front-narrow' }));
  return {
    best: { ...madeCure(outfit, id), taken },
    other: { ...madeCure(outfit, id, 'side-front', 260), taken },
    unmet: [],
    left: [],
  };
};
const means = madeMeans((_outfit, _garment, _running, observations, at) => found(observations, at.id));

async function shown(cures = means, ...acts: readonly Act[]) {
  const one = desk(outfit, ...done, ...(acts.length > 0 ? acts : [seen]));
  render(<CureBody session={one.session} garment="shirt" means={cures} />);
  await waitFor(() => expect(part('cure')?.dataset.state).not.toBe('reckoning'));
  return one;
}
const part = (name: string): HTMLElement | null => document.querySelector(`[data-part="${name}"]`);
const words = (name: string): string => part(name)?.textContent?.replaceAll(/\s+/g, ' ') ?? '';

describe('what can be done', () => {
  test('is reckoned after the page is drawn, from the open notes and what is done', async () => {
    const cure = vi.fn(means.cure);
    const { session } = desk(outfit, ...done, seen, { ...seen, garment: 'hose' });
    render(
      <CureBody
        session={session}
        garment="shirt"
        means={{ ...means, cure, own: () => new Map([['a', 3]]) }}
      />,
    );
    expect(screen.getByRole('status').textContent).toContain('Reckoning');
    expect(cure).not.toHaveBeenCalled();
    await waitFor(() => expect(cure).toHaveBeenCalledTimes(1));
    const [, garment, , observations, at] = cure.mock.calls[0]!;
    expect(garment).toBe('shirt');
    expect(observations).toEqual([
      {
        id: session.progress.value.seen[0]!.deed,
        garment: 'shirt',
        entry: surplus.id,
        side: 'both',
        amount: 15_875_000,
        out: [],
      },
    ]);
    expect([...at.done]).toEqual(upToTryOn);
    expect(at.own).toEqual(new Map([['a', 3]]));
    expect(at.id).toMatch(/^[A-Za-z0-9-]+$/);
    expect(at.marking).toEqual({ unit: 'in', per: 16 });
  });

  test('says what changes in large figures, the same amount once', async () => {
    await shown();
    expect(words('cure-changes')).toContain('Centre front: cut again');
    expect(words('cure-changes')).toContain('left and right, each');
    const figures = [...part('cure-changes')!.querySelectorAll('.cure-amount')];
    expect(figures.map((one) => one.querySelector('.unseen')?.textContent)).toEqual(['5/8 in', '1/4 in']);
    expect(figures.map((one) => one.lastElementChild?.textContent)).toEqual([
      'wider at the chest and waist',
      'wider at the hem',
    ]);
  });

  test('says why, with the test to make first, unless it was made', async () => {
    await shown();
    expect(words('cure-why')).toMatch(/Unpin the front edge and let it stand open: the surplus goes\./);
    expect(words('cure-why')).toContain('It is taken that the centre fronts are too narrow.');
    expect(part('cure-why')!.querySelector('a')!.getAttribute('href')).toMatch(/\/kept\/[^/]+\/cure$/);
    cleanup();
    await shown(means, { ...seen, side: 'left', sure: 'front-narrow' } as Act);
    expect(words('cure-why')).toContain('(left side)');
    expect(words('cure-why')).toContain('Your test has shown it.');
    expect(words('cure-why')).not.toContain('Unpin the front edge');
  });

  test('says what it costs: time, cloth, thread, beads; what is opened, forced and stays', async () => {
    await shown();
    expect(words('cure-cost')).toContain('3 h 20 min');
    expect(words('cure-cost')).toContain('50 min to undo and cut, 2 h 30 min to do again');
    expect(words('cure-supplies')).toMatch(/7\/8 yd of .+ for Centre front/);
    expect(words('cure-supplies')).toContain('about 12 yd of thread');
    expect(words('cure-supplies')).toContain('48 × bugle beads');
    expect(words('cure-opened')).toContain('Panel seam: only along Centre front (panel), 17 in');
    expect(words('cure-opened')).toContain('Shirt hem: only a little, where Panel seam meets it, 2 in');
    expect(words('cure-opened')).toContain('Neck seam: all of it, 8 in');
    expect(words('cure-forced')).toContain('Centre front: its buttonholes are slit');
    expect(words('cure-stays')).toContain('Shoulder frill stays basted to Side front');
    expect(words('cure-stays')).toContain('Side back, Back, Shoulder frill');
    expect(words('cure-steps')).toContain('All 3 steps: 2 to undo and cut, 1 to do again');
    expect(words('cure-steps')).toContain(', only along the centre front 2 h 30 min');
  });

  test('shows each changed piece before and after, and says it in a sentence', async () => {
    await shown();
    const drawn = part('before-after')!;
    expect(drawn.querySelector('svg')!.getAttribute('aria-label')).toBe(
      'Centre front before and after, drawn to scale',
    );
    expect([...drawn.querySelectorAll('.amount')].map((one) => one.textContent)).toEqual([
      '5/8 in wider',
      '5/8 in wider',
      '1/4 in wider',
    ]);
    const said = [...drawn.querySelectorAll('figcaption p')].map((one) => one.textContent);
    expect(said[0]).toBe('Centre front, left and right, each:');
    const sizes = /^5\/8 in wider at the chest: (.+ in) wide becomes (.+ in)\.$/.exec(said[1]!);
    const [was, is] = sizes!.slice(1).map((text) => readLength(text, 'in'));
    expect(was!.ok && is!.ok && is!.value - was!.value).toBe(inches(5, 8));
    expect(said[3]).toContain('1/4 in wider at the hem: ');
  });

  test('what is sewn in besides is named and counted', async () => {
    const step = {
      say: 'Sew it in',
      station: 'hand',
      minutes: 16,
      rest: 0,
      final: false,
      wets: false,
    } as const;
    const work = {
      kind: 'own',
      id: 'strip',
      name: 'Net strip',
      on: 'side-front',
      with: [],
      when: 'late',
      steps: [step],
    } as const;
    await shown(
      madeMeans((_outfit, _garment, _running, observations, at) => {
        const { best } = found(observations, at.id);
        return { best: { ...best!, adds: [{ garment: 'shirt', work }], minutes: 216 }, unmet: [], left: [] };
      }),
    );
    expect(words('cure-changes')).toContain('Sewn in besides: Net strip (Side front)');
    expect(words('cure-cost')).toContain('3 h 36 min');
    expect(words('cure-cost')).toContain('2 h 30 min to do again, 16 min to sew in besides');
  });

  test('costs nothing where nothing is cut yet, and says so', async () => {
    const free = madeCure(outfit, 'r');
    const nothing = {
      ...free,
      minutes: 0,
      undoing: {
        ...free.undoing,
        opened: [],
        forced: [],
        stays: [],
        rework: { ...free.undoing.rework, undo: [], again: [] },
        minutes: { undo: 0, again: 0, total: 0 },
      },
    };
    await shown({
      ...madeMeans(() => ({ best: nothing, unmet: [], left: [] })),
      supplies: () => nothingToBuy,
    });
    expect(words('costs-nothing')).toBe('Nothing needs undoing: it is not cut yet.');
    expect(words('cure-changes')).toContain('changed before it is cut');
    expect(words('cure-why')).toContain('Make sure before you change it');
    expect(words('pad')).toContain('Change the pattern');
    expect(part('cure-supplies')).toBeNull();
    expect(part('cure-compare')).toBeNull();
  });

  test('says what cannot be met and what was left out, with a way to say more', async () => {
    const { session } = await shown(
      madeMeans((_outfit, _garment, _running, [one, two, three], at) => ({
        ...found([one!], at.id),
        unmet: [{ observation: two!.id, why: 'the allowance is too small' }],
        left: [{ observation: three!.id, why: 'how much was not measured' }],
      })),
      seen,
      { kind: 'seen', garment: 'shirt', entry: 'from-tomorrow', side: 'both', words: 'It itches' },
      { ...seen, side: 'right' } as Act,
    );
    expect(words('cure-unmet')).toContain('It itchesthe allowance is too small');
    expect(words('cure-left')).toContain('Surplus at the upper side (right side)how much was not measured');
    const [, , left] = session.progress.value.seen;
    expect(part('cure-left')!.querySelector('a')!.getAttribute('href')).toBe(
      `#/try/${outfit.id}/shirt/kept/${left!.deed}/cure`,
    );
  });

  test('the runner-up stands beside the best with what it costs more, and can be chosen', async () => {
    const { acts, session } = await shown();
    expect(words('cure-compare')).toContain('4 h 20 min, 1 h more');
    const [best, other] = within(part('cure-compare')!).getAllByRole('button');
    expect(best!.getAttribute('aria-pressed')).toBe('true');
    fireEvent.click(other!);
    expect(other!.getAttribute('aria-pressed')).toBe('true');
    expect(words('cure-changes')).toContain('Side front: cut again');
    fireEvent.click(part('pad')!);
    await session.settled();
    expect(JSON.stringify(acts()[0])).toContain('/pieces/1/outline');
  });
});

describe('empty pages', () => {
  test('nothing noted: the way to the try-on', async () => {
    await shown(means, { kind: 'note', step: 'shirt', text: 'x' });
    expect(part('cure')!.dataset.state).toBe('nothing-noted');
    expect(screen.getByRole('link', { name: 'What do you see?' }).getAttribute('href')).toBe(
      `#/try/${outfit.id}/shirt`,
    );
  });

  test('nothing can be reckoned: why, and no pad', async () => {
    await shown(
      madeMeans((_outfit, _garment, _running, [one]) => ({
        unmet: [],
        left: [{ observation: one!.id, why: 'no change of a piece would help' }],
      })),
    );
    expect(part('cure')!.dataset.state).toBe('none');
    expect(words('cure-left')).toContain('no change of a piece would help');
    expect(part('pad')).toBeNull();
  });

  test('a reckoning that fails leaves the page and the notes', async () => {
    const { session } = await shown(
      madeMeans(() => {
        throw new Error('a slip');
      }),
    );
    expect(screen.getByRole('alert').textContent).toContain('could not be reckoned');
    expect(session.progress.value.seen).toHaveLength(1);
  });

  test('a garment that is not there', () => {
    const { session } = desk(outfit);
    render(<CureBody session={session} garment="hat" means={means} />);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('This garment is not in the outfit');
  });
});

describe('accepting', () => {
  test('is one deed: outline, rework and the notes it meets; undo takes all of it back', async () => {
    const { session, acts, outfit: now } = await shown();
    const [note] = session.progress.value.seen;
    fireEvent.click(part('pad')!);
    await session.settled();
    const [deed, ...rest] = acts();
    expect(rest.every(({ kind }) => kind === 'step-opened')).toBe(true);
    if (deed?.kind !== 'reworked') throw new Error(deed?.kind);
    expect(deed.say).toBe('Centre front 5/8 in wider');
    expect(deed.cures).toEqual([note!.deed]);
    expect(deed.rework.undo).toHaveLength(2);
    expect(
      deed.changes.every(
        ({ at, was, now: is }) => was === is || at.startsWith('/garments/0/pieces/0/outline'),
      ),
    ).toBe(true);
    const made = madeCure(outfit, 'r').after;
    expect(now().garments[0]!.pieces[0]).toEqual(made.garments[0]!.pieces[0]);
    expect(session.progress.value.seen[0]!.state).toBe('cured');
    expect(session.progress.value.done).not.toContain('shirt/panel/stitch');

    await waitFor(() => expect(part('cure-accepted')).not.toBeNull());
    expect(document.activeElement?.textContent).toBe('Put on the cards');
    fireEvent.click(part('undo')!);
    await session.settled();
    expect(now()).toEqual(outfit);
    expect(session.progress.value.seen[0]!.state).toBe('open');
    expect(session.progress.value.done).toEqual(upToTryOn);
    await waitFor(() => expect(part('cure')?.dataset.state).toBe('found'));
  });

  test('the first card to undo comes first at the bench', async () => {
    const { session } = await shown();
    fireEvent.click(part('pad')!);
    await session.settled();
    const { id } = session.progress.value.reworks[0]!;
    const first = `shirt/panel/open-${id}`;
    expect(session.running.value!.steps.has(first)).toBe(true);
    expect(session.step.value).toBe(first);
    await waitFor(() => expect(words('cure-first')).toContain('Open the panel seam'));
    expect(part('to-first')!.getAttribute('href')).toBe(`#/bench/${outfit.id}`);
  });

  test('a change that could not be read back is refused with words and writes nothing', async () => {
    const { session, acts } = await shown(
      madeMeans((_outfit, _garment, _running, observations, at) => {
        const cures = found(observations, at.id);
        const after = {
          ...outfit,
          garments: outfit.garments.map((one) => ({ ...one, pieces: one.pieces.slice(1) })),
        };
        return { ...cures, best: { ...cures.best!, after } };
      }),
    );
    fireEvent.click(part('pad')!);
    await session.settled();
    expect(acts()).toEqual([]);
    expect(part('problem')!.textContent!.length).toBeGreaterThan(20);
    expect(part('cure')!.dataset.state).toBe('found');
  });

  test('what is not in the ledger yet is waited for', async () => {
    const { session, acts } = desk(outfit, ...done);
    render(<CureBody session={session} garment="shirt" means={means} />);
    session.act(seen);
    await waitFor(() => expect(part('cure')?.dataset.state).toBe('found'));
    await session.settled();
    await waitFor(() => expect(part('cure')?.dataset.state).toBe('found'));
    fireEvent.click(part('pad')!);
    await session.settled();
    const reworked = acts().find((act) => act.kind === 'reworked');
    expect(reworked?.kind === 'reworked' && reworked.cures).toEqual([session.progress.value.seen[0]!.deed]);
    expect(session.progress.value.seen[0]!.deed).not.toContain('~');
  });

  test('a note without its name in the ledger is not cured yet', () => {
    const { session, acts } = desk(outfit, ...done, seen);
    const note = { ...session.progress.value.seen[0]!, deed: '~-1' as const };
    const cure = { ...madeCure(outfit, 'r'), taken: [{ observation: note.deed, cause: 'front-narrow' }] };
    expect(acceptCure(session, cure, [note])).toContain('still being kept');
    expect(acts()).toEqual([]);
  });

  test('a changed piece of a ready-made unit is the maker’s own from now on', () => {
    const unit = { id: 'body', name: 'Body', unit: 'princess-front', entries: {}, at: {}, cloths: {} };
    const [shirt, ...others] = outfit.garments;
    const units = [{ ...unit, brought: ['centre-front', 'panel'], own: ['panel'] }];
    const after = ownPieces(
      { ...outfit, garments: [{ ...shirt!, units }, ...others] },
      madeCure(outfit, 'r'),
    );
    expect(after.garments[0]!.units[0]!.own).toEqual(['panel', 'centre-front']);
    expect(ownPieces(after, madeCure(outfit, 'r'))).toEqual(after);
  });

  test('what is still open can be gone on with', async () => {
    const { session } = await shown(
      madeMeans((_outfit, _garment, _running, observations, at) => found(observations.slice(0, 1), at.id)),
      seen,
      { ...seen, side: 'left' } as Act,
    );
    fireEvent.click(part('pad')!);
    await session.settled();
    await waitFor(() => expect(part('cure-accepted')).not.toBeNull());
    fireEvent.click(screen.getByRole('button', { name: 'One thing is still open' }));
    await waitFor(() => expect(part('cure')?.dataset.state).toBe('found'));
    const [first] = session.progress.value.reworks;
    fireEvent.click(part('pad')!);
    await session.settled();
    expect(session.progress.value.reworks[1]?.id).not.toBe(first!.id);
  });
});
