import { useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import type { Fault } from '../../fields/fields.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { freshId, idsIn } from '../../outfit/changing/new-outfit.ts';
import { type PartList, type PartOf, putPart } from '../../outfit/changing/parts.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { readOutfit } from '../../outfit/reading.ts';
import { writeOutfit } from '../../outfit/writing.ts';
import type { Session } from '../session.ts';
import type { Asks } from './asks.ts';
import { type BegunBefore, useBegunBefore } from './begun-before.tsx';
import { ask } from './change.ts';
import { useDraft, type Written } from './drafts.ts';
import type { InHand } from './folded-words.ts';
import { faultsOf } from './part-faults.ts';
import { type Built, build } from './part-form.ts';
import { readRows } from './stands.ts';
import { ruleOf } from './unit-form.ts';

/** The address that a part's draft is kept under; `new` where there is no part yet. */
export const draftOf = (outfit: Outfit, garment: Garment, kind: string, part?: string): string =>
  `${outfit.id}/garment/${garment.id}/${kind}/${part ?? ''}`;

/** The form of a part in hand. */
export interface PartForm<L extends PartList> {
  readonly form: InHand;
  /** What it would be; undefined while something is wrong with it. */
  readonly part: PartOf[L] | undefined;
  /** The garment with it, where it could be looked at without being kept yet. */
  readonly garment: Garment;
  /** What is wrong and stands at no field. */
  readonly general: readonly string[];
  /** Something stands in the form that is not in the outfit. */
  readonly touched: boolean;
  /** Hands it in: asks for the change, or shows what is wrong. */
  readonly save: (say: string, then: (id: string) => void) => void;
  readonly clear: () => void;
  /** A new one that was left half written when this one was begun. */
  readonly before: BegunBefore | undefined;
}

/** Everything that a part's form is made of. */
export interface PartAsked<L extends PartList> {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly list: L;
  /** Its kind, as its pages are addressed: `try-on`. */
  readonly kind: string;
  readonly base: PartOf[L] | undefined;
  /** What is asked, which may hang on what was written. */
  readonly asks: (written: Written) => Asks;
  /** What a new one has besides what is asked. */
  readonly usual: (written: Written) => Readonly<Record<string, unknown>>;
  /** Fields that stand in the form besides what is asked. */
  readonly stands?: (field: string) => boolean;
  /** What is not read field by field. */
  readonly finish?: (written: Written) => Result<Built, readonly Fault[]>;
}

/** Has the maker written in this field, or in this field of a row? */
function typedIn(written: Written, field: string): boolean {
  const [, rows = '', i, within = ''] = /^(.+?)\.(\d+)\.(.+)$/.exec(field) ?? [];
  const row = readRows(written[rows] ?? '')[Number(i)];
  return Object.hasOwn(written, field) || (row !== undefined && Object.hasOwn(row, within));
}

/** The form of a part; what is typed is kept with every key until it is handed in. */
export function usePart<L extends PartList>(asked: PartAsked<L>): PartForm<L> {
  const { session, outfit, garment, list, kind, base, finish } = asked;
  const key = draftOf(outfit, garment, kind, base?.id);
  const draft = useDraft(key);
  const before = useBegunBefore(key, draft);
  const written = draft.written.value;
  const tried = useSignal(false);
  const refused = useSignal<readonly Fault[]>([]);
  const touched = Object.keys(written).length > 0;
  const first = useRef(true);
  // A form that comes back as it was left says at once what is wrong in it.
  if (first.current && base && touched) tried.value = true;
  first.current = false;
  const asks = asked.asks(written);
  const here = useMemo(() => ({ outfit, garment, marking: ruleOf(outfit) }), [outfit, garment]);
  const built = useMemo((): Result<PartOf[L], readonly Fault[]> => {
    const read = build(here, asks, written, base, asked.usual(written));
    const rest = finish?.(written);
    if (!read.ok || rest?.ok === false)
      return bad([...(read.ok ? [] : read.error), ...(rest?.ok === false ? rest.error : [])]);
    const id = base?.id ?? freshId(idsIn(garment), String(read.value.name));
    // Every field was read by what the table says of it; `readOutfit` looks it over before it is kept.
    return good({ ...read.value, ...rest?.value, id } as unknown as PartOf[L]);
  }, [here, written, base]);
  const shown = built.ok
    ? refused.value
    : built.error.filter(({ field }) => tried.value || typedIn(written, field));
  const inGarment = useMemo(() => {
    if (!built.ok) return garment;
    const { value } = built;
    const parts = garment[list] as readonly PartOf[L][];
    const i = parts.findIndex(({ id }) => id === value.id);
    return { ...garment, [list]: i < 0 ? [...parts, value] : parts.with(i, value) };
  }, [built, garment]);
  const names = Object.keys(asks);
  const stands = (field: string): boolean =>
    names.some((name) => field === name || field.startsWith(`${name}.`)) || asked.stands?.(field) === true;
  return {
    form: {
      here,
      written,
      base,
      faults: new Map(shown.map(({ field, say }) => [field, say])),
      write: (name, text) => {
        refused.value = [];
        draft.write(name, text);
      },
    },
    part: built.ok ? built.value : undefined,
    garment: inGarment,
    general: shown.filter(({ field }) => !stands(field)).map(({ say }) => say),
    touched,
    before: before && {
      ...before,
      take() {
        before.take();
        tried.value = false;
        refused.value = [];
      },
    },
    clear() {
      draft.clear();
      tried.value = false;
      refused.value = [];
    },
    save(say, then) {
      tried.value = true;
      if (!built.ok) return;
      const { value } = built;
      const put = putPart(outfit, garment.id, list, value);
      const read = put.ok ? readOutfit(writeOutfit(put.value)) : put;
      if (!read.ok) {
        const g = outfit.garments.indexOf(garment);
        const i = (garment[list] as readonly PartOf[L][]).findIndex((one) => one.id === value.id);
        const place = `/garments/${g}/${list}/${i < 0 ? garment[list].length : i}`;
        refused.value = faultsOf(read.error, place, asks);
        return;
      }
      if (put.ok)
        ask(session, put.value, say, () => {
          draft.clear();
          then(value.id);
        });
    },
  };
}
