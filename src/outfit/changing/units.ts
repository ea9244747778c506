import type { Advice } from '../../cloth/advice.ts';
import type { Fault } from '../../fields/fields.ts';
import type { Result } from '../../length/result.ts';
import type { Outfit } from '../outfit.ts';
import type { Putting } from '../units/unit.ts';
import type { Fallen } from './fallen.ts';

/** What stands against a unit being made. */
export interface UnitFault {
  /** Id of the garment. */
  readonly garment: string;
  /** Id of the unit as the garment has it; empty for one that is being put on now, or where the fault is of no unit. */
  readonly unit: string;
  readonly name: string;
  readonly faults: readonly Fault[];
}

/** A change of units that was possible. */
export interface UnitsMade {
  readonly outfit: Outfit;
  /** Id of the unit that was put on or changed. */
  readonly unit: string;
  readonly advice: readonly Advice[];
  /** What was taken for granted. */
  readonly assumed: readonly string[];
}

/** Puts a ready-made unit on a garment, after those that it has. */
export function putOn(
  _outfit: Outfit,
  _garment: string,
  _unit: string,
  _putting: Omit<Putting, 'id'> & { readonly id?: string },
): Result<UnitsMade, readonly UnitFault[]> {
  throw new Error('not yet');
}

/** Changes a unit's name, figures, places or cloths; it and those put on after it are made anew. */
export function changeUnit(
  _outfit: Outfit,
  _garment: string,
  _use: string,
  _putting: Partial<Omit<Putting, 'id'>>,
): Result<UnitsMade, readonly UnitFault[]> {
  throw new Error('not yet');
}

/** Takes a unit off: its parts, and everything else that hangs on them. */
export function takeOff(
  _outfit: Outfit,
  _garment: string,
  _use: string,
): { readonly outfit: Outfit; readonly also: readonly Fallen[] } {
  throw new Error('not yet');
}

/** Makes all units of a garment anew, one after the other, from what the maker wrote in their fields. */
export function makeAnew(_outfit: Outfit, _garment: string): Result<Outfit, readonly UnitFault[]> {
  throw new Error('not yet');
}
