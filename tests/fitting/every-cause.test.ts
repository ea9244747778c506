import { describe, expect, it } from 'vitest';
import { inches } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { demo } from '../outfit/demo-files.ts';
import { garmentOf } from '../outfit/units/worn.ts';
import { orderOf } from './at-a-try-on.ts';
import { alone, causesOf } from './every-cause.ts';

const AMOUNTS = [inches(1, 4), inches(1, 2), inches(3, 4), inches(1.5)];

const made = (...units: readonly string[]): readonly [string, () => Outfit] => [
  units.join(', '),
  () => garmentOf(units.map((unit) => ({ unit, name: unit }))),
];

const OUTFITS: readonly (readonly [string, () => Outfit])[] = [
  ...(['harbour-clockmaker', 'plain-shirt', 'glasshouse-astronomer'] as const).map(
    (name) => [name, () => demo(name)] as const,
  ),
  made('plain-front', 'plain-back', 'plain-sleeve', 'flat-collar'),
  made('plain-front', 'button-band', 'plain-back', 'puffed-sleeve', 'standing-band'),
  made('plain-front', 'plain-back', 'lantern-sleeve', 'bias-bound-neck'),
  made('plain-front', 'plain-back', 'gathered-skirt'),
  made('plain-front', 'plain-back'),
  made('panelled-bodice', 'gathered-skirt'),
  made('panelled-bodice', 'circle-skirt'),
  made('panelled-bodice', 'plain-sleeve', 'standing-band'),
  made('princess-front', 'princess-back', 'plain-sleeve'),
  made('princess-front', 'princess-back', 'lantern-sleeve', 'stand-and-collar'),
  made('gathered-skirt', 'waistband'),
  made('circle-skirt', 'waistband'),
];

/**
 * Seams that may come out a little too long or too short. How an edge grows is read to first order where it is now: a
 * slanting or a curved edge that is moved far grows by a little more or less than that. By an inch and a half that may be
 * any seam; by less, only these.
 */
const FAR = inches(1.5);
const TO_FIRST_ORDER: readonly (readonly [cause: RegExp, seam: RegExp])[] = [
  // The upper end of a panel seam slants when the shoulder is moved along.
  [/long-shoulder$/, /^panel /],
  // The armhole is a curve that is spread.
  [/narrow-back$/, /^armhole /],
  // The neck edge turns with the shoulder.
  [/deep-(front|back)-seam$/, /neck(-seam)? /],
];

describe('every cause of all that can be seen, by itself', () => {
  it.each(OUTFITS)('is met soundly or told why not: %s', { timeout: 120_000 }, (_, get) => {
    const outfit = get();
    const running = orderOf(outfit);
    const wrong: string[] = [];
    let [tried, met] = [0, 0];
    // Two of the amounts for each cause, another two for the next.
    for (const garment of outfit.garments)
      for (const [i, { entry, cause }] of causesOf(garment).entries())
        for (const amount of AMOUNTS.filter((_one, n) => n % 2 === i % 2)) {
          const found = alone({ outfit, garment, running }, entry, cause, amount);
          tried += 1;
          // What cannot be met says what would be needed.
          if (found.length > 0 && found.every((one) => /^not met: [A-Z“].{20,}[.:a-z)]$/.test(one))) continue;
          met += 1;
          for (const one of found)
            if (
              !(amount === FAR && one.endsWith(' no longer fits')) &&
              !TO_FIRST_ORDER.some(([its, seam]) => its.test(cause.id) && seam.test(one))
            )
              wrong.push(`${garment.id} ${entry.id} ${cause.id} by ${amount}: ${one}`);
        }
    expect(wrong).toEqual([]);
    expect(tried).toBeGreaterThan(0);
    // A skirt with a waistband alone has few seams that could give.
    if (tried > 40) expect(met / tried).toBeGreaterThan(0.6);
  });
});
