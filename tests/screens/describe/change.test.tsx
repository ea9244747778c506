import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { removePart } from '../../../src/outfit/changing/parts.ts';
import { ask, asked, leave, problem } from '../../../src/screens/describe/change.ts';
import { EffectSheet } from '../../../src/screens/describe/effect-sheet.tsx';
import { UndoBar } from '../../../src/screens/describe/undo-bar.tsx';
import { clearDesks, desk, empty, shirt } from './desk.ts';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const undo = (): HTMLElement | null => document.querySelector('[data-part="undo"]');

describe('changing the description', () => {
  test('is one deed, said on the way back, and one touch takes it back exactly', async () => {
    const { session, acts, outfit } = desk(empty);
    const was = session.progress.value.description;
    render(<UndoBar session={session} />);
    expect(undo()).toBeNull();
    let written = 0;
    ask(session, { ...empty, name: 'The lamp bearer', about: 'For the parade' }, 'renamed it', () => {
      written += 1;
    });
    await session.settled();
    expect(written).toBe(1);
    expect(acts()).toHaveLength(1);
    expect(acts()[0]).toMatchObject({ kind: 'redescribed', say: 'renamed it' });
    expect(outfit()).toMatchObject({ ...empty, name: 'The lamp bearer', about: 'For the parade' });
    expect(undo()!.textContent).toBe('Undo: renamed it');
    fireEvent.click(undo()!);
    await session.settled();
    expect(session.progress.value.description).toEqual(was);
    expect(undo()).toBeNull();
  });

  test('that came with a cure is taken back by the name of the cure', async () => {
    const rework = { id: 'r1', say: 'Left front 5/8 in wider', undo: [], again: [] };
    const { session } = desk(shirt);
    render(<UndoBar session={session} />);
    session.act({ kind: 'reworked', say: rework.say, changes: [], cures: [], rework });
    await session.settled();
    expect(undo()!.textContent).toBe('Undo: the cure: left front');
    fireEvent.click(undo()!);
    await session.settled();
    expect(session.progress.value.reworks).toEqual([]);
  });

  test('writes nothing where nothing differs, and goes on all the same', async () => {
    const { session, acts } = desk(empty);
    let went = false;
    ask(session, { ...empty }, 'did nothing', () => {
      went = true;
    });
    await session.settled();
    expect(went).toBe(true);
    expect(acts()).toEqual([]);
  });

  test('refuses in words what could not be read back, and writes nothing', async () => {
    const { session, acts } = desk(empty);
    render(<UndoBar session={session} />);
    let went = false;
    ask(session, { ...empty, event: { name: 'A parade', date: '2027-02-31' } }, 'changed the day', () => {
      went = true;
    });
    await session.settled();
    expect(went).toBe(false);
    expect(acts()).toEqual([]);
    expect((await screen.findByRole('alert')).textContent).toContain('not a day of the calendar');
    // The next change that is right takes the words away.
    ask(session, { ...empty, name: 'Another' }, 'renamed it');
    expect(problem.value).toBe('');
  });

  test('does not offer to take back what was done at the bench', () => {
    const { session } = desk(shirt);
    render(<UndoBar session={session} />);
    session.done();
    expect(session.progress.value.done).toHaveLength(1);
    expect(undo()).toBeNull();
  });
});

describe('once sewing has begun', () => {
  const [garment, ...others] = shirt.garments;
  const without = {
    ...shirt,
    garments: [
      { ...garment!, works: garment!.works.filter(({ kind }) => kind !== 'buttonholes') },
      ...others,
    ],
  };

  test('what a change touches is shown first; left, it changes nothing', async () => {
    const { session, acts } = desk(shirt, { kind: 'step-done', step: desk(shirt).session.step.value! });
    render(<EffectSheet session={session} />);
    ask(session, without, 'took out the buttonholes');
    await screen.findByText('Sewing has begun');
    expect(document.querySelector('[data-part="effect"]')!.textContent).toContain('No longer to be done');
    expect(document.querySelector('[data-part="touches-done"]')).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Leave it as it was', hidden: true }));
    await session.settled();
    expect(asked.value).toBeUndefined();
    expect(acts()).toEqual([]);
  });

  test('accepted, it is written, and what was done stays done', async () => {
    const { session, acts, outfit } = desk(shirt, {
      kind: 'step-done',
      step: desk(shirt).session.step.value!,
    });
    render(<EffectSheet session={session} />);
    const done = session.progress.value.done;
    ask(session, without, 'took out the buttonholes');
    await screen.findByText('Sewing has begun');
    fireEvent.click(screen.getByRole('button', { name: 'Change it so', hidden: true }));
    await session.settled();
    expect(acts().map(({ kind }) => kind)).toEqual(['redescribed']);
    expect(outfit().garments[0]!.works.some(({ kind }) => kind === 'buttonholes')).toBe(false);
    expect(session.progress.value.done).toEqual(done);
  });

  test('a change that touches no step is written at once: another name, more words', async () => {
    const { session, acts, outfit } = desk(shirt, {
      kind: 'step-done',
      step: desk(shirt).session.step.value!,
    });
    ask(session, { ...shirt, about: 'For the lamp dance' }, 'changed what the outfit is');
    const named = {
      ...shirt,
      garments: shirt.garments.map((one) => ({
        ...one,
        pieces: one.pieces.map((piece) => (piece.id === 'front' ? { ...piece, name: 'Fore part' } : piece)),
      })),
    };
    ask(session, named, 'changed the front');
    await session.settled();
    expect(asked.value).toBeUndefined();
    expect(acts().map(({ kind }) => kind)).toEqual(['redescribed', 'redescribed']);
    expect(outfit().garments[0]!.pieces[0]!.name).toBe('Fore part');
  });

  test('what no order obeys is refused by the names of the parts that would wait for each other', () => {
    const { session, acts } = desk(shirt);
    const torn = removePart(shirt, 'shirt', 'shoulder').outfit;
    ask(session, torn, 'took out the shoulder seam');
    expect(problem.value).toContain('could not be sewn in any order');
    expect(problem.value).toContain('“Armhole seam”');
    expect(problem.value).toContain('“Underarm seam”');
    expect(problem.value).toMatch(/Change or take out one of them first\.$/);
    expect(problem.value).not.toMatch(/[(]|ring/);
    expect(acts()).toEqual([]);
  });

  test('says what of the work in hand would have to be done again', async () => {
    const works = garment!.works.filter(({ kind }) => kind === 'buttonholes');
    const step = [...desk(shirt).session.running.value!.steps.values()].find(
      ({ of }) => of.kind === 'work' && of.id === works[0]!.id,
    )!;
    const { session } = desk(shirt, { kind: 'step-done', step: step.id });
    render(<EffectSheet session={session} />);
    ask(session, without, 'took out the buttonholes');
    await screen.findByText('Sewing has begun');
    expect(document.querySelector('[data-part="touches-done"]')!.textContent).toContain(
      'no longer be wanted',
    );
    expect(document.querySelector('[data-part="effect"]')!.textContent).toContain(step.say);
  });
});
