import { effect, signal } from '@preact/signals';
import type { Marking } from '../../length/writing.ts';
import { keep, recall } from '../../ui/safe-storage.ts';
import { markingFor, units } from '../choices.ts';
import { session } from '../workroom.ts';

type Unit = Marking['unit'];

/** The reckoner's own rule, once the maker has chosen one here. */
const own = signal(recall('reckoner.rule'));
effect(() => void keep('reckoner.rule', own.value));

/** Countries that measure cloth in inches: the United States and Liberia. Common practice, no source. */
const byPlace = (): Unit => (/-(US|LR)\b/.test(navigator.language) ? 'in' : 'mm');

/**
 * The rule to reckon by: the one chosen for everything, else the one chosen here, else that of the outfit in work, else
 * what is usual where the device is at home.
 */
export function ruleInUse(): Marking {
  const here = own.value === 'in' || own.value === 'mm' ? own.value : undefined;
  return markingFor(here ?? session.value?.outfit.value?.units ?? byPlace());
}

/** Takes another rule: for everything where one was chosen for everything, else for the reckoner only. */
export function takeRule(unit: Unit): void {
  if (units.value !== 'outfit') units.value = unit;
  own.value = unit;
}
