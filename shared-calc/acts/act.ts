import type { z } from 'zod';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import { findDouble } from '#shared-calc/records/doubles.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { findReferenceFault, parseRecord } from '#shared-calc/records/references.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { ActFault } from './act-fault.ts';
import { logged } from './house-log.ts';
import { inputIssues } from './input-issues.ts';
import { withSold } from './sell-jobs.ts';

/** An edit that a person can make on a book, on a given day. */
export interface Act<I = unknown> {
  readonly name: string;
  /** What it does, in one sentence. */
  readonly says: string;
  readonly input: z.ZodType<I>;
  // A method, so that acts with different inputs fit in one list.
  run(derived: Derived, input: I): Result<Change, ActFault>;
}

/** An act whose change is checked against the rules of a book: schemas, references, unique records. */
export function act<I>(parts: Act<I>): Act<I> {
  return {
    ...parts,
    run: (derived, input) => {
      const done = parts.run(derived, input);
      return done.ok ? checked(derived.records, completed(derived, done.value)) : done;
    },
  };
}

/** Every act that writes a line of a house writes its log, and every act that sells a job says as what. */
function completed(derived: Derived, change: Change): Change {
  return withSold(derived, logged(derived.records, change, derived.today));
}

function checked(records: Records, change: Change): Result<Change, ActFault> {
  const written = [...change.added, ...change.updated.map(({ kind, to }) => ({ kind, record: to }))];
  for (const { kind, record } of written) {
    const read = parseRecord(kind, record);
    if (!read.ok) return failed({ kind: 'not-valid', record: { kind, id: record.id }, issues: read.fault });
  }
  const next = applyChange(records, change);
  const fault = findReferenceFault(next, change) ?? findDouble(next, change);
  return fault ? failed(fault) : ok(change);
}

/** Runs an act on an input from outside; the act's schema parses the input first. */
export function runAct(one: Act, derived: Derived, raw: unknown): Result<Change, ActFault> {
  const input = one.input.safeParse(raw);
  if (input.success) return one.run(derived, input.data);
  const issues = inputIssues(input.error, raw);
  return failed({ kind: 'bad-input', at: issues[0]?.field ?? '', issues });
}

/** The ids of the records that a change adds, in reference order. */
export function idsOf({ added }: Change): readonly string[] {
  return added.map(({ record }) => record.id);
}
