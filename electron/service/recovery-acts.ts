import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import { contentsOf } from '#electron/book/backup-contents.ts';
import { listBackups } from '#electron/book/backups.ts';
import { openBook } from '#electron/book/open-book.ts';
import { putAside } from '#electron/book/put-aside.ts';
import { recoverBook } from '#electron/book/recover-book.ts';
import { readSalvage, salvageBook } from '#electron/book/salvage-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { SeedOptions } from '#electron/book/seed-demo.ts';
import { isBookFile } from '#electron/book/header.ts';
import type { BookInfo, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { refuse } from './refuse.ts';
import type { Session } from './session.ts';

const isOpen = 'The book is open.';

/** Why the book cannot be opened, its backups with what each holds, and what its file still gives. */
export function readRecovery(session: Session): Result<Output<'recovery.read'>, Refusal> {
  const unopened = session.unopened();
  if (!unopened) return refuse(isOpen);
  const { path, fault } = unopened;
  const backups = listBackups(path).map(({ file, day, bytes }) => {
    const holds = contentsOf(file);
    return { file: basename(file), day, bytes, ...(holds && { holds }) };
  });
  const says = sayBookFault(fault, basename(path));
  return ok({ name: basename(path), path, says, backups, ...salvageOf(session, path), isThere: existsSync(path) });
}

function salvageOf(session: Session, path: string): Pick<Output<'recovery.read'>, 'salvage'> {
  if (!isBookFile(path)) return {};
  const read = readSalvage(path, optionsOf(session));
  if (!read.ok || read.value.kinds.length === 0) return {};
  const { kinds, knowsLost } = read.value;
  const counted = kinds.map((each) => ({ ...each, lost: each.lost.length, altered: each.altered.length }));
  return { salvage: { kinds: counted, knowsLost } };
}

/** Puts a backup in the place of the book; what is there is put aside. */
export function putBackupInPlace(session: Session, file: string): Result<BookInfo, Refusal> {
  const unopened = session.unopened();
  if (!unopened) return refuse(isOpen);
  const { path } = unopened;
  const backup = listBackups(path).find((each) => basename(each.file) === file);
  if (!backup) return refuse(`There is no backup called ${file}.`);
  const done = recoverBook(path, backup.file, optionsOf(session));
  return done.ok ? openNow(session, path) : refuse(sayBookFault(done.fault, file));
}

/** Opens a new book of what the file still gives. */
export function openSalvage(session: Session): Result<BookInfo, Refusal> {
  const unopened = session.unopened();
  if (!unopened) return refuse(isOpen);
  const made = salvageBook(unopened.path, optionsOf(session));
  if (!made.ok) return refuse(sayBookFault(made.fault, basename(unopened.path)));
  session.replace(made.value);
  return session.info();
}

/** Gives the file another name, so that its own is free. */
export function putFileAside(session: Session): Result<Output<'recovery.putAside'>, Refusal> {
  const unopened = session.unopened();
  if (!unopened) return refuse(isOpen);
  const aside = putAside(unopened.path, session.options.today());
  if (aside === undefined) return refuse(sayBookFault({ kind: 'missing' }, unopened.path));
  session.tryAgain();
  return ok({ aside });
}

function openNow(session: Session, path: string): Result<BookInfo, Refusal> {
  const opened = openBook(path, optionsOf(session));
  if (!opened.ok) return refuse(sayBookFault(opened.fault, basename(path)));
  session.replace(opened.value);
  return session.info();
}

function optionsOf({ options: { today, demoFolder } }: Session): SeedOptions {
  return { today: today(), ...(demoFolder !== undefined && { demoFolder }) };
}
