import fc from 'fast-check';
import { z } from 'zod';

/** The parts of JSON Schema that inputs of acts use. */
interface Schema {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly additionalProperties?: Schema | boolean;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minItems?: number;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
}

/** Inputs that an act's schema accepts; texts are often one of `words`, so that they name records of the book. */
export function anyInput(input: z.ZodType, words: readonly string[]): fc.Arbitrary<unknown> {
  return anyOf(z.toJSONSchema(input, { io: 'input' }) as Schema, words).filter((each) => input.safeParse(each).success);
}

function anyOf(schema: Schema, words: readonly string[]): fc.Arbitrary<unknown> {
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return fc.oneof(...choices.map((each) => anyOf(each, words)));
  if ('const' in schema) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  if (schema.type === undefined)
    return fc.dictionary(fc.constantFrom('job', 'line', 'text', 'column'), fc.constantFrom(...words));
  return anyOfType(schema, words);
}

type Maker = (schema: Schema, words: readonly string[]) => fc.Arbitrary<unknown>;

const makers: Readonly<Record<string, Maker>> = {
  string: anyText,
  integer: ({ minimum = -10, maximum = 100_000 }) => fc.integer({ min: minimum, max: Math.min(maximum, 100_000) }),
  number: ({ minimum = -10, maximum = 10_000 }) => fc.double({ min: minimum, max: maximum, noNaN: true }),
  boolean: () => fc.boolean(),
  array: anyArray,
  object: anyObject,
  null: () => fc.constant(null),
};

function anyOfType(schema: Schema, words: readonly string[]): fc.Arbitrary<unknown> {
  const { type = '' } = schema;
  if (typeof type !== 'string') return fc.oneof(...type.map((each) => anyOf({ ...schema, type: each }, words)));
  const make = makers[type];
  if (!make) throw new Error(`no maker for ${JSON.stringify(schema)}`);
  return make(schema, words);
}

function anyText({ pattern, minLength = 0, maxLength = 20 }: Schema, words: readonly string[]): fc.Arbitrary<string> {
  if (pattern !== undefined) return fc.constantFrom('2026-11-30', '2027-02-30', '2027-03-01', '2026-01-01');
  const free = fc.string({ minLength, maxLength: Math.max(minLength, Math.min(maxLength, 20)) });
  return fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...words) }, { weight: 1, arbitrary: free });
}

function anyArray({ items = {}, prefixItems, minItems = 0 }: Schema, words: readonly string[]): fc.Arbitrary<unknown> {
  if (prefixItems) return fc.tuple(...prefixItems.map((each) => anyOf(each, words)));
  return fc.array(anyOf(items, words), { minLength: minItems, maxLength: 3 });
}

function anyObject(schema: Schema, words: readonly string[]): fc.Arbitrary<unknown> {
  const { properties, required = [], additionalProperties } = schema;
  if (!properties && typeof additionalProperties === 'object') {
    return fc.dictionary(fc.constantFrom(...words), anyOf(additionalProperties, words), { maxKeys: 3 });
  }
  const fields = Object.entries(properties ?? {}).map(([name, each]) => [name, anyOf(each, words)] as const);
  return fc.record(Object.fromEntries(fields), { requiredKeys: [...required] });
}
