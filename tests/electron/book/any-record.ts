import fc from 'fast-check';
import { z } from 'zod';

import { recordKinds } from '#shared-calc/records/records.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';

interface Shape {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly items?: Shape | false;
  readonly prefixItems?: readonly Shape[];
  readonly minItems?: number;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly anyOf?: readonly Shape[];
  readonly required?: readonly string[];
  readonly additionalProperties?: Shape | false;
}

/** Any record of a kind that a book can hold, with arbitrary references. */
export function anyRecord<K extends RecordKind>(kind: K): fc.Arbitrary<RecordOf<K>> {
  return anyOf(z.toJSONSchema(recordKinds[kind]) as Shape) as fc.Arbitrary<RecordOf<K>>;
}

const makers: Readonly<Record<string, (shape: Shape) => fc.Arbitrary<unknown>>> = {
  string: anyText,
  integer: ({ minimum, maximum }) => fc.maxSafeInteger().map((whole) => clamp(whole, minimum, maximum)),
  number: ({ minimum, maximum }) =>
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => clamp(number, minimum, maximum)),
  boolean: () => fc.boolean(),
  null: () => fc.constant(null),
  array: anyList,
  object: anyObject,
};

function anyOf(shape: Shape): fc.Arbitrary<unknown> {
  if (shape.const !== undefined) return fc.constant(shape.const);
  if (shape.anyOf) return fc.oneof(...shape.anyOf.map(anyOf));
  if (shape.enum) return fc.constantFrom(...shape.enum);
  if (typeof shape.type === 'object') return fc.oneof(...shape.type.map((type) => anyOf({ ...shape, type })));
  const make = makers[shape.type ?? ''];
  if (!make) throw new Error(`no maker for ${JSON.stringify(shape)}`);
  return make(shape);
}

function anyText({ pattern, minLength, maxLength = 40 }: Shape): fc.Arbitrary<string> {
  if (pattern !== undefined) return fc.stringMatching(new RegExp(pattern));
  if (minLength !== undefined && minLength === maxLength) return fc.string({ minLength, maxLength });
  // The limits count code units, and a character may have two.
  return fc.string({ unit: 'binary', minLength: minLength ?? 0, maxLength: Math.min(20, Math.ceil(maxLength / 2)) });
}

function anyList({ items, prefixItems, minItems }: Shape): fc.Arbitrary<unknown> {
  if (prefixItems) return fc.tuple(...prefixItems.map(anyOf));
  return fc.array(anyOf(items || {}), { minLength: minItems ?? 0, maxLength: 5 });
}

function anyObject({ properties, required = [], additionalProperties }: Shape): fc.Arbitrary<unknown> {
  if (!properties) {
    const key = fc.string({ unit: 'binary' }).filter(isOrdinaryKey);
    const value = additionalProperties ? anyOf(additionalProperties) : fc.string();
    return fc.dictionary(key, value, { noNullPrototype: true });
  }
  const fields = Object.entries(properties).map(([field, shape]) => [field, anyOf(shape)] as const);
  return fc.record(Object.fromEntries(fields), { requiredKeys: [...required], noNullPrototype: true });
}

function isOrdinaryKey(key: string): boolean {
  return !(key in {});
}

function clamp(value: number, minimum = -Infinity, maximum = Infinity): number {
  return Math.min(maximum, Math.max(minimum, value)) + 0;
}
