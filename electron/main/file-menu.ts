import { actNames } from '#shared-calc/words/act-names.ts';
import { dirname, join } from 'node:path';

import type { BrowserWindow, Dialog, FileFilter } from 'electron';

import type { Begun } from '#electron/book/seed-demo.ts';
import type { BookFiles } from '#electron/service/book-files.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { BookInfo, Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { readAnswer } from '#shared-calc/contract/read-answer.ts';
import type { Result } from '#shared-calc/result.ts';

/** What the File menu uses: Electron's dialogs over the window, and the same channels as the page. */
export interface FileMenu {
  readonly dialog: Pick<Dialog, 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox'>;
  readonly window: BrowserWindow;
  readonly files: BookFiles;
  readonly call: (channel: Channel, input: unknown) => Result<unknown, Refusal>;
}

const books: FileFilter[] = [{ name: 'Loamwright books', extensions: ['loamwright'] }];

export async function chooseBook(menu: FileMenu): Promise<void> {
  const chosen = await menu.dialog.showOpenDialog(menu.window, {
    title: actNames.openBook,
    filters: books,
    properties: ['openFile'],
  });
  const [path] = chosen.filePaths;
  if (!chosen.canceled && path !== undefined) await openChosen(menu, path);
}

export async function openChosen(menu: FileMenu, path: string): Promise<void> {
  await sayRefusal(menu, menu.files.open(path));
}

export async function makeBook(menu: FileMenu, begun: Begun): Promise<void> {
  const path = await askWhere(menu, actNames.newBook, beside(menu, 'New workshop.loamwright'));
  if (path !== undefined) await sayRefusal(menu, menu.files.make(path, begun));
}

/** The dialog has already asked whether an existing file may be replaced. */
export async function saveCopyAs(menu: FileMenu): Promise<void> {
  const path = await askWhere(
    menu,
    actNames.saveCopy,
    beside(menu, `Copy of ${here(menu)?.name ?? 'book.loamwright'}`),
  );
  if (path !== undefined) await sayRefusal(menu, menu.files.saveCopy(path, { replace: true }));
}

/** Backups are in a folder next to the book. The user chooses one, sees what would change, and restores it. */
export async function restoreChosen(menu: FileMenu): Promise<void> {
  const listed = ask(menu, 'file.backups', {});
  if (!listed.ok) return sayRefusal(menu, listed);
  const latest = listed.value.backups.slice(0, 8);
  if (latest.length === 0)
    return say(menu, 'There is no backup of this book yet.', 'One is made each day that it is opened.');
  const chosen = await choose(
    menu,
    'Which backup?',
    latest.map(({ file, day }) => backupWords(file, day)),
  );
  const backup = chosen === undefined ? undefined : latest[chosen];
  if (backup) await weighAndRestore(menu, backup.file);
}

async function weighAndRestore(menu: FileMenu, file: string): Promise<void> {
  const preview = ask(menu, 'file.previewBackup', { file });
  const info = here(menu);
  if (!preview.ok) return sayRefusal(menu, preview);
  const sure = await choose(menu, `Restore ${file}? ${previewWords(preview.value)}`, ['Restore it']);
  if (sure === undefined || !info) return;
  await sayRefusal(menu, ask(menu, 'file.restore', { opening: info.opening, onRevision: info.revision, file }));
}

/** "2 sizes added, 1 job changed"; undo reverts it. */
export function previewWords({ differences, kept }: Output<'file.previewBackup'>): string {
  const parts = differences.flatMap(({ kind, ...counts }) =>
    (['added', 'changed', 'removed'] as const)
      .filter((act) => counts[act] > 0)
      .map((act) => `${kind}: ${counts[act]} ${act}`),
  );
  if (parts.length === 0) return 'It is the same as the book.';
  const stays = kept.length === 0 ? '' : ` Issued quotes stay, with what they need.`;
  return `${parts.join(', ')}.${stays} Undo takes it back.`;
}

function backupWords(file: string, day: string): string {
  const version = / version (\d+)\./.exec(file)?.[1];
  return version === undefined ? day : `${day}, before form ${version} was changed`;
}

function ask<C extends Channel>(menu: FileMenu, channel: C, input: Input<C>): Result<Output<C>, Refusal> {
  return readAnswer(channel, menu.call(channel, input));
}

function here(menu: FileMenu): BookInfo | undefined {
  const info = ask(menu, 'book.info', {});
  return info.ok ? info.value : undefined;
}

function beside(menu: FileMenu, name: string): string {
  const info = here(menu);
  return info ? join(dirname(info.path), name) : name;
}

async function askWhere({ dialog, window }: FileMenu, title: string, defaultPath: string): Promise<string | undefined> {
  const chosen = await dialog.showSaveDialog(window, { title, defaultPath, filters: books });
  return chosen.canceled || chosen.filePath === '' ? undefined : chosen.filePath;
}

/** Asks for one of these options; `undefined` if cancelled. */
async function choose(
  { dialog, window }: FileMenu,
  message: string,
  answers: readonly string[],
): Promise<number | undefined> {
  const buttons = [...answers, actNames.cancel];
  const cancelId = answers.length;
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message,
    buttons,
    cancelId,
    defaultId: cancelId,
  });
  return response < answers.length ? response : undefined;
}

async function sayRefusal(menu: FileMenu, done: Result<unknown, Refusal>): Promise<void> {
  if (!done.ok) await say(menu, done.fault.says);
}

async function say({ dialog, window }: FileMenu, message: string, detail = ''): Promise<void> {
  await dialog.showMessageBox(window, { type: 'info', message, detail, buttons: ['Good'] });
}
