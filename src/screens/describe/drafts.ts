import { type Signal, signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { keep, recall } from '../../ui/safe-storage.ts';

/** What stands in a form that has not been handed in yet, by the names of its fields. */
export type Written = Readonly<Record<string, string>>;

/** A form in work: kept on this device with every key, until it is handed in or emptied. */
export interface FormDraft {
  readonly written: Signal<Written>;
  /** Puts words into one field. */
  readonly write: (name: string, text: string) => void;
  /** Puts all of these in the stead of what stands there. */
  readonly become: (written: Written) => void;
  /** Forgets what was written, once it is in the ledger. */
  readonly clear: () => void;
}

const placeOf = (key: string): string => `draft.${key}`;

/** What was kept of a form, as far as it can be read. */
export function recallDraft(key: string): Written {
  try {
    const found: unknown = JSON.parse(recall(placeOf(key)) ?? '{}');
    if (typeof found !== 'object' || found === null || Array.isArray(found)) return {};
    return Object.fromEntries(
      Object.entries(found).filter((one): one is [string, string] => typeof one[1] === 'string'),
    );
  } catch {
    return {};
  }
}

/** Keeps what stands in a form that is not on the screen. */
export const keepDraft = (key: string, written: Written): boolean =>
  keep(placeOf(key), JSON.stringify(written));

/** A form in work under a key of its own: `outfit/garment/shirt/add/cuff`. It comes back as it was left. */
export function useDraft(key: string): FormDraft {
  return useMemo(() => {
    const written = signal(recallDraft(key));
    const put = (now: Written): void => {
      written.value = now;
      keepDraft(key, now);
    };
    return {
      written,
      write: (name, text) => put({ ...written.peek(), [name]: text }),
      become: put,
      clear: () => put({}),
    };
  }, [key]);
}
