import { basename } from 'node:path';

import { listBackups } from '#electron/book/backups.ts';
import type { Backup } from '#electron/book/backups.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { sayRecord } from '#shared-calc/words/say-record-fault.ts';
import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Session } from './session.ts';
import { refuse } from './refuse.ts';
import { orRefuse, write } from './write-acts.ts';
import type { Written } from './write-acts.ts';

/** The backups of the book, newest first, by file name. */
export function tellBackups(session: Session): Result<Output<'file.backups'>, Refusal> {
  const backups = listBackups(session.book().path);
  return ok({ backups: backups.map(({ file, day, bytes }) => ({ file: basename(file), day, bytes })) });
}

/** What restoring a backup would change, by kind of record. */
export function previewBackup(session: Session, file: string): Result<Output<'file.previewBackup'>, Refusal> {
  const backup = findBackup(session, file);
  if (!backup.ok) return backup;
  const preview = session.book().previewRestore(backup.value.file);
  if (!preview.ok) return refuse(sayBookFault(preview.fault, file));
  const { counts, kept } = preview.value;
  const differences = Object.entries(counts).map(([kind, count]) => ({ kind, ...count }));
  return ok({ differences, kept: kept.map(sayRecord) });
}

/** Restores a backup's records as one edit, which can be undone. */
export function restoreBackup(session: Session, input: Input<'file.restore'>): Result<Written, Refusal> {
  const backup = findBackup(session, input.file);
  if (!backup.ok) return backup;
  const { file, day } = backup.value;
  return write(session, input, (book) => orRefuse(book.restore(file, `backup of ${day} brought back`)));
}

/** Opens only files that are among the book's own backups. */
function findBackup(session: Session, file: string): Result<Backup, Refusal> {
  const backup = listBackups(session.book().path).find((each) => basename(each.file) === file);
  return backup ? ok(backup) : refuse(`There is no backup called ${file}.`);
}
