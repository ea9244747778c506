import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act } from '../../src/store/deed.ts';
import { refuseUnreadable } from '../../src/store/ledger-writing.ts';
import { readDeed } from '../../src/store/read-deed.ts';
import { MOST_PHOTO, MOST_WORDS } from '../../src/store/read-fitting.ts';
import { anyFitting, deed } from './deeds.ts';

const JPEG = 'data:image/jpeg;base64,';
const seen = {
  kind: 'seen',
  garment: 'shirt',
  entry: 'surplus-under-the-arm',
  side: 'both',
  amount: 15_875_000,
  sure: 'front too narrow',
  out: ['back too wide'],
  words: '',
  photo: `${JPEG}/9j+AA==`,
};
const unpick = {
  garment: 'shirt',
  of: { kind: 'join', id: 'panel' },
  action: 'unpick',
  say: 'Unpick the panel seam',
  pieces: ['front'],
  edges: ['front.side'],
  times: 2,
  minutes: 20,
};
const rework = {
  id: 'r-1',
  say: 'Front wider',
  undo: [unpick],
  again: [{ step: 's', only: 'only along the front', minutes: 0 }],
};
const reworked = { kind: 'reworked', say: 'Front wider', changes: [], rework, cures: ['a-1'] };

const read = (act: object): string => {
  const result = readDeed(JSON.parse(JSON.stringify(deed(3, act as Act))), 'o');
  return result.ok ? 'fine' : result.error;
};
const withRework = (more: object): object => ({ ...reworked, rework: { ...rework, ...more } });
const withUndo = (more: object): object => withRework({ undo: [unpick, { ...unpick, ...more }] });

describe('what was seen at a try-on', () => {
  it('is read, with all that may be said and with as little as must be', () => {
    expect(read(seen)).toBe('fine');
    expect(read({ kind: 'seen', garment: 'shirt', entry: 'cuff-tight', side: 'left' })).toBe('fine');
    expect(read({ ...seen, words: 'x'.repeat(MOST_WORDS) })).toBe('fine');
    expect(read({ ...seen, photo: JPEG + 'A'.repeat(MOST_PHOTO - JPEG.length) })).toBe('fine');
    expect(read({ kind: 'let-be', seen: 'a-1' })).toBe('fine');
  });

  it.each([
    [{ entry: 'Surplus!' }, 'act.entry: found "Surplus!", expected small letters, digits and hyphens'],
    [{ garment: '' }, 'act.garment: found "", expected a text of 1 to 400 letters'],
    [{ side: 'front' }, 'act.side: found "front", expected "both" or "left" or "right"'],
    [{ amount: 0.5 }, 'act.amount: found 0.5, expected whole nanometres'],
    [{ amount: 10_000_000_001 }, 'act.amount: found 10000000001'],
    [{ amount: '1 in' }, 'act.amount: found "1 in"'],
    [{ sure: 7 }, 'act.sure: found 7'],
    [{ out: 'back' }, 'act.out: found "back", expected a list of 100 at most'],
    [{ out: Array(101).fill('back') }, 'act.out: found a list'],
    [{ words: 'x'.repeat(MOST_WORDS + 1) }, 'expected a text of 2000 letters at most'],
    [{ photo: JPEG + 'A'.repeat(MOST_PHOTO) }, 'expected a JPEG picture as a data URL of 240000 letters'],
    [{ photo: 'data:image/png;base64,AAAA' }, 'act.photo: found "data:image/png'],
    [{ photo: 'data:image/svg+xml,<svg/>' }, 'act.photo'],
    [{ photo: `${JPEG}AA"onerror=` }, 'act.photo'],
    [{ photo: 'https://example.org/a.jpg' }, 'act.photo'],
  ])('is refused with %j', (more, expected) => {
    expect(read({ ...seen, ...more })).toContain(expected);
    expect(() => refuseUnreadable([{ ...seen, ...more } as Act])).toThrow(/^This cannot be kept: /);
  });

  it('is refused where it is let be under no name', () => {
    expect(read({ kind: 'let-be', seen: 'x' })).toContain('act.seen: found "x", expected the name of a deed');
    expect(read({ kind: 'let-be' })).toContain('act.seen: found nothing');
  });
});

describe('a cure that was accepted', () => {
  it('is read', () => {
    expect(read(reworked)).toBe('fine');
    expect(read(withRework({ again: Array(2_000).fill(rework.again[0]) }))).toBe('fine');
    expect(() => refuseUnreadable([reworked as unknown as Act])).not.toThrow();
  });

  it.each([
    [{ ...reworked, changes: 'none' }, 'act.changes: found "none"'],
    [{ ...reworked, changes: [{ now: 1 }] }, 'act.changes: found a list'],
    [{ ...reworked, say: '' }, 'act.say: found ""'],
    [{ ...reworked, cures: ['the first'] }, 'act.cures: found a list'],
    [{ ...reworked, rework: [] }, 'act.rework: found a list, expected an object'],
    [withRework({ id: 'r/1' }), 'act.rework.id: found "r/1", expected letters, digits and hyphens'],
    [
      withRework({ undo: undefined }),
      'act.rework.undo: found nothing, expected a list of 2000 steps at most',
    ],
    [withRework({ again: Array(2_001).fill(rework.again[0]) }), 'act.rework.again: found a list'],
    [withRework({ again: [{ step: 's', minutes: -1 }] }), 'act.rework.again.0.minutes: found -1'],
    [withRework({ again: [{ minutes: 1 }] }), 'act.rework.again.0.step: found nothing'],
    [withRework({ again: ['s'] }), 'act.rework.again.0: found "s", expected an object'],
    [withUndo({ action: 'burn' }), 'act.rework.undo.1.action: found "burn"'],
    [withUndo({ times: 3 }), 'act.rework.undo.1.times: found 3, expected 1 or 2'],
    [withUndo({ of: undefined }), 'act.rework.undo.1.of: found nothing, expected an object'],
    [withUndo({ of: { kind: 'seam', id: 'x' } }), 'act.rework.undo.1.of.kind: found "seam"'],
    [withUndo({ pieces: [1] }), 'act.rework.undo.1.pieces: found a list'],
    [withUndo({ minutes: null }), 'act.rework.undo.1.minutes: found null'],
  ])('is refused where it is not whole (%#)', (act, expected) => {
    expect(read(act)).toContain(expected);
  });
});

describe('acts of a try-on', () => {
  it('are read where they are sound, and never trusted otherwise', () => {
    const sound = anyFitting.filter((act) => act.kind !== 'seen' || Math.abs(act.amount ?? 0) <= 1e10);
    fc.assert(
      fc.property(sound, (act) => {
        expect(read(act)).toBe('fine');
      }),
      { seed: 54 },
    );
    fc.assert(
      fc.property(fc.constantFrom('seen', 'let-be', 'reworked'), fc.object(), (kind, fields) => {
        expect(read({ ...fields, kind })).toMatch(/^act\..*: found .*, expected /);
      }),
      { seed: 55 },
    );
  });
});
