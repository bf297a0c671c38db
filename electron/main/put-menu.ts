import { dialog, Menu, type BrowserWindow, type IpcMain } from 'electron';
import { z } from 'zod';
import type { Service } from '#electron/service/open-service.ts';
import { readAnswer } from '#shared-calc/contract/read-answer.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';
import { chooseBook, makeBook, openChosen, restoreChosen, saveCopyAs, type FileMenu } from './file-menu.ts';
import { beginnings } from '#shared-calc/contract/beginnings.ts';
import { fileCalls } from '#shared-calc/contract/file-calls.ts';
import { isTrustedSender } from './trusted-url.ts';
import { menuOf, type MenuActs } from './menu.ts';
import { printPage, printToFile } from './print-page.ts';

export function fileMenuOf(service: Service, window: BrowserWindow): FileMenu {
  return { dialog, window, call: service.call, files: service.files };
}

/** Sets the menu, with what *Undo* takes back and the books to open again. */
export function putMenu(service: Service, window: BrowserWindow): void {
  const recent = service.files.recent().slice(1);
  const info = readAnswer('book.info', service.call('book.info', {}));
  const state = { recent, ...(info.ok && { undo: info.value.undo, redo: info.value.redo }) };
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuOf(actsOf(service, window), state, process.platform)));
}

/** What the page asks of the shell about files; the user chooses where, in the system's dialog. */
export function answerFileCalls(ipc: Pick<IpcMain, 'handle'>, service: Service, window: BrowserWindow): void {
  const menu = fileMenuOf(service, window);
  const on = (name: keyof typeof fileCalls, act: (input: unknown) => Promise<void>) =>
    ipc.handle(fileCalls[name], async (event, input: unknown) => {
      if (!isTrustedSender(event.senderFrame)) return;
      await act(input);
      putMenu(service, window);
    });
  on('open', () => chooseBook(menu));
  on('saveCopy', () => saveCopyAs(menu));
  on('make', async (input) => {
    const begun = BegunInput.safeParse(input);
    if (begun.success) await makeBook(menu, begun.data);
  });
  // The preload takes the path from the file that was dropped; a page cannot name one.
  on('openDropped', async (input) => {
    const path = z.string().endsWith('.loamwright').safeParse(input);
    if (path.success) await openChosen(menu, path.data);
  });
}

const BegunInput = z.strictObject({ start: z.enum(beginnings), guesses: z.boolean().optional() });

function actsOf(service: Service, window: BrowserWindow): MenuActs {
  const menu = fileMenuOf(service, window);
  const thenPut = (act: Promise<void>) => void act.then(() => putMenu(service, window));
  return {
    newBook: (start) => thenPut(makeBook(menu, { start })),
    open: () => thenPut(chooseBook(menu)),
    openRecent: (path) => thenPut(openChosen(menu, path)),
    saveCopy: () => void saveCopyAs(menu),
    restore: () => void restoreChosen(menu),
    print: () => printPage(window),
    printToFile: () =>
      void printToFile(window, dialog).then((fault) => fault && dialog.showErrorBox('Not printed', fault)),
    tell: (news) => window.webContents.send(newsChannel, news),
  };
}
