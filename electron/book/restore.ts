import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BookFault, RecordName } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { allKinds, mapKinds, type RecordKind, type RecordOf, type Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { meantBy, referencesOf } from '#shared-calc/records/references.ts';
import { isOpenHere } from './connection.ts';
import { openFile } from './open-file.ts';
import type { OpenOptions } from './open-options.ts';
import { storing } from './storage-fault.ts';

export interface RestoreCounts {
  readonly added: number;
  readonly changed: number;
  readonly removed: number;
}

export interface RestorePreview {
  /** Only the kinds in which something changes. */
  readonly counts: { readonly [K in RecordKind]?: RestoreCounts };
  /** What stays although the backup does not have it: issued quotes, orders and what they refer to. */
  readonly kept: readonly RecordName[];
}

type Tables = { readonly [K in RecordKind]: Map<string, RecordOf<K>> };

/** The records of a backup, read from a copy that is migrated to the newest version. */
export function readBackup(file: string, options: OpenOptions): Result<Records, BookFault> {
  if (!existsSync(file)) return failed({ kind: 'missing' });
  if (isOpenHere(file)) return failed({ kind: 'in-use' });
  return storing(() => {
    const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
    try {
      return readCopy(file, join(folder, 'book'), options);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
}

function readCopy(file: string, copy: string, options: OpenOptions): Result<Records, BookFault> {
  copyFileSync(file, copy);
  if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
  const opened = openFile(copy, { ...options, backups: false });
  if (!opened.ok) return opened;
  const present = opened.value.state.present();
  opened.value.connection.close();
  return present.ok ? ok(present.value.records) : present;
}

export function previewOf(present: Records, backup: Records): RestorePreview {
  const { change, kept } = restoreChange('', present, backup);
  const count = (kind: RecordKind, each: readonly { readonly kind: RecordKind }[]) =>
    each.filter((one) => one.kind === kind).length;
  const counts = allKinds.map((kind): readonly [RecordKind, RestoreCounts] => [
    kind,
    { added: count(kind, change.added), changed: count(kind, change.updated), removed: count(kind, change.removed) },
  ]);
  const changing = counts.filter(([, { added, changed, removed }]) => added + changed + removed > 0);
  return { counts: Object.fromEntries(changing), kept };
}

/** The edit that restores a backup's records. */
export function restoreChange(
  label: string,
  present: Records,
  backup: Records,
): { readonly change: Change; readonly kept: readonly RecordName[] } {
  const toKeep = recordsToKeep(present, backup);
  const wanted = mapKinds<Tables>((kind) => new Map<string, unknown>(backup[kind]));
  for (const [id, quote] of present.issuedQuote) wanted.issuedQuote.set(id, quote);
  for (const [id, order] of present.order) wanted.order.set(id, order);
  for (const { kind, id } of toKeep) copyRecord(kind, id, present, wanted);
  return { change: diffRecords(label, present, wanted), kept: toKeep };
}

function copyRecord<K extends RecordKind>(kind: K, id: string, from: Records, to: Tables): void {
  const record = from[kind].get(id);
  if (record) to[kind].set(id, record);
}

/** Issued quotes and orders that the backup does not have, and everything they refer to. */
function recordsToKeep(present: Records, backup: Records): readonly RecordName[] {
  const isMissing = ({ kind, id }: RecordName) => present[kind].has(id) && !backup[kind].has(id);
  const kinds = ['issuedQuote', 'order'] as const;
  const sent = kinds.flatMap((kind) => [...present[kind].keys()].map((id): RecordName => ({ kind, id })));
  const needed = sent.flatMap((each) => meantRecords(present, each));
  const missing = sent.filter(isMissing);
  const seen = new Set<string>();
  for (let next = needed.pop(); next; next = needed.pop()) {
    const key = `${next.kind} ${next.id}`;
    if (seen.has(key) || !isMissing(next)) continue;
    seen.add(key);
    missing.push(next);
    needed.push(...meantRecords(present, next));
  }
  return missing;
}

function meantRecords(records: Records, { kind, id }: RecordName): readonly RecordName[] {
  const record = records[kind].get(id);
  if (!record) return [];
  return referencesOf(kind).flatMap((reference) => {
    const meant = meantBy(record, reference);
    return meant === undefined ? [] : reference.kinds.map((each) => ({ kind: each, id: meant }));
  });
}
