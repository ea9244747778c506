/** The way to a place in a file. */
export type Path = readonly (string | number)[];

/** What of a description was only put in so that the rest could be looked at: nothing may be said that hangs on it. */
export interface Unsure {
  /** True for a name that was made up. */
  readonly invented: (name: string) => boolean;
  /** True for a place that was put in, or that lies in one. */
  readonly inside: (at: Path) => boolean;
  /** True for a place that was put in, that lies in one, or that has one in it. */
  readonly touches: (at: Path) => boolean;
}

const never = (): boolean => false;

/** Of a description that is as somebody wrote it, everything is sure. */
export const SURE: Unsure = { invented: never, inside: never, touches: never };

/** Names of one kind of thing. */
export interface Names {
  readonly all: ReadonlySet<string>;
  /** Some of the names are not known, so that nobody can say that one does not exist. */
  readonly open: boolean;
}

/** The names of these things. */
export function namesOf(ids: Iterable<string>, { invented }: Unsure): Names {
  const all = new Set(ids);
  return { all, open: [...all].some(invented) };
}

/** True where a name certainly does not exist. */
export const lacks = (names: Names, wanted: string, { invented }: Unsure): boolean =>
  !names.open && !names.all.has(wanted) && !invented(wanted);

/** What to call something: by its name, by its id where the name is not known, or by its number. */
export const called = (
  thing: { readonly id: string; readonly name: string },
  number: number,
  { invented }: Unsure,
): string => [thing.name, thing.id].find((one) => !invented(one)) ?? `number ${number + 1}`;
