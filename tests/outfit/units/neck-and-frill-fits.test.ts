import { expect, test } from 'vitest';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { lengthsFit } from '../../../src/outfit/lengths-fit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { emptyOutfit, garmentOf, MIDDLING, put } from './made-of.ts';

const BODY = ['plain-front', 'plain-back'];
const PRINCESS = ['princess-front', 'princess-back'];

test.each([
  [...BODY, 'button-band', 'inset-frill', 'flat-collar', 'straight-frill'],
  [...BODY, 'stand-and-collar', 'bias-frill'],
  [...BODY, 'standing-band', 'loop-bow'],
  [...BODY, 'bias-bound-neck'],
  [...BODY, 'circular-frill'],
  [...PRINCESS, 'button-band', 'inset-frill', 'flat-collar'],
  [...PRINCESS, 'parallel-tucks', 'stand-and-collar'],
])('every edge fits what it is sewn to: %s, %s, %s, %s', (...ids) => {
  for (const units of ['in', 'mm'] as const) {
    for (const measures of [undefined, MIDDLING]) {
      let outfit = emptyOutfit(units, measures);
      for (const id of ids) {
        const unit = unitCalled(id)!;
        outfit = put(outfit, unit, { at: suggestPlaces(garmentOf(outfit), unit) });
      }
      const fits = lengthsFit(outfit, garmentOf(outfit), { unit: 'mm', step: 1 });
      expect(fits.length).toBeGreaterThan(2);
      expect(fits.filter(({ within }) => !within).map(({ say }) => say)).toEqual([]);
    }
  }
});
