import { applyChange, type Added, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';

/** Whether a change can be applied to these records: everything it touches is as the change expects it. */
export function fits(records: Records, { added, updated, removed }: Change): boolean {
  return (
    added.every(({ kind, record }) => !records[kind].has(record.id)) &&
    updated.every(({ kind, from }) => sameData(records[kind].get(from.id), from)) &&
    removed.every((each) => stands(records, each))
  );
}

/** Whether these records already are as the change leaves them. */
export function isDone(records: Records, { added, updated, removed }: Change): boolean {
  return (
    added.every((each) => stands(records, each)) &&
    updated.every(({ kind, to }) => sameData(records[kind].get(to.id), to)) &&
    removed.every(({ kind, record }) => !records[kind].has(record.id))
  );
}

export interface Rebased {
  readonly records: Records;
  readonly kept: readonly Change[];
  /** Edits that no longer fit the changed book. */
  readonly lost: readonly Change[];
}

/** Applies the edits that are not stored yet again, on a book that others have changed meanwhile. */
export function rebase(base: Records, edits: readonly Change[]): Rebased {
  const kept: Change[] = [];
  const lost: Change[] = [];
  let records = base;
  for (const edit of edits) {
    const well = fits(records, edit);
    (well ? kept : lost).push(edit);
    if (well) records = applyChange(records, edit);
  }
  return { records, kept, lost };
}

function stands(records: Records, { kind, record }: Added): boolean {
  return sameData(records[kind].get(record.id), record);
}
