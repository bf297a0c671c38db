import type { z } from 'zod';
import type { FieldIssue } from '#shared-calc/records/book-fault.ts';

type Issue = z.core.$ZodIssue;

/** What is wrong with an input, each with its field and what the field wants. */
export function inputIssues({ issues }: z.ZodError, input: unknown): readonly FieldIssue[] {
  return issues.map((issue) => {
    const field = issue.path.map(String).join('.');
    return { field, code: issue.code, says: sayIssue(issue, valueAt(input, issue.path)) };
  });
}

type Code = Issue['code'];
type Sayings = {
  readonly [C in Code]?: (issue: Extract<Issue, { readonly code: C }>, given: unknown) => string;
};

const sayings: Sayings = {
  invalid_type: ({ expected }, given) => `is ${sayGiven(given)}; it wants ${wanted[expected] ?? `a ${expected}`}`,
  invalid_value: ({ values }, given) => `is ${sayGiven(given)}; it wants ${oneOf(values.map(String))}`,
  invalid_union: (_, given) => `is ${sayGiven(given)}, which is none of those it may be`,
  invalid_format: ({ pattern = '' }, given) =>
    `is ${sayGiven(given)}; it wants ${pattern.includes('{4}-') ? 'a day, such as 2026-11-25' : `the form ${pattern}`}`,
  too_big: ({ origin, maximum }) => `is too ${isLength(origin) ? 'long' : 'big'}; ${String(maximum)} is the most`,
  too_small: ({ origin, minimum }, given) =>
    given === '' ? 'is empty' : `is too ${isLength(origin) ? 'short' : 'small'}; ${String(minimum)} is the least`,
  unrecognized_keys: ({ keys }) => `has no field called ${keys.join(', ')}`,
};

function sayIssue(issue: Issue, given: unknown): string {
  const say: ((issue: never, given: unknown) => string) | undefined = sayings[issue.code];
  return say?.(issue as never, given) ?? 'is not written as it should be';
}

function sayGiven(given: unknown): string {
  return given === undefined ? 'missing' : JSON.stringify(given);
}

const wanted: Readonly<Record<string, string>> = {
  string: 'a text',
  int: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object with its fields',
  record: 'an object with its fields',
};

function isLength(origin: string): boolean {
  return origin === 'string' || origin === 'array';
}

function oneOf(values: readonly string[]): string {
  return values.length === 1 ? (values[0] ?? '') : `one of ${values.join(', ')}`;
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let at = data;
  for (const key of path) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = new Map<string, unknown>(Object.entries(at)).get(String(key));
  }
  return at;
}
