import { effect, signal } from '@preact/signals';
import type { Marking } from '../length/writing.ts';
import { canBuzz, type Feedback } from '../ui/feedback.ts';
import type { TaughtKeys } from '../ui/keys.ts';
import { keep, recall } from '../ui/safe-storage.ts';

/** The maker's small choices, kept on the device and outside every outfit. */

/** Light tissue, dark cloth, or whatever the device does. */
export type Ground = 'auto' | 'paper' | 'cloth';

const oneOf = <T extends string>(value: string | undefined, all: readonly T[], otherwise: T): T =>
  all.find((one) => one === value) ?? otherwise;

/** The ground to work on. */
export const ground = signal<Ground>(oneOf(recall('ground'), ['auto', 'paper', 'cloth'], 'auto'));

/** The rule to read by; `outfit` is the outfit's own. */
export const units = signal<'outfit' | 'in' | 'mm'>(oneOf(recall('units'), ['outfit', 'in', 'mm'], 'outfit'));

/** Click at each touch. Off until asked for: a sewing room may be a shared one. */
export const sound = signal(recall('sound') === 'yes');

/** Buzz at each touch, where the device can. */
export const buzz = signal(canBuzz() && recall('buzz') !== 'no');

/** Keys or pedals taught beside the usual ones. */
export const taught = signal<TaughtKeys>({ pad: recall('key.pad'), undo: recall('key.undo') });

/** The outfit last in work, to come back to. */
export const lastOutfit = signal(recall('outfit'));

/** What to hear and feel now. */
export const feedback = (): Feedback => ({ sound: sound.value, buzz: buzz.value });

/** The marking of a rule: sixteenths, or half millimetres. */
export const markingOf = (unit: 'in' | 'mm'): Marking =>
  unit === 'in' ? { unit, per: 16 } : { unit, step: 0.5 };

/** The marking of the rule that the maker chose, else of the outfit's own. */
export const markingFor = (own: 'in' | 'mm'): Marking =>
  markingOf(units.value === 'outfit' ? own : units.value);

/** Shows the ground and keeps every choice as it is made. Call once. */
export function keepChoices(): void {
  effect(() => {
    keep('ground', ground.value);
    if (ground.value === 'auto') delete document.documentElement.dataset.ground;
    else document.documentElement.dataset.ground = ground.value;
  });
  effect(() => void keep('units', units.value));
  effect(() => void keep('sound', sound.value ? 'yes' : 'no'));
  effect(() => void keep('buzz', buzz.value ? 'yes' : 'no'));
  effect(() => {
    keep('key.pad', taught.value.pad);
    keep('key.undo', taught.value.undo);
  });
  effect(() => void keep('outfit', lastOutfit.value));
}
