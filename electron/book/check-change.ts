import type { EditFault, FieldIssue, RecordName } from '#shared-calc/records/book-fault.ts';
import { added, type Added, applyChange, type Change, updated, type Updated } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { findDouble } from '#shared-calc/records/doubles.ts';
import { findReferenceFault, parseRecord } from '#shared-calc/records/references.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { findIssuedFault } from './check-issued.ts';
import { namesIn } from './names-in.ts';
import type { QuoteNumbers } from './quote-numbers.ts';

export interface Checked {
  /** The change with parsed records, as it is written. */
  readonly change: Change;
  /** The book after it. */
  readonly records: Records;
}

/** Checks a change against the book as it is in the file now. */
export function checkChange(records: Records, change: Change, numbers: QuoteNumbers): Result<Checked, EditFault> {
  const clean = cleanChange(change);
  if (!clean.ok) return clean;
  const clash = findTouchedTwice(change) ?? findChanged(records, change) ?? findTaken(records, change);
  if (clash) return failed(clash);
  const next = applyChange(records, clean.value);
  const fault =
    findIssuedFault(clean.value, numbers) ?? findReferenceFault(next, clean.value) ?? findDouble(next, clean.value);
  return fault ? failed(fault) : ok({ change: clean.value, records: next });
}

function cleanChange(change: Change): Result<Change, EditFault> {
  const clean: { readonly added: Added[]; readonly updated: Updated[] } = { added: [], updated: [] };
  for (const { kind, record } of change.added) {
    const read = parseRecord(kind, record);
    if (!read.ok) return failed(notValid({ kind, id: String(record.id) }, read.fault));
    clean.added.push(added(kind, read.value));
  }
  for (const { kind, from, to } of change.updated) {
    const read = parseRecord(kind, to);
    if (!read.ok) return failed(notValid({ kind, id: String(from.id) }, read.fault));
    if (!sameData(from, read.value)) clean.updated.push(updated(kind, from, read.value));
  }
  return ok({ ...change, ...clean });
}

function notValid(record: RecordName, issues: readonly FieldIssue[]): EditFault {
  return { kind: 'not-valid', record, issues };
}

function findTouchedTwice(change: Change): EditFault | undefined {
  const seen = new Set<string>();
  for (const record of namesIn(change)) {
    const key = `${record.kind} ${record.id}`;
    if (seen.has(key)) return { kind: 'touched-twice', record };
    seen.add(key);
  }
  const renamed = change.updated.find(({ from, to }) => from.id !== to.id);
  if (!renamed) return undefined;
  const record = { kind: renamed.kind, id: renamed.from.id };
  return notValid(record, [{ field: 'id', code: 'id-changed', says: renamed.to.id }]);
}

function findChanged(records: Records, change: Change): EditFault | undefined {
  const before = [
    ...change.updated.map(({ kind, from }) => ({ kind, from })),
    ...change.removed.map(({ kind, record }) => ({ kind, from: record })),
  ];
  const changed = before.filter(({ kind, from }) => !sameData(records[kind].get(from.id), from));
  if (changed.length === 0) return undefined;
  return { kind: 'changed-elsewhere', records: changed.map(({ kind, from }) => ({ kind, id: from.id })) };
}

function findTaken(records: Records, change: Change): EditFault | undefined {
  const taken = change.added.filter(({ kind, record }) => records[kind].has(record.id));
  if (taken.length === 0) return undefined;
  return { kind: 'id-taken', records: taken.map(({ kind, record }) => ({ kind, id: record.id })) };
}
