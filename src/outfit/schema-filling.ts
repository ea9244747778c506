import * as v from 'valibot';

/** A schema as one can look into it. */
export interface Form {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Form>>;
  readonly item?: Form;
  readonly items?: readonly Form[];
  readonly wrapped?: Form;
  readonly value?: Form;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly pipe?: readonly Form[];
  readonly requirement?: unknown;
}

/** The form itself, of one that may be left out. */
export const bare = (form: Form): Form => (form.wrapped ? bare(form.wrapped) : form);

const optional = (form: Form): boolean => form.type === 'optional' || form.type === 'exact_optional';

/** Every check that a form makes, those of the forms it is made from as well. */
const checksOf = (form: Form): readonly Form[] => form.pipe?.flatMap(checksOf) ?? [form];

const isKind = (kind: unknown) => (form: Form) => form.entries?.kind?.literal === kind;

/** The kinds that a form with kinds has, by their words. */
export const kindsOf = (form: Form): readonly string[] =>
  (form.options as readonly Form[]).map((one) => String(one.entries?.kind?.literal));

/** The form of one part of a thing; undefined where it has no such part. */
export function partForm(form: Form | undefined, key: string | number, thing: unknown): Form | undefined {
  const whole = form && bare(form);
  switch (whole?.type) {
    case 'strict_object':
      return Object.entries(whole.entries ?? {}).find(([name]) => name === key)?.[1];
    case 'array':
      return whole.item;
    case 'tuple':
      return whole.items?.[Number(key)];
    case 'record':
      return whole.value;
    case 'variant': {
      const kind = (thing as { readonly kind?: unknown } | undefined)?.kind;
      return partForm((whole.options as readonly Form[]).find(isKind(kind)), key, thing);
    }
    default:
      return undefined;
  }
}

/**
 * Something that a form lets pass. Names in it are made up anew, each another; a list has at least one entry, so that
 * its names count as not all known.
 */
export function filled(form: Form, fresh: () => string): unknown {
  const whole = bare(form);
  const least = checksOf(whole).find(
    ({ type }) => type === 'min_length' || type === 'min_value',
  )?.requirement;
  switch (whole.type) {
    case 'strict_object':
      return Object.fromEntries(
        Object.entries(whole.entries ?? {})
          .filter(([, one]) => !optional(one))
          .map(([key, one]) => [key, filled(one, fresh)]),
      );
    case 'array':
      return Array.from({ length: Number(least ?? 1) }, () => whole.item && filled(whole.item, fresh));
    case 'tuple':
      return whole.items?.map((one) => filled(one, fresh));
    case 'variant': {
      const [first] = whole.options as readonly Form[];
      return first && filled((whole.options as readonly Form[]).find(isKind('ribbon')) ?? first, fresh);
    }
    case 'record':
      return {};
    case 'picklist':
      return whole.options?.[0];
    case 'literal':
      return whole.literal;
    case 'boolean':
      return false;
    case 'number':
      return least ?? 0;
    default: {
      const name = fresh();
      const passes = (one: string) => v.is(whole as unknown as v.GenericSchema, one);
      return [name, `${name}.${name}`, '1 mm', '2000-01-01'].find(passes);
    }
  }
}
