import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import { outfitSchema } from '../../src/outfit/schema.ts';
import { WORDS } from './schema-words.ts';

/** A part of a schema, as far as it is walked through here. */
type Part = Record<string, unknown> & {
  properties?: Record<string, Part>;
  items?: Part | Part[];
  prefixItems?: Part[];
  anyOf?: Part[];
  oneOf?: Part[];
  const?: unknown;
  description?: string;
};

/** Every field of a schema with what it belongs to: the nearest named list or thing round it, or the kind of a work. */
export function* fieldsOf(
  part: Part,
  of = 'outfit',
): Generator<readonly [of: string, name: string, field: Part]> {
  const kind = part.properties?.kind?.const;
  const owner = typeof kind === 'string' ? kind : of;
  for (const [name, field] of Object.entries(part.properties ?? {})) {
    yield [owner, name, field];
    yield* fieldsOf(field, name);
  }
  for (const inner of [part.items, part.prefixItems, part.anyOf, part.oneOf].flat())
    if (inner !== undefined)
      yield* fieldsOf(inner, of === 'families' && 'depths' in (inner.properties ?? {}) ? 'family' : of);
}

const KINDS =
  /^(tucks|crossed-tucks|folded-band|interfacing|applied-tape|gather|bind-edge|press-edge|stay-stitch|buttonholes|lattice-beads|hem|casing|ribbon|own)$/;

/** The words for a field; those of its own kind of work before those of all. */
export const wordsFor = (of: string, name: string): [key: string, words: string | undefined] => {
  const own = `${of}.${name}`;
  const key = WORDS[own] === undefined && KINDS.test(of) ? `work.${name}` : own;
  return [key, WORDS[key]];
};

/**
 * The JSON Schema for people who write outfit files by hand: what a file looks like before it is read, with a word on
 * every field. What the names in a file must agree about, and whether a length can be read, no JSON Schema can say;
 * reading the file tells.
 */
export const jsonSchema = (): JsonSchema => {
  const { $schema = '', ...shape } = toJsonSchema(outfitSchema, { typeMode: 'input', errorMode: 'ignore' });
  for (const [of, name, field] of fieldsOf(shape as Part)) {
    const [, words] = wordsFor(of, name);
    const written = field.description === undefined ? '' : ` Written as ${field.description}.`;
    if (words !== undefined) field.description = `${words}${written}`;
  }
  return {
    $schema,
    title: 'Slipbaste outfit',
    description:
      'What is to be made: cloths, markers, wearers and garments. The order of making is derived from it. Comments, from two strokes to the end of the line or between /* and */, and a comma after the last entry are allowed.',
    ...shape,
  };
};
