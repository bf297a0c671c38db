import type { Line, RecordKind, RecordOf, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { allLines, lineById } from '#shared-calc/recipe/lines-of.ts';
import type { ActFault } from './act-fault.ts';

/** A record of the book by its id; if there is none, the fault names the nearest id. */
export function findRecord<K extends RecordKind>(records: Records, kind: K, id: string): Result<RecordOf<K>, ActFault> {
  const table: ReadonlyMap<string, RecordOf<K>> = records[kind];
  const found = table.get(id);
  if (found) return ok(found);
  const near = nearestName(id, table.keys());
  return failed({ kind: 'no-record', record: { kind, id }, ...(near !== undefined && { near }) });
}

/** A line of any recipe by its id there, inherited ones among them. */
export function findLine(records: Records, id: string): Result<Line, ActFault> {
  const line = lineById(records, id);
  if (line) return ok(line);
  const near = nearestName(
    id,
    allLines(records).map((each) => each.id),
  );
  return failed({ kind: 'no-record', record: { kind: 'line', id }, ...(near !== undefined && { near }) });
}
