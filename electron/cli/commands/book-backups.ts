import { existsSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { listBackups } from '#electron/book/backups.ts';
import { openBook } from '#electron/book/open-book.ts';
import { ownBookPath } from '#electron/book/own-book-path.ts';
import { contentsOf } from '#electron/book/backup-contents.ts';
import { readSalvage, type Salvage, salvageBook } from '#electron/book/salvage-book.ts';
import { recoverBook } from '#electron/book/recover-book.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { type Outcome, refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { today } from '#electron/service/today.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Lists the backups of a book, newest first, with what each holds, though the book itself cannot be opened. */
const bookBackupsCommand: Command = {
  name: 'book backups',
  usage: 'book backups [--book FILE]: lists the backups of a book, newest first, with what each holds',
  options: bookOption,
  run: (given) => {
    const backups = listBackups(bookFile(given));
    if (backups.length === 0) return refusal(`No backup of ${bookFile(given)} was found.`);
    const json = backups.map(({ file, day, bytes, beforeMigrationFrom: from }) => ({
      file,
      day,
      bytes,
      ...(from !== undefined && { beforeVersion: from + 1 }),
      holds: contentsOf(file) ?? null,
    }));
    const rows = json.map(({ file, day, bytes, beforeVersion, holds }) => [
      day,
      beforeVersion === undefined ? '' : `before version ${beforeVersion}`,
      `${Math.ceil(bytes / 1024)} kB`,
      ...(holds ? [holds.jobs, holds.tanks, holds.materials].map(String) : ['cannot be read', '', '']),
      file,
    ]);
    const heads = ['day', '', 'size', 'jobs', 'tanks', 'materials', 'file'];
    return { is: 'answer', json, table: () => textTable(heads, rows, [2, 3, 4, 5]) };
  },
};

/** Brings the records of a backup back into a book that opens, as one edit. */
const bookRestoreCommand: Command = {
  name: 'book restore',
  usage: 'book restore DAY|FILE [--book FILE]: brings a backup back into a book that opens; can be undone',
  options: bookOption,
  misuse: oneBackup('book restore'),
  run: (given) =>
    withBook(given, (book) => {
      const backup = backupAsked(given);
      if (!backup.ok) return refusal(backup.fault);
      const done = book.restore(backup.value, `${basename(backup.value)} brought back`);
      if (!done.ok) return refusal(sayBookFault(done.fault, backup.value));
      const { revision } = done.value;
      return { is: 'answer', json: { restored: backup.value, revision }, table: () => `Restored: ${backup.value}` };
    }),
};

/** Puts a backup in the place of a book that is missing, cannot be opened or is not sound. */
const bookRecoverCommand: Command = {
  name: 'book recover',
  usage:
    'book recover [DAY|FILE] [--salvage [--try]] [--book FILE]: puts the last backup, or this one, in the place of a book that does not open or is not sound; the old file is kept beside it; --salvage makes a new book of what the damaged file still gives',
  options: { ...bookOption, salvage: 'flag', try: 'flag' },
  misuse: recoverMisuse,
  run: (given) => {
    const path = bookFile(given);
    if (given.flag('salvage')) return salvage(path, given.flag('try'));
    const opens = openBook(path, { today: today(), backups: false });
    if (opens.ok) {
      const checked = opens.value.check();
      opens.value.close();
      if (checked.ok && checked.value.sound)
        return refusal(`${path} opens and is sound. To bring back what a backup says: book restore DAY`);
    }
    const backup = backupAsked(given);
    if (!backup.ok) return refusal(backup.fault);
    const done = recoverBook(path, backup.value, { today: today() });
    if (!done.ok) return refusal(sayBookFault(done.fault, backup.value));
    const { aside } = done.value;
    const json = { recovered: path, from: backup.value, aside: aside ?? null };
    const kept = aside === undefined ? '' : `\nThe file that was there is kept: ${aside}`;
    return { is: 'answer', json, table: () => `Recovered: ${path}, from ${backup.value}${kept}` };
  },
};

function recoverMisuse(given: Arguments): string | undefined {
  if (given.words.length > 1) return 'Name one backup at most: book recover 2027-03-10';
  const salvages = given.flag('salvage');
  if (salvages && given.words.length > 0) return '--salvage reads the damaged file and takes no backup.';
  return given.flag('try') && !salvages ? '--try goes with --salvage.' : undefined;
}

/** Makes a new book of what a damaged file still gives, beside it; only tells of it with `isTry`. */
function salvage(path: string, isTry: boolean): Outcome {
  const read = readSalvage(path, { today: today() });
  if (!read.ok) return refusal(sayBookFault(read.fault, path));
  const { kinds, knowsLost } = read.value;
  if (kinds.length === 0) return refusal(`Nothing can be read from ${path}.`);
  const made = isTry ? undefined : salvageBook(path, { today: today(), backups: false });
  if (made && !made.ok) return refusal(sayBookFault(made.fault, path));
  made?.value.close();
  return tellSalvage({ from: path, made: made?.value.path ?? null, knowsLost, kinds });
}

interface Salvaged extends Pick<Salvage, 'knowsLost' | 'kinds'> {
  readonly from: string;
  readonly made: string | null;
}

function tellSalvage(json: Salvaged): Outcome {
  const { made, knowsLost, kinds } = json;
  const rows = kinds.map(({ kind, came, filled, altered, lost }) =>
    [kind, came - filled, filled, altered.length, lost.length].map(String),
  );
  const heads = ['records', 'from the file', 'from the backup', 'altered', 'lost'];
  const lost = knowsLost
    ? ''
    : '\nWhat there was cannot be read in full: more may be lost, and what was removed since the backup may be back.';
  const end = made === null ? 'Nothing is made yet.' : `Made: ${made}`;
  return { is: 'answer', json, table: () => `${textTable(heads, rows, [1, 2, 3, 4])}\n\n${end}${lost}` };
}

function oneBackup(command: string): (given: Arguments) => string | undefined {
  return ({ words }) => (words.length === 1 ? undefined : `Name one backup: ${command} 2027-03-10`);
}

function bookFile(given: Arguments): string {
  return resolve(given.text('book') ?? ownBookPath());
}

/** The backup of a day, the newest where none is named, or any file. */
function backupAsked(given: Arguments): Result<string, string> {
  const [asked] = given.words;
  const daily = listBackups(bookFile(given)).filter(({ beforeMigrationFrom }) => beforeMigrationFrom === undefined);
  const found = asked === undefined ? daily[0] : daily.find(({ day }) => day === asked);
  if (found) return ok(found.file);
  if (asked !== undefined && existsSync(asked)) return ok(resolve(asked));
  const says = asked === undefined ? 'No backup' : `No backup from ${asked}`;
  return failed(`${says} of ${bookFile(given)} was found. Those that are there: book backups`);
}

export const bookBackupCommands: readonly Command[] = [bookBackupsCommand, bookRestoreCommand, bookRecoverCommand];
