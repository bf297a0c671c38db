import { withLines } from '#shared-calc/recipe/write-lines.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';

/** The change that writes lines of their recipe: its own as they are, inherited ones as differences. */
export function linesWritten(records: Records, label: string, put: readonly Line[]): Change {
  const [first] = put;
  return diffRecords(label, records, first ? withLines(records, first.recipe, { put }) : records);
}
