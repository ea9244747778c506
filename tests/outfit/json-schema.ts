import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import { outfitSchema } from '../../src/outfit/schema.ts';

/**
 * The JSON Schema for people who write outfit files by hand: what a file looks like before it is read. What the names
 * in a file must agree about, and whether a length can be read, no JSON Schema can say; reading the file tells.
 */
export const jsonSchema = (): JsonSchema => {
  const { $schema = '', ...shape } = toJsonSchema(outfitSchema, { typeMode: 'input', errorMode: 'ignore' });
  return {
    $schema,
    title: 'Slipbaste outfit',
    description: 'What is to be made: cloths, markers and garments. The order of making is derived from it.',
    ...shape,
  };
};
