import { capital } from '#shared-calc/rule/capital.ts';
import { most, type Excess } from '#shared-calc/contract/find-excess.ts';
import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

const tellAtMost = 3;

/** What is wrong with the input of a channel: the fault, the field and its record, and what to do. */
export function sayInputFault({ issues }: z.ZodError, data: unknown): string {
  const first = issues.slice(0, tellAtMost);
  const said = first.map((issue) => `${placeOf(issue.path, data)} ${sayIssue(issue, valueAt(data, issue.path))}`);
  if (first.every(isTooLong)) return `${capital(said.join('; '))}. Shorten it; nothing was written.`;
  return `This cannot be taken as it stands: ${said.join('; ')}. Nothing was done.`;
}

/** What is too large in the input of a channel. */
export function sayExcess({ of, found }: Excess): string {
  const says: Readonly<Record<Excess['of'], string>> = {
    entries: `a list has ${figure(found)} entries; ${figure(most.entries)} is the most`,
    letters: `a text has ${figure(found)} letters; ${figure(most.letters)} is the most`,
    depth: `lists lie deeper than ${figure(most.depth)} in one another`,
  };
  return `This is too much for one edit: ${says[of]}. Nothing was done.`;
}

function isTooLong(issue: Issue): boolean {
  return issue.code === 'too_big' && issue.origin === 'string';
}

function sayIssue(issue: Issue, given: unknown): string {
  switch (issue.code) {
    case 'too_big':
      return `${sayAmount(given)}; ${figure(issue.maximum)} ${issue.inclusive === false ? 'is too much' : 'is the most'}`;
    case 'too_small':
      return given === '' ? 'is empty' : `${sayAmount(given)}; ${figure(issue.minimum)} is the least`;
    case 'invalid_type':
      return given === undefined ? 'is missing' : `is not ${wanted[issue.expected] ?? `a ${issue.expected}`}`;
    case 'invalid_value':
      return `is none of ${issue.values.map(String).join(', ')}`;
    case 'unrecognized_keys':
      return `has no field called ${issue.keys.slice(0, tellAtMost).join(', ')}`;
    default:
      return 'is not written as it should be';
  }
}

const wanted: Readonly<Record<string, string>> = {
  string: 'a text',
  int: 'a whole number',
  boolean: 'a yes or no',
  array: 'a list',
  object: 'a record',
};

function sayAmount(given: unknown): string {
  if (typeof given === 'string') return `has ${figure(given.length)} letters`;
  return Array.isArray(given) ? `has ${figure(given.length)} entries` : `is ${String(given)}`;
}

/** Thousands with a comma, as in 2,000. */
function figure(amount: number | bigint): string {
  return amount.toLocaleString('en');
}

/** `the note of the local value J01-T08.drain_gap`: the field, and its record if it is in one. */
function placeOf(path: readonly PropertyKey[], data: unknown): string {
  const at = path.findLastIndex((each) => each === 'record' || each === 'from' || each === 'to');
  const holder = at < 0 ? undefined : fieldsOf(valueAt(data, path.slice(0, at)));
  const { kind } = holder ?? {};
  const name = path.slice(at + 1).findLast((each) => typeof each === 'string');
  const field = name === undefined ? '' : `the ${inWords(name)}`;
  if (typeof kind !== 'string') return field === '' ? 'what was sent' : field;
  const { id } = fieldsOf(valueAt(data, path.slice(0, at + 1)));
  const record = `the ${inWords(kind)}${typeof id === 'string' ? ` ${id.slice(0, 120)}` : ''}`;
  return field === '' ? record : `${field} of ${record}`;
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let at = data;
  for (const each of path) at = fieldsOf(at)[each];
  return at;
}

function fieldsOf(value: unknown): Readonly<Record<PropertyKey, unknown>> {
  return typeof value === 'object' && value !== null ? { ...value } : {};
}

/** `localValue` as "local value". */
function inWords(name: string): string {
  return name.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
