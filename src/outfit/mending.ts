import { pointer } from './problem.ts';
import { bare, type Form, filled, kindsOf, partForm } from './schema-filling.ts';
import { nearest } from './suggest.ts';
import type { Path, Unsure } from './unsure.ts';

type Key = string | number;
type Thing = Record<Key, unknown>;

/** One mistake of shape, as the schema tells it. */
export interface Mistake {
  readonly path: Path;
  readonly type: string;
  readonly expected: string | null;
  readonly requirement?: unknown;
}

const isThing = (value: unknown): value is Thing => typeof value === 'object' && value !== null;

/** A word that stands nowhere in some data, for names made up; undefined where none is found soon. */
function newWord(raw: unknown): string | undefined {
  const text = JSON.stringify(raw);
  for (let n = 0; n < 50; n += 1) if (!text.includes(`q${n}z`)) return `q${n}z`;
  return undefined;
}

/** Everything on the way to a place, from the whole to the place itself. */
function wayTo(path: Path): readonly string[] {
  const way = [''];
  for (const key of path) way.push(`${way.at(-1) ?? ''}${pointer([key])}`);
  return way;
}

/**
 * A copy of a description in which every mistake of shape is mended, for looking at the rest of it: what is wrong or
 * missing is filled in, a name that is not used goes to the one that was meant, or out.
 */
export class MendedCopy implements Unsure {
  readonly whole: unknown;
  private readonly form: Form;
  private readonly word: string;
  private made = 0;
  private readonly put = new Set<string>();
  private readonly round = new Set<string>();
  private readonly missing = new Set<string>();
  private readonly moves: (readonly [to: string, from: string])[] = [];

  private constructor(raw: unknown, form: Form, word: string) {
    // It was read from JSON, so it comes back whole.
    this.whole = JSON.parse(JSON.stringify(raw));
    this.form = form;
    this.word = word;
  }

  /** A copy to be mended; undefined of what is no thing at all. */
  static of(raw: unknown, form: Form): MendedCopy | undefined {
    const word = isThing(raw) && !Array.isArray(raw) ? newWord(raw) : undefined;
    return word === undefined ? undefined : new MendedCopy(raw, form, word);
  }

  invented = (name: string): boolean => name.includes(this.word);
  inside = (at: Path): boolean => this.put.size > 0 && wayTo(at).some((place) => this.put.has(place));
  touches = (at: Path): boolean => this.inside(at) || this.round.has(pointer(at));

  /** The place in the file of a place in the copy. */
  placeIn(at: string): string {
    return this.moves.reduceRight(
      (place, [to, from]) =>
        place === to || place.startsWith(`${to}/`) ? from + place.slice(to.length) : place,
      at,
    );
  }

  /** What stands at a place of the copy. */
  at(path: Path): unknown {
    let here: unknown = this.whole;
    for (const key of path) here = isThing(here) ? here[key] : undefined;
    return here;
  }

  /** The form of a place, of the copy as it stands. */
  formAt(path: Path): Form | undefined {
    let [form, here]: [Form | undefined, unknown] = [this.form, this.whole];
    for (const key of path) {
      form = partForm(form, key, here);
      here = isThing(here) ? here[key] : undefined;
    }
    return form && bare(form);
  }

  /** Names of a thing that its form does not have. */
  unused(path: Path): readonly string[] {
    const thing = this.at(path);
    const used = this.namesAt(path);
    return isThing(thing) ? Object.keys(thing).filter((key) => !used.includes(key)) : [];
  }

  /** Names that the thing at a place has by its form. */
  namesAt(path: Path): readonly string[] {
    const form = this.formAt(path);
    const thing = this.at(path);
    const kind = (form?.options as readonly Form[] | undefined)?.find(
      ({ entries }) => isThing(thing) && entries?.kind?.literal === thing.kind,
    );
    return Object.keys(form?.entries ?? kind?.entries ?? {});
  }

  /**
   * Takes a name out that its thing does not have. What stands there goes to the name that was meant, where nothing
   * stands; gives that place, if it was said to be missing.
   */
  take(path: Path, key: string): string | undefined {
    const thing = this.at(path) as Thing;
    const value = thing[key];
    delete thing[key];
    const near = nearest(key, this.namesAt(path));
    if (near === undefined) return undefined;
    const to = pointer([...path, near]);
    if (Object.hasOwn(thing, near) && !this.missing.has(to)) return undefined;
    thing[near] = value;
    this.moves.push([to, pointer([...path, key])]);
    this.put.delete(to);
    return this.missing.delete(to) ? to : undefined;
  }

  /** Fills in a place; false where nothing is known that would do there. */
  private fill(path: Path, form: Form | undefined, kept: object = {}): boolean {
    const round = this.at(path.slice(0, -1));
    const key = path.at(-1);
    if (!form || key === undefined || !isThing(round)) return false;
    if (!Object.hasOwn(round, key)) this.missing.add(pointer(path));
    const value = filled(form, this.fresh);
    round[key] = isThing(value) && !Array.isArray(value) ? { ...value, ...kept } : value;
    this.mark(path);
    return true;
  }

  private fresh = (): string => {
    this.made += 1;
    return `${this.word}${this.made}`;
  };

  private mark(path: Path): void {
    const way = wayTo(path);
    this.put.add(way.at(-1) ?? '');
    for (const place of way) this.round.add(place);
  }

  /** Mends one mistake; false where that cannot be done. */
  mend({ path, type, requirement }: Mistake): boolean {
    const round = path.slice(0, -1);
    const here = this.at(path);
    const form = this.formAt(path);
    if (type === 'variant')
      return this.mendKind(path.at(-1) === 'kind' && isThing(this.at(round)) ? round : path);
    // A list passes for an object without names.
    if (Array.isArray(this.at(round)) && typeof path.at(-1) === 'string')
      return this.fill(round, this.formAt(round));
    if (type === 'max_length' && Array.isArray(here) && form?.item) {
      here.length = Number(requirement) - 1;
      here.push(undefined);
      return this.fill([...path, here.length - 1], form.item);
    }
    if (type === 'check' && isThing(here)) return this.fill(path, form, { id: here.id, name: here.name });
    return this.fill(path, form);
  }

  /** The kind that is likely meant; else what every kind has is kept, and nothing else is looked at. */
  private mendKind(path: Path): boolean {
    const thing = this.at(path);
    const form = this.formAt(path);
    if (!form || !isThing(thing) || Array.isArray(thing)) return this.fill(path, form);
    const near = typeof thing.kind === 'string' ? nearest(thing.kind, kindsOf(form)) : undefined;
    if (near === undefined) {
      const shared = ['id', 'name', 'on'];
      const plain = filled(form, this.fresh) as Thing;
      for (const key of Object.keys(thing)) if (!shared.includes(key)) delete thing[key];
      for (const key of Object.keys(plain)) if (!shared.includes(key)) thing[key] = plain[key];
    } else thing.kind = near;
    this.mark([...path, 'kind']);
    return true;
  }
}
