import { bad, good, type Result } from '../length/result.ts';
import type { Act, Deed } from './deed.ts';
import { readFitting } from './read-fitting.ts';
import { readReckoned } from './reckoned.ts';

/** What each kind of act must carry. Kinds that are not here come from a newer version and are kept as they are. */
const CARRIES: { readonly [K in Act['kind']]: Readonly<Record<string, 'string' | 'number'>> } = {
  'outfit-begun': {},
  described: { at: 'string' },
  redescribed: { say: 'string' },
  'step-opened': { step: 'string' },
  'step-done': { step: 'string' },
  'item-done': { step: 'string', item: 'string' },
  tap: { step: 'string', item: 'string', add: 'number' },
  'line-closed': { step: 'string', item: 'string', count: 'number' },
  'timer-started': { step: 'string', item: 'string', seconds: 'number' },
  'timer-stopped': { step: 'string', item: 'string' },
  'reason-added': { before: 'string', after: 'string', because: 'string' },
  'reason-waived': { key: 'string' },
  note: { step: 'string', text: 'string' },
  reckoned: { step: 'string', reckoning: 'string', title: 'string', unit: 'string' },
  seen: { garment: 'string', entry: 'string', side: 'string' },
  'let-be': { seen: 'string' },
  reworked: { say: 'string' },
  undone: { deed: 'string' },
};

const carries: ReadonlyMap<string, Readonly<Record<string, string>>> = new Map(Object.entries(CARRIES));

/** What a value is, short enough for a message. */
export const found = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
};

/** Whether a value is an object with fields. */
export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) >= 0;

/**
 * Reads a deed that comes from a file or another device: the right fields, of the right type, under the right name.
 * Refused with what was found and what was expected. An act of an unknown kind passes as it is.
 */
export const readDeed = (raw: unknown, outfit: string): Result<Deed, string> => {
  const wrong = (field: string, value: unknown, expected: string) =>
    bad(`${field}: found ${found(value)}, expected ${expected}.`);
  if (!isRecord(raw)) return wrong('deed', raw, 'an object');
  const { id, device, seq, at, place, act } = raw;
  if (typeof device !== 'string' || !/^[\w.:]{1,64}$/.test(device)) {
    return wrong('device', device, '1 to 64 letters and digits');
  }
  if (!isCount(seq)) return wrong('seq', seq, 'a whole number from 0');
  if (id !== `${device}-${seq}`) return wrong('id', id, `"${device}-${seq}"`);
  if (!Number.isFinite(at)) return wrong('at', at, 'milliseconds since 1970');
  if (place !== undefined && !Number.isFinite(place)) return wrong('place', place, 'milliseconds since 1970');
  if (raw.outfit !== outfit) return wrong('outfit', raw.outfit, `"${outfit}"`);
  if (!isRecord(act)) return wrong('act', act, 'an object');
  if (typeof act.kind !== 'string') return wrong('act.kind', act.kind, 'a word');
  for (const [field, type] of Object.entries(carries.get(act.kind) ?? {})) {
    const value = act[field];
    const fits = type === 'number' ? Number.isFinite(value) : typeof value === 'string';
    if (!fits) return wrong(`act.${field}`, value, `a ${type}`);
  }
  if (act.kind === 'redescribed' || act.kind === 'reworked') {
    const { changes } = act;
    if (!Array.isArray(changes) || !changes.every((one) => isRecord(one) && typeof one.at === 'string')) {
      return wrong('act.changes', changes, 'a list of changes, each with its place');
    }
  }
  if (act.kind === 'reckoned') {
    const read = readReckoned(act);
    if (!read.ok) return wrong(`act.${read.error.field}`, act[read.error.field], read.error.expected);
  }
  if (act.kind === 'seen' || act.kind === 'let-be' || act.kind === 'reworked') {
    const read = readFitting(act);
    if (!read.ok) return wrong(`act.${read.error.field}`, read.error.value, read.error.expected);
  }
  return good(raw as unknown as Deed);
};
