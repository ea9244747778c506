import { describe, expect, it } from 'vitest';
import { oddNames } from '../../src/outfit/odd-names.ts';
import { readOutfitFile } from '../../src/outfit/reading-file.ts';
import { writeOutfit } from '../../src/outfit/writing.ts';
import { garmentOf } from './changing/shirt.ts';

const shirt = JSON.stringify(writeOutfit(garmentOf('plain-front')));
/** What is said of the shirt's file with something more in its first unit. */
const wrongWith = (more: string): readonly string[] => {
  const read = readOutfitFile(shirt.replace('"units":[{', `"units":[{${more},`));
  return read.ok ? [] : read.error.wrong.map(({ where, say, cure }) => `${where}: ${say}; ${cure}`);
};

describe('names that mean something to the language', () => {
  it.each(['constructor', 'prototype', '__proto__', 'toString'])(
    'refuses `%s`, rather than lose what stands there',
    (odd) => {
      for (const field of ['entries', 'at', 'cloths'])
        expect(wrongWith(`"${field}":{"${odd}":"2"}`)).toEqual([
          `garments: Shirt, units: Front, ${field}, ${odd}: \`${odd}\` cannot be the name of a field; leave it out, or give it another name`,
        ]);
      expect(wrongWith(`"${odd}":"2"`)).toHaveLength(1);
    },
  );

  it('lets every other name be, and such words as values', () => {
    expect(oddNames(JSON.parse(shirt))).toEqual([]);
    expect(wrongWith('"entries":{"chest":"constructor"}')).toEqual([]);
    expect(oddNames('constructor')).toEqual([]);
  });

  it('looks through data of any depth', () => {
    const deep = JSON.parse(`${'{"a":['.repeat(2000)}{"valueOf":1}${']}'.repeat(2000)}`);
    expect(oddNames(deep)).toHaveLength(1);
  });
});
