import type Database from 'better-sqlite3';
import { z } from 'zod';

import type { BadRecord, EditFault } from '#shared-calc/records/book-fault.ts';
import { allKinds } from '#shared-calc/records/records.ts';
import type { RecordKind, Records } from '#shared-calc/records/records.ts';

import { findLooseReference } from './check-references.ts';
import { verifyIssued } from './issued.ts';
import { openJournal } from './journal.ts';
import { openQuoteNumbers } from './quote-numbers.ts';
import { readRecords } from './read-records.ts';
import { replayBack } from './replay-back.ts';
import type { JournalFinding } from './replay-back.ts';

export type Finding =
  /** In the words of the database. */
  | { readonly kind: 'file'; readonly says: string }
  | { readonly kind: 'record'; readonly record: BadRecord }
  | { readonly kind: 'reference'; readonly fault: EditFault }
  | { readonly kind: 'loose-row'; readonly table: string; readonly parent: string }
  | { readonly kind: 'issued-altered'; readonly id: string; readonly number: string; readonly revision: string }
  | { readonly kind: 'number-not-noted'; readonly id: string; readonly number: string; readonly revision: string }
  | { readonly kind: 'journal-gap'; readonly rows: number; readonly revision: number }
  | JournalFinding;

export interface BookReport {
  readonly sound: boolean;
  readonly version: number;
  readonly revision: number;
  readonly counts: Readonly<Record<RecordKind, number>>;
  readonly findings: readonly Finding[];
}

const LooseRow = z.object({ table: z.string(), parent: z.string() });

/** Looks through everything a book holds, as it stands at one moment. */
export function checkBook(db: Database.Database): BookReport {
  return db.transaction(() => report(db))();
}

function report(db: Database.Database): BookReport {
  const records = readRecords(db);
  const findings = [
    ...checkFile(db),
    ...checkJournalRows(db),
    ...(records.ok
      ? checkRecords(db, records.value)
      : records.fault.map((record): Finding => ({ kind: 'record', record }))),
  ];
  return {
    sound: findings.length === 0,
    version: z.int().parse(db.pragma('user_version', { simple: true })),
    revision: openJournal(db).revision(),
    counts: countRecords(records.ok ? records.value : undefined),
    findings,
  };
}

function countRecords(records: Records | undefined): Readonly<Record<RecordKind, number>> {
  const counts = allKinds.map((kind) => [kind, records?.[kind].size ?? 0] as const);
  return Object.fromEntries(counts) as Record<RecordKind, number>;
}

function checkFile(db: Database.Database): readonly Finding[] {
  const says = z.array(z.string()).parse(db.prepare('PRAGMA integrity_check').pluck().all());
  const loose = z.array(LooseRow).parse(db.pragma('foreign_key_check'));
  return [
    ...says.filter((each) => each !== 'ok').map((each): Finding => ({ kind: 'file', says: each })),
    ...loose.map(({ table, parent }): Finding => ({ kind: 'loose-row', table, parent })),
  ];
}

/** Revisions run from 1 on without a gap. */
function checkJournalRows(db: Database.Database): readonly Finding[] {
  const revision = openJournal(db).revision();
  const rows = z.int().parse(db.prepare('SELECT count(*) FROM journal WHERE revision > 0').pluck().get());
  return rows === revision ? [] : [{ kind: 'journal-gap', rows, revision }];
}

function checkRecords(db: Database.Database, records: Records): readonly Finding[] {
  return [...checkReferences(records), ...checkQuotes(db, records), ...replayBack(openJournal(db), records)];
}

function checkReferences(records: Records): readonly Finding[] {
  const whole = allKinds.flatMap((kind) => [...records[kind].values()].map((record) => ({ kind, record })));
  return whole.flatMap((each): readonly Finding[] => {
    const fault = findLooseReference(records, [each]);
    return fault ? [{ kind: 'reference', fault }] : [];
  });
}

function checkQuotes(db: Database.Database, records: Records): readonly Finding[] {
  const numbers = openQuoteNumbers(db);
  const altered = new Set(verifyIssued(records).flatMap(({ id, holds }) => (holds ? [] : [id])));
  return [...records.issuedQuote.values()].flatMap(({ id, number, revision, sha256 }): readonly Finding[] => {
    const quote = { id, number, revision };
    return [
      ...(altered.has(id) ? [{ kind: 'issued-altered', ...quote } as const] : []),
      ...(numbers.usedBy(quote) === sha256 ? [] : [{ kind: 'number-not-noted', ...quote } as const]),
    ];
  });
}
