import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import type { Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { leave, problem } from '../../../src/screens/describe/change.ts';
import type { Session } from '../../../src/screens/session.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { clearDesks, desk, shirt } from './desk.ts';
import { PageAt, whereTo, withBlouse } from './pages.tsx';

afterEach(() => {
  cleanup();
  leave();
  problem.value = '';
  clearDesks();
});

const box = (name: string): HTMLElement =>
  document.querySelector<HTMLElement>(`[data-field="${CSS.escape(name)}"]`)!;
const control = (name: string): HTMLInputElement =>
  box(name).querySelector<HTMLInputElement>('input, textarea, select')!;
const type = (name: string, text: string, inside: ParentNode = document): void => {
  const found = inside.querySelector<HTMLElement>(
    `[data-field="${CSS.escape(name)}"] :is(input, textarea, select)`,
  )!;
  if (found.tagName === 'SELECT') fireEvent.change(found, { target: { value: text } });
  else fireEvent.input(found, { target: { value: text } });
};
const fault = (name: string): string | undefined =>
  box(name).querySelector('[data-part="fault"]')?.textContent ?? undefined;
const press = (name: string | RegExp, inside: HTMLElement = document.body): void => {
  fireEvent.click(within(inside).getByRole('button', { name }));
};
const choose = (name: string | RegExp, inside: HTMLElement = document.body): void => {
  fireEvent.click(within(inside).getByRole('radio', { name }));
};
const pick = (edge: string, inside: ParentNode = document): void => {
  fireEvent.click(inside.querySelector(`button[data-edge="${edge}"]`)!);
};
const openPiece = (piece: string, inside: ParentNode = document): void => {
  fireEvent.click(inside.querySelector(`button[data-piece="${piece}"]`)!);
};
const part = (name: string): HTMLElement => document.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
const keep = async (session: Session): Promise<void> => {
  fireEvent.click(part('keep'));
  await session.settled();
};
const show = (session: Session, at: string) => render(<PageAt session={session} at={at} />);
const only = (outfit: Outfit): Garment => outfit.garments[0]!;

describe('a piece of the maker’s own', () => {
  test('is drawn from a plain shape, put in, and its page is opened', async () => {
    const { session, outfit, acts } = desk(withBlouse);
    show(session, 'garment/blouse/piece');
    choose(/^Four sides/);
    type('upper', '6');
    type('lower', '10 1/2');
    type('high', '12');
    type('name', 'Peplum panel');
    choose(/^A pair/, box('cut'));
    expect(part('piece-picture').querySelector('svg')).not.toBeNull();
    await keep(session);
    expect(acts()).toMatchObject([{ kind: 'redescribed', say: 'put in Peplum panel' }]);
    const [piece] = only(outfit()).pieces;
    expect(piece).toMatchObject({ id: 'peplum-panel', name: 'Peplum panel', cut: 'pair', cloth: 'cotton' });
    expect(edgeLengths(piece!.outline).get('lower')).toBe(inches(21, 2));
    expect(whereTo()).toBe('garment/blouse/piece/peplum-panel');
  });

  test('says what is wrong at its field, and keeps what was typed until it is put in', async () => {
    const { session, acts } = desk(withBlouse);
    const { unmount } = show(session, 'garment/blouse/piece');
    type('wide', 'broad');
    type('name', ' ');
    expect(fault('wide')).toMatch(/broad/);
    await keep(session);
    expect(fault('name')).toMatch(/Nothing is written/);
    expect(acts()).toEqual([]);
    unmount();
    show(session, 'garment/blouse/piece');
    expect(control('wide').value).toBe('broad');
    press('Start again');
    expect(control('wide').value).toBe('12');
  });

  test('from typed corners with a fold is cut on the fold', async () => {
    const { session, outfit } = desk(withBlouse);
    show(session, 'garment/blouse/piece');
    choose(/^Corners you type/);
    type('corners', '0, 0 waist\n5, 0 side\n8, 10 hem\n0, 10 fold');
    type('name', 'Half apron');
    await keep(session);
    expect(only(outfit()).pieces[0]).toMatchObject({ cut: 'fold', id: 'half-apron' });
  });
});

describe('a piece', () => {
  const page = 'garment/shirt/piece/back';

  test('shows what is sewn at an edge that is touched, and its length', () => {
    const { session } = desk(shirt);
    show(session, page);
    pick('back.armhole');
    const panel = part('edge-panel');
    expect(panel.textContent).toMatch(/[\d/]+ mm long, sewn in a seam/);
    expect(within(panel).getAllByRole('link').length).toBeGreaterThan(0);
    // The drawing does the same as the list.
    fireEvent.click(document.querySelector('[data-touch="back.hem"]')!);
    expect(part('edge-panel').dataset.edgeOf).toBe('back.hem');
    expect(document.querySelector('button[data-edge="back.hem"]')?.getAttribute('aria-pressed')).toBe('true');
  });

  test('has an edge renamed everywhere, and refuses a name that is taken', async () => {
    const { session, outfit } = desk(shirt);
    show(session, page);
    pick('back.hem');
    type('edge-name', 'armhole');
    press('Rename it');
    expect(fault('edge-name')).toMatch(/armhole/);
    type('edge-name', 'Lower edge');
    press('Rename it');
    await session.settled();
    const names = only(outfit())
      .pieces.find(({ id }) => id === 'back')!
      .outline.edges.map(({ name }) => name);
    expect(names).toContain('lower-edge');
    expect(names).not.toContain('hem');
    expect(JSON.stringify(only(outfit()).works)).toContain('"lower-edge"');
    expect(part('edge-panel').dataset.edgeOf).toBe('back.lower-edge');
  });

  test('has a corner moved, a mark added and its allowance changed as one deed, and undo takes all of it back', async () => {
    const { session, outfit, acts } = desk(shirt);
    const was = only(outfit()).pieces.find(({ id }) => id === 'back')!;
    const corner = was.outline.edges.find(({ name }) => name === 'hem')!.name;
    show(session, page);
    type('allowance', '18');
    fireEvent.click(part('add-marks'));
    type('name', 'Pocket corner', part('piece').querySelector('[data-row="0"]')!);
    type('at.x', '40', document.querySelector('[data-row="0"]')!);
    type(`corner.${corner}.y`, '700');
    await keep(session);
    expect(problem.value).toBe('');
    expect(acts()).toHaveLength(1);
    const now = only(outfit()).pieces.find(({ id }) => id === 'back')!;
    expect(now.allowance).toBe(mm(18));
    expect(now.marks).toEqual([{ name: 'Pocket corner', at: { x: mm(40), y: mm(25) } }]);
    expect(now.outline).not.toEqual(was.outline);
    press(/^Undo/);
    await session.settled();
    expect(only(outfit()).pieces.find(({ id }) => id === 'back')).toEqual(was);
  });

  test('a corner that cannot stand there is refused at its field', async () => {
    const { session, acts } = desk(shirt);
    show(session, page);
    type('corner.hem.x', 'left');
    await keep(session);
    expect(fault('corner.hem.x')).toMatch(/left/);
    expect(acts()).toEqual([]);
  });

  test('is taken out only after what goes with it was shown', async () => {
    const { session, outfit } = desk(shirt);
    show(session, page);
    fireEvent.click(part('take-out'));
    const sheet = part('take-off');
    expect(sheet.textContent).toMatch(/go too/);
    press('Leave it in', sheet);
    expect(only(outfit()).pieces.some(({ id }) => id === 'back')).toBe(true);
    fireEvent.click(part('take-out'));
    press('Take it out', part('take-off'));
    await session.settled();
    expect(only(outfit()).pieces.some(({ id }) => id === 'back')).toBe(false);
    expect(whereTo()).toBe('garment/shirt');
  });

  test('leads to a work and to a seam on the edge that was touched', () => {
    const { session } = desk(shirt);
    const { unmount } = show(session, page);
    pick('back.hem');
    fireEvent.click(part('work-edge'));
    expect(whereTo()).toBe('garment/shirt/work');
    unmount();
    show(session, 'garment/shirt/work');
    choose(/^Stay-stitching/);
    expect(part('run').textContent).toMatch(/Back, hem/);
  });
});

describe('a ready-made piece changed by hand', () => {
  test('is the maker’s own then, and goes back to the ready-made one with one touch', async () => {
    const { session, outfit } = desk(withBlouse);
    const putting = show(session, 'garment/blouse/add/plain-front');
    press('Put it on');
    await session.settled();
    putting.unmount();
    const was = only(outfit()).pieces[0]!;
    const first = show(session, `garment/blouse/piece/${was.id}`);
    expect(part('origin').textContent).toMatch(/^Brought by Front/);
    type('allowance', '1');
    await keep(session);
    first.unmount();
    expect(only(outfit()).units[0]!.own).toEqual([was.id]);
    show(session, `garment/blouse/piece/${was.id}`);
    expect(part('origin').textContent).toMatch(/^Changed by hand, your own/);
    fireEvent.click(part('take-ready'));
    await session.settled();
    expect(only(outfit()).units[0]!.own).toEqual([]);
    expect(only(outfit()).pieces[0]).toEqual(was);
  });
});

describe('a work', () => {
  test('of the maker’s own is put on with its steps in the order in which she moved them', async () => {
    const { session, outfit } = desk(shirt);
    show(session, 'garment/shirt/work');
    choose(/^Work of your own/);
    type('name', 'Smocking');
    type('on', 'back');
    const row = (i: number): HTMLElement => document.querySelector<HTMLElement>(`[data-row="${i}"]`)!;
    type('say', 'Draw the threads up', row(0));
    fireEvent.click(part('add-steps'));
    await keep(session);
    expect(row(1).querySelector('[data-part="fault"]')?.textContent).toMatch(/Nothing is written/);
    type('say', 'Dot the cloth', row(1));
    type('station', 'mark', row(1));
    type('minutes', '45', row(1));
    press('Earlier', row(1));
    await keep(session);
    expect(problem.value).toBe('');
    const work = only(outfit()).works.find(({ id }) => id === 'smocking');
    expect(work).toMatchObject({
      kind: 'own',
      on: 'back',
      when: 'flat',
      steps: [
        { say: 'Dot the cloth', station: 'mark', minutes: 45, rest: 0, final: false, wets: false },
        { say: 'Draw the threads up', station: 'hand', minutes: 10 },
      ],
    });
    expect(whereTo()).toBe('garment/shirt');
    expect([...session.running.value!.steps.values()].some(({ say }) => say.includes('Dot the cloth'))).toBe(
      true,
    );
  });

  test('that is there is changed in the same form, and only there', async () => {
    const { session, outfit } = desk(shirt);
    const was = only(outfit()).works.find(({ kind }) => kind === 'hem')!;
    show(session, `garment/shirt/work/${was.id}`);
    expect(document.querySelector('[data-part="kind-of-work"]')?.textContent).toMatch(/^Hem/);
    type('turn', '30');
    await keep(session);
    expect(only(outfit()).works.find(({ id }) => id === was.id)).toEqual({ ...was, turn: mm(30) });
  });

  test('cannot be handed in before it is said what is done', () => {
    const { session } = desk(shirt);
    show(session, 'garment/shirt/work');
    expect(part('keep')).toBeNull();
    choose(/^Hem/);
    expect(part('keep').textContent).toBe('Put it on');
  });

  test('that does not agree with the rest is refused at the field it is about', async () => {
    const { session, acts } = desk(shirt);
    const was = shirt.garments[0]!.works.find(({ kind }) => kind === 'hem')!;
    show(session, `garment/shirt/work/${was.id}`);
    type('turn', '0');
    await keep(session);
    expect(fault('turn')).toMatch(/more than nothing/);
    expect(acts()).toEqual([]);
    expect(control('turn').value).toBe('0');
  });
});

describe('a join', () => {
  test('of two touched edges says at once whether they are equally long', async () => {
    const { session, outfit } = desk({
      ...withBlouse,
      garments: [{ ...withBlouse.garments[0]!, pieces: shirt.garments[0]!.pieces }],
      cloths: shirt.cloths,
    });
    show(session, 'garment/blouse/join');
    await keep(session);
    expect(fault('this')).toMatch(/No edge is chosen/);
    expect(box('this').contains(document.activeElement)).toBe(true);
    pick('front.side', box('this'));
    openPiece('back', box('to'));
    pick('back.hem', box('to'));
    const [side, hem] = ['front.side', 'back.hem'].map((ref) => {
      const [id, edge] = ref.split('.');
      return edgeLengths(only(outfit()).pieces.find((one) => one.id === id)!.outline).get(edge!);
    });
    expect(side).not.toBe(hem);
    expect(part('fits').querySelector('[data-within="false"]')).not.toBeNull();
    pick('back.hem', box('to'));
    pick('back.side', box('to'));
    expect(part('fits').querySelector('[data-within="false"]')).toBeNull();
    expect(part('fits').querySelector('[data-within="true"]')).not.toBeNull();
    await keep(session);
    expect(only(outfit()).joins).toMatchObject([
      {
        id: 'side-seam',
        name: 'Side seam',
        this: [{ piece: 'front', edge: 'side', other: false }],
        to: [{ piece: 'back', edge: 'side', other: false }],
        seam: 'plain',
        ring: false,
      },
    ]);
  });

  test('with a run that does not hang together is refused where it was picked', async () => {
    const { session, acts } = desk({
      ...withBlouse,
      garments: [{ ...withBlouse.garments[0]!, pieces: shirt.garments[0]!.pieces }],
      cloths: shirt.cloths,
    });
    show(session, 'garment/blouse/join');
    pick('front.side', box('this'));
    openPiece('back', box('this'));
    pick('back.neck', box('this'));
    // It is said before anything is handed in.
    expect(part('gap').textContent).toMatch(/^Front, side and Back, neck do not lie end to end/);
    openPiece('back', box('to'));
    pick('back.side', box('to'));
    await keep(session);
    expect(box('this').textContent).toMatch(/do not lie end to end/);
    expect(box('this').querySelectorAll('.fault')).toHaveLength(1);
    expect(acts()).toEqual([]);
    press('Turn the run round', box('this'));
    expect(box('this').querySelector('[data-part="run"]')?.textContent).toMatch(
      /Back, neck, then Front, side/,
    );
  });

  test('edges that a work finishes may lie anywhere', async () => {
    const { session, outfit } = desk(shirt);
    show(session, 'garment/shirt/work');
    fireEvent.click(document.querySelector<HTMLInputElement>('[data-kind="own"] input')!);
    fireEvent.input(box('name').querySelector('input')!, { target: { value: 'Overcasting' } });
    fireEvent.input(box('say').querySelector('textarea')!, { target: { value: 'Overcast them by hand' } });
    fireEvent.click(box('finishes').querySelector('summary')!);
    await waitFor(() => expect(box('finishes').querySelector('[data-piece]')).not.toBeNull());
    openPiece('front', box('finishes'));
    pick('front.side', box('finishes'));
    openPiece('back', box('finishes'));
    pick('back.neck', box('finishes'));
    expect(part('gap')).toBeNull();
    expect(box('finishes').textContent).not.toContain('Turn the run round');
    await keep(session);
    const made = outfit().garments[0]!.works.at(-1)!;
    expect(made.kind === 'own' && made.finishes?.map(({ piece, edge }) => `${piece}.${edge}`)).toEqual([
      'front.side',
      'back.neck',
    ]);
  });

  test('over seams that are there already has no gap', () => {
    const { session } = desk(shirt);
    show(session, 'garment/shirt/join/neck');
    expect(box('this').querySelector('[data-part="run"]')!.textContent).toMatch(/then/);
    expect(part('gap')).toBeNull();
  });

  test('half written is put aside when another is begun from an edge, and comes back with one touch', async () => {
    const { session } = desk(shirt);
    const begin = (edge: string): void => {
      cleanup();
      show(session, 'garment/shirt/piece/back');
      pick(edge);
      fireEvent.click(part('join-edge'));
      cleanup();
      show(session, 'garment/shirt/join');
    };
    begin('back.hem');
    expect(part('begun-before')).toBeNull();
    type('name', 'Peplum seam');
    choose(/^Bound seam/);
    begin('back.neck');
    expect(control('name').value).toBe('Neck seam');
    expect(part('run').textContent).toMatch(/Back, neck/);
    expect(part('begun-before').textContent).toMatch(/Peplum seam: Back, hem/);
    type('depth', '9');
    press('Go on with that one');
    expect(control('name').value).toBe('Peplum seam');
    expect(part('run').textContent).toMatch(/Back, hem/);
    // The other one is as safe as this one was.
    expect(part('begun-before').textContent).toMatch(/Back, neck/);
    press('Go on with that one');
    expect(control('depth').value).toBe('9');
    // The edge that it begins at, touched again, goes on with it.
    begin('back.neck');
    expect(control('depth').value).toBe('9');
    // An edge alone was no work: nothing is put aside for it.
    fireEvent.click(part('as-it-was'));
    begin('back.hem');
    begin('back.neck');
    expect(part('begun-before').textContent).toMatch(/Peplum seam/);
    press('Go on with that one');
    expect(part('begun-before')).toBeNull();
  });
});

describe('a try-on', () => {
  test('is put in with what it comes after and what to look at', async () => {
    const { session, outfit } = desk(shirt);
    const join = shirt.garments[0]!.joins[0]!;
    show(session, 'garment/shirt/try-on');
    type('words', 'The shoulders sit level');
    await keep(session);
    // Nothing is put together for it yet.
    expect(part('fault').textContent).toMatch(/nothing is put together/);
    fireEvent.click(within(box('after')).getByRole('checkbox', { name: join.name }));
    await keep(session);
    expect(only(outfit()).gates.at(-1)).toMatchObject({
      name: 'Shirt, tried on',
      after: [join.id],
      tack: [],
      checks: ['The shoulders sit level'],
    });
  });
});

test('a part that is not there any more is said to be gone', () => {
  const { session } = desk(shirt);
  for (const kind of ['piece', 'work', 'join', 'try-on']) {
    const { unmount } = show(session, `garment/shirt/${kind}/nothing`);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toMatch(/not there any more/);
    unmount();
  }
});
