import { isUnsent } from '#shared-calc/jobs/issue-quote.ts';
import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { BadRecord, EditFault } from '#shared-calc/records/book-fault.ts';
import { allKinds, mapKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { findLooseReference } from '#shared-calc/records/references.ts';
import { type AlteredRow, findAltered } from './checksums.ts';
import { verifyIssued } from './issued.ts';
import { findJournalGap, openJournal } from './journal.ts';
import { openQuoteNumbers } from './quote-numbers.ts';
import { readRecords } from './read-records.ts';
import { type JournalFinding, replayBack } from './replay-back.ts';
import { sqlName } from './tables.ts';

export type Finding =
  /** The database's own message. */
  | { readonly kind: 'file'; readonly says: string }
  | { readonly kind: 'record'; readonly record: BadRecord }
  | { readonly kind: 'reference'; readonly fault: EditFault }
  | { readonly kind: 'loose-row'; readonly table: string; readonly parent: string }
  | { readonly kind: 'issued-altered'; readonly id: string; readonly number: string; readonly revision: string }
  | { readonly kind: 'number-not-noted'; readonly id: string; readonly number: string; readonly revision: string }
  | { readonly kind: 'row-altered'; readonly row: AlteredRow }
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

/** Checks everything a book holds, as of one moment. */
export function checkBook(db: Database.Database): BookReport {
  return db.transaction(() => report(db))();
}

function report(db: Database.Database): BookReport {
  const records = readRecords(db);
  const findings = [
    ...checkFile(db),
    ...findAltered(db).map((row): Finding => ({ kind: 'row-altered', row })),
    ...checkJournalRows(db),
    ...(records.ok ? checkRecords(db, records.value.records) : checkRows(db, records.fault)),
  ];
  return {
    sound: findings.length === 0,
    version: z.int().parse(db.pragma('user_version', { simple: true })),
    revision: openJournal(db).revision(),
    counts: countRecords(db),
    findings,
  };
}

function countRecords(db: Database.Database): Readonly<Record<RecordKind, number>> {
  const count = (kind: RecordKind) =>
    db
      .prepare(`SELECT count(*) FROM "${sqlName(kind)}"`)
      .pluck()
      .get();
  return mapKinds<Readonly<Record<RecordKind, number>>>((kind) => z.int().parse(count(kind)));
}

function checkFile(db: Database.Database): readonly Finding[] {
  const says = z.array(z.string()).parse(db.prepare('PRAGMA integrity_check').pluck().all());
  return says.filter((each) => each !== 'ok').map((each): Finding => ({ kind: 'file', says: each }));
}

/** Checks what can be checked of records that cannot all be read. */
function checkRows(db: Database.Database, bad: readonly BadRecord[]): readonly Finding[] {
  const loose = z.array(LooseRow).parse(db.pragma('foreign_key_check'));
  return [
    ...bad.map((record): Finding => ({ kind: 'record', record })),
    ...loose.map(({ table, parent }): Finding => ({ kind: 'loose-row', table, parent })),
  ];
}

function checkJournalRows(db: Database.Database): readonly Finding[] {
  const gap = findJournalGap(db);
  return gap ? [{ kind: 'journal-gap', ...gap }] : [];
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
      ...(isUnsent(quote) || numbers.usedBy(quote) === sha256 ? [] : [{ kind: 'number-not-noted', ...quote } as const]),
    ];
  });
}
