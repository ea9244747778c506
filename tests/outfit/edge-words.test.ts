import { expect, test } from 'vitest';
import { edgeWords, listWords } from '../../src/outfit/edge-words.ts';

test('an edge is named as a maker names it, its side with the word for it', () => {
  expect(['neck', 'lower', 'front-end', 'outer', 'centre-front'].map(edgeWords)).toEqual([
    'neck',
    'lower edge',
    'front end',
    'outer edge',
    'centre front',
  ]);
});

test('names are listed with an “and” before the last', () => {
  expect(listWords([])).toBe('');
  expect(listWords(['neck'])).toBe('neck');
  expect(listWords(['neck', 'armhole', 'hem'])).toBe('neck, armhole and hem');
});
