import { describe, expect, test } from 'vitest';
import { type KeyPress, keyName, readKey, writeKey } from '../../src/ui/keys.ts';

const press = (key: string, more: Partial<KeyPress> = {}): KeyPress => ({
  key,
  code: '',
  repeat: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  target: document.body,
  ...more,
});

const inside = (html: string, find: string): Element => {
  document.body.innerHTML = html;
  return document.querySelector(find)!;
};

describe('keys at the bench', () => {
  test.each([' ', 'Enter', 'ArrowRight', 'ArrowDown', 'PageDown'])('%j works the pad', (key) => {
    expect(readKey(press(key), {})).toEqual({ kind: 'act', as: 'pad' });
  });

  test.each(['ArrowLeft', 'ArrowUp', 'PageUp', 'Backspace'])('%j takes back', (key) => {
    expect(readKey(press(key), {})).toEqual({ kind: 'act', as: 'undo' });
  });

  test('other keys, and keys with a modifier, are left alone', () => {
    expect(readKey(press('a'), {}).kind).toBe('leave');
    expect(readKey(press('Enter', { ctrlKey: true }), {}).kind).toBe('leave');
    expect(readKey(press('ArrowLeft', { altKey: true }), {}).kind).toBe('leave');
    expect(readKey(press('ArrowLeft', { metaKey: true }), {}).kind).toBe('leave');
  });

  test('a held key acts once and then does nothing, not even scroll', () => {
    expect(readKey(press('PageDown', { repeat: true }), {}).kind).toBe('swallow');
  });

  test('a taught key wins over the usual meaning, and a key without a name goes by its place', () => {
    expect(readKey(press('PageUp'), { pad: 'PageUp' })).toEqual({ kind: 'act', as: 'pad' });
    expect(readKey(press('b'), { undo: 'b' })).toEqual({ kind: 'act', as: 'undo' });
    expect(keyName({ key: 'Unidentified', code: 'F13' })).toBe('F13');
    expect(readKey(press('Unidentified', { code: 'F13' }), { pad: 'F13' })).toEqual({
      kind: 'act',
      as: 'pad',
    });
  });

  test('fields and sheets keep all their keys', () => {
    for (const html of ['<input id="x">', '<textarea id="x"></textarea>', '<select id="x"></select>']) {
      expect(readKey(press('ArrowDown', { target: inside(html, '#x') }), {}).kind).toBe('leave');
    }
    const target = inside('<dialog open><button id="x"></button></dialog>', '#x');
    expect(readKey(press('PageDown', { target }), {}).kind).toBe('leave');
    expect(readKey(press('PageDown'), {}).kind).toBe('leave');
    document.body.innerHTML = '';
  });

  test('a focused control keeps Space and Enter but not the arrows; the pad does not', () => {
    const undo = inside('<button id="x"><span></span></button>', 'span');
    expect(readKey(press(' ', { target: undo }), {}).kind).toBe('leave');
    expect(readKey(press('Enter', { target: undo }), {}).kind).toBe('leave');
    expect(readKey(press('PageDown', { target: undo }), {}).kind).toBe('act');
    const pad = inside('<button data-part="pad">Done</button>', 'button');
    expect(readKey(press(' ', { target: pad }), {})).toEqual({ kind: 'act', as: 'pad' });
  });

  test('keys are written as the maker reads them', () => {
    expect(writeKey(' ')).toBe('Space');
    expect(writeKey('PageDown')).toBe('Page Down');
    expect(writeKey('b')).toBe('b');
  });
});
