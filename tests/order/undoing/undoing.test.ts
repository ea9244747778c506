import { describe, expect, it } from 'vitest';
import { cardFor } from '../../../src/order/card.ts';
import { prepareUndoing, undoing, undoingMinutes } from '../../../src/order/undoing/undoing.ts';
import { order } from '../make.ts';
import { againIn, anew, demo, moved, prepared, upTo } from './demo.ts';

const clockmaker = prepared(demo('harbour-clockmaker'));
const all = clockmaker.running.sequence;
const named = { id: 'r1', say: 'Made to fit' };
const undo = (alterations: Parameters<typeof undoing>[1], done: readonly string[] = all) =>
  undoing(clockmaker.prepared, alterations, { done, ...named });

describe('centre fronts too narrow, found with the sides sewn', () => {
  const done = upTo(clockmaker.running, 'shirt/side/press');
  const wider = anew('shirt', 'centre-front', { say: '5/8 in wider at the chest' });
  const found = undo([wider], done);

  it('cuts the centre fronts alone again', () => {
    expect(found.forced).toEqual([]);
    const cut = found.rework.undo.filter(({ action }) => action === 'cut-anew');
    expect(cut.map(({ say, pieces }) => [say, pieces])).toEqual([
      ['Cut the centre fronts again, 5/8 in wider at the chest', ['centre-front']],
    ]);
  });

  it('opens the seams that hold them as far as they go, what was sewn last first', () => {
    expect(found.rework.undo.map(({ say }) => say)).toEqual([
      'Unpick the panel seam along the centre front',
      'Unpick the neck seam along the centre front',
      'Unpick the centre shoulder seam',
      'Cut the centre fronts again, 5/8 in wider at the chest',
      'Mark seam lines and notches on the centre fronts',
    ]);
    expect(found.opened.map(({ id, extent }) => [id, extent.kind])).toEqual([
      ['panel', 'along'],
      ['neck', 'along'],
      ['centre-shoulder', 'whole'],
    ]);
  });

  it('leaves the back, the side panels and the frills as they are', () => {
    const again = found.rework.again.map(({ step }) => step);
    for (const work of [
      'back-tucks',
      'front-armhole-stay',
      'back-armhole-stay',
      'frill-binding',
      'frill-ends',
      'frill-gathers',
      'outline-back',
      'side-shoulder',
      'side',
      'collar-layers',
      'cut-lawn',
    ])
      expect(again.filter((step) => step.startsWith(`shirt/${work}/`), work).map(String)).toEqual([]);
    expect(found.stays).toEqual([{ join: 'panel', trim: 'frill', on: ['back'] }]);
  });

  it('works tucks and bands again, and bastes the frill to the new front only', () => {
    const again = againIn(found);
    for (const step of [
      'front-tucks/mark',
      'front-tucks/press',
      'button-band/stitch',
      'outline-centre-front/cut',
      'band-top/own-3',
    ])
      expect(again).toContain(step);
    expect(again).toContain('panel/baste-trim, only along the centre front');
    expect(again).toContain('panel/stitch, only along the centre front');
    expect(again).toContain('centre-shoulder/stitch');
    expect(again).toContain('try-shirt/fit');
  });

  it('says so on the cards, and begins with the unpicking', () => {
    const left = new Set(found.rework.again.map(({ step }) => step));
    const running = order(clockmaker.outfit, {
      done: done.filter((step) => !left.has(step)),
      reworks: [found.rework],
    });
    const first = 'shirt/panel/open-r1';
    expect(running.ready.has(first)).toBe(true);
    const card = cardFor(clockmaker.outfit, running, first);
    expect(card?.drawing.map(({ name, picked }) => [name, picked])).toContainEqual([
      'Centre front',
      ['panel'],
    ]);
    expect(card?.cautions.join(' ')).toContain('seam ripper');
    const cut = cardFor(clockmaker.outfit, running, 'shirt/cut-lawn/cut-anew-r1');
    expect(cut?.say).toBe('Cut the centre fronts again, 5/8 in wider at the chest');
    expect(cut?.settings).toEqual([{ name: 'seam allowance', figure: '1/2 in' }]);
    expect(cut?.cautions.join(' ')).toContain('cut away from yourself');
    expect(cut?.readout).toMatchObject({ kind: 'ticks', items: [{ name: 'left' }, { name: 'right' }] });
    expect(running.steps.get('shirt/panel/stitch')?.say).toMatch(/, only along the centre front$/);
    expect(running.ready.has('shirt/front-tucks/mark')).toBe(false);
  });
});

describe('steps that cannot be undone', () => {
  it('lets slit holes through two layers force the other layer', () => {
    const found = undo([anew('sleeves', 'cuff-outer')]);
    expect(found.forced).toEqual([
      {
        piece: 'cuff-inner',
        because: 'The holes of the cuff buttons are slit, and cannot be closed or moved',
      },
    ]);
    expect(found.alterations.map(({ piece, how }) => [piece, how])).toEqual([
      ['cuff-outer', 'anew'],
      ['cuff-inner', 'anew'],
    ]);
    const before = undo(
      [anew('sleeves', 'cuff-outer')],
      upTo(clockmaker.running, 'sleeves/cuff-buttons/stitch'),
    );
    expect(before.forced).toEqual([]);
  });

  it('lets a collar that is clipped force its other layer, and nothing beyond the neck', () => {
    const found = undo([anew('shirt', 'collar-upper')]);
    expect(found.forced.map(({ piece }) => piece)).toEqual(['collar-under']);
    expect(found.opened.map(({ id }) => id)).toEqual(['neck', 'collar-layers']);
    const before = undo(
      [anew('shirt', 'collar-upper')],
      upTo(clockmaker.running, 'shirt/collar-layers/stitch'),
    );
    expect(before.forced).toEqual([]);
  });

  it('cuts a piece anew where its clipped edge should have been moved', () => {
    const late = undo([moved('shirt', 'back', 'neck')]);
    expect(late.alterations).toMatchObject([{ piece: 'back', how: 'anew' }]);
    expect(late.forced.map(({ piece }) => piece)).toEqual(['back']);
    const early = undo([moved('shirt', 'back', 'neck')], upTo(clockmaker.running, 'shirt/neck/bind'));
    expect(early.forced).toEqual([]);
    expect(early.rework.undo.some(({ action }) => action === 'cut-anew')).toBe(false);
  });
});

describe('how far a seam is opened', () => {
  it('opens a hem only where it crosses a seam that is taken in', () => {
    const found = undo([moved('shirt', 'side-front', 'side')]);
    expect(found.opened.map(({ id, extent }) => [id, extent])).toEqual([
      ['armhole-hem', { kind: 'crossing', joins: ['side'] }],
      ['shirt-hem', { kind: 'crossing', joins: ['side'] }],
      ['side', { kind: 'whole' }],
    ]);
    expect(found.rework.undo.map(({ say }) => say)).toContain(
      'Open the shirt hem where it crosses the side seam',
    );
    expect(found.rework.undo.at(-1)).toMatchObject({ action: 'lines-anew', edges: ['side-front.side'] });
  });

  it('takes off what is laid over a seam, and gathers it anew', () => {
    const found = undo([anew('hose', 'thigh')]);
    expect(found.opened.map(({ id }) => id)).toContain('knee-frill-seam');
    expect(againIn(found)).toContain('knee-gathers/rows');
    expect(againIn(found)).not.toContain('knee-gathers/mark');
  });

  it('does one side only where only that is altered', () => {
    const both = undo([anew('sleeves', 'sleeve')]);
    const left = undo([anew('sleeves', 'sleeve', { side: 'left' })]);
    expect(left.rework.undo.map(({ say }) => say)).toContain('Cut the left sleeve again');
    expect(againIn(left)).toContain('sleeve-tucks/stitch-1, only on the left');
    const beads = (u: typeof both) =>
      u.rework.again.find(({ step }) => step === 'sleeves/sleeve-beads/bead')?.minutes;
    expect(beads(left)).toBe((beads(both) ?? 0) / 2);
    expect(left.rework.undo.every(({ times }) => times === 1)).toBe(true);
  });

  it('sews over only the cover where an inner layer alone is new', () => {
    const done = upTo(clockmaker.running, 'sleeves/cuff-frill-seam/cover').filter(
      (step) => !step.startsWith('sleeves/cuff-seam'),
    );
    const again = againIn(
      undo(
        [anew('sleeves', 'cuff-inner')],
        done.filter((step) => !step.startsWith('sleeves/cuff-buttons')),
      ),
    );
    expect(again).toContain('cuff-frill-seam/cover');
    expect(again).not.toContain('cuff-frill-seam/stitch');
  });
});

describe('the cards of undoing', () => {
  it('take basting out where nothing else holds', () => {
    const early = undo([moved('shirt', 'side-front', 'side')], upTo(clockmaker.running, 'shirt/side/baste'));
    expect(early.rework.undo[0]?.say).toBe('Take the basting out of the side seam');
  });

  it('cut everything before any lines are marked', () => {
    const { rework } = undo([anew('shirt', 'centre-front'), anew('sleeves', 'sleeve')]);
    expect(rework.undo.slice(-4).map(({ action }) => action)).toEqual([
      'cut-anew',
      'cut-anew',
      'lines-anew',
      'lines-anew',
    ]);
  });

  it('are as long as the shorter side of a gathered seam', () => {
    const cuff = clockmaker.prepared.rooms.get('sleeves')?.length({ piece: 'cuff-outer', edge: 'upper' });
    const found = undo([anew('sleeves', 'cuff-outer')]).opened.find(({ id }) => id === 'cuff-seam');
    expect(found?.length).toBe(cuff);
  });
});

describe('what it costs', () => {
  it('is nothing where nothing is altered, done or known', () => {
    const empty = { forced: [], opened: [], stays: [], minutes: { undo: 0, again: 0, total: 0 } };
    for (const [alterations, done] of [
      [[], all],
      [[anew('shirt', 'centre-front')], []],
      [[anew('shirt', 'nothing'), anew('nowhere', 'centre-front')], all],
      [[moved('shirt', 'back')], all],
    ] as const) {
      const found = undo(alterations, done);
      expect(found).toMatchObject(empty);
      expect(found.rework).toEqual({ ...named, undo: [], again: [] });
    }
  });

  it('takes the maker’s own minutes first, for sewing and for unpicking', () => {
    const own = new Map([['shirt/front-tucks/stitch', 95]]);
    const slow = undoing(clockmaker.prepared, [anew('shirt', 'centre-front')], { done: all, own, ...named });
    expect(slow.rework.again.find(({ step }) => step === 'shirt/front-tucks/stitch')?.minutes).toBe(95);

    const first = undo([anew('shirt', 'centre-front')]);
    const again = order(clockmaker.outfit, { done: all, reworks: [first.rework] });
    const later = prepareUndoing(clockmaker.outfit, again);
    const [unpicked] = first.rework.undo;
    const timed = new Map([
      [`shirt/${unpicked?.of.id}/${unpicked?.action}-r1`, 3 * (unpicked?.minutes ?? 0)],
    ]);
    const at = { done: again.sequence.slice(0, again.doneCount), id: 'r2', say: '' };
    const [quick, tripled] = [undefined, timed].map(
      (own) =>
        undoing(later, [anew('shirt', 'back')], { ...at, ...(own ? { own } : {}) }).rework.undo[0]?.minutes ??
        0,
    );
    expect(tripled).toBeCloseTo(3 * (quick ?? 0), 0);
  });

  it('is the same when it is asked for without words', () => {
    for (const { pieces, id } of clockmaker.outfit.garments)
      for (const piece of pieces) {
        const asked = [anew(id, piece.id)];
        expect(undoingMinutes(clockmaker.prepared, asked, { done: all })).toBe(undo(asked).minutes.total);
      }
  });

  it('opens the rest of a seam that waits to be sewn again in part', () => {
    const first = undo([anew('shirt', 'centre-front')]);
    const waiting = new Set(first.rework.again.map(({ step }) => step));
    const left = all.filter((step) => !waiting.has(step));
    const running = order(clockmaker.outfit, { done: left, reworks: [first.rework] });
    const second = undoing(prepareUndoing(clockmaker.outfit, running), [anew('shirt', 'back')], {
      done: left,
      id: 'r2',
      say: '',
    });
    expect(second.opened.map(({ id }) => id)).toContain('panel');
    expect(second.rework.again.find(({ step }) => step === 'shirt/panel/stitch')?.minutes).toBeGreaterThan(4);
  });
});
