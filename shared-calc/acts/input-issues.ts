import type { z } from 'zod';
import type { Field } from '#shared-calc/fields/field.ts';
import { kindNames } from '#shared-calc/fields/kind-names.ts';
import { boundIssue, fieldIn } from '#shared-calc/records/bound-issue.ts';
import type { FieldIssue } from '#shared-calc/records/book-fault.ts';

type Issue = z.core.$ZodIssue;

/** Each fault of an input, with its field and what the field expects. */
export function inputIssues({ issues }: z.ZodError, input: unknown): readonly FieldIssue[] {
  return issues.map((issue) => {
    const field = issue.path.map(String).join('.');
    const given = valueAt(input, issue.path);
    const bound = boundIssue(issue, fieldAt(issue.path, input), given);
    return { field, code: issue.code, ...(bound ?? { says: sayIssue(issue, given) }) };
  });
}

/** The field of a record that a path leads to: of one that is given whole, or of the job whose survey it is. */
function fieldAt(path: readonly PropertyKey[], input: unknown): Field | undefined {
  const at = path.lastIndexOf('record');
  if (at < 0) return path[0] === 'survey' ? fieldIn('job', path) : undefined;
  const given = valueAt(input, [...path.slice(0, at), 'kind']);
  const kind = kindNames.find((each) => each === given);
  return kind && fieldIn(kind, path.slice(at + 1));
}

function sayIssue(issue: Issue, given: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return `is ${sayGiven(given)}; it wants ${wanted[issue.expected] ?? `a ${issue.expected}`}`;
    case 'invalid_value':
      return `is ${sayGiven(given)}; it wants ${oneOf(issue.values.map(String))}`;
    case 'invalid_union':
      return `is ${sayGiven(given)}, which is none of those it may be`;
    case 'invalid_format':
      return `is ${sayGiven(given)}; it wants ${formOf(issue.pattern)}`;
    case 'too_big':
      return `is too ${isLength(issue.origin) ? 'long' : 'big'}; ${String(issue.maximum)} is the most`;
    case 'too_small':
      return sayTooSmall(issue, given);
    case 'unrecognized_keys':
      return `has no field called ${issue.keys.join(', ')}`;
    default:
      return 'is not written as it should be';
  }
}

function sayTooSmall({ origin, minimum }: { origin: string; minimum: number | bigint }, given: unknown): string {
  if (given === '') return 'is empty';
  return `is too ${isLength(origin) ? 'short' : 'small'}; ${String(minimum)} is the least`;
}

function formOf(pattern = ''): string {
  return pattern.includes('{4}-') ? 'a day, such as 2026-11-25' : `the form ${pattern}`;
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
