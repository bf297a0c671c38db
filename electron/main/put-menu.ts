import { actNames } from '#shared-calc/words/act-names.ts';
import { dialog, Menu, type BrowserWindow, type Dialog } from 'electron';
import type { Service } from '#electron/service/open-service.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';
import { readAnswer } from '#shared-calc/contract/read-answer.ts';
import { chooseBook, makeBook, openChosen, restoreChosen, saveCopyAs, type FileMenu } from './file-menu.ts';
import { menuOf, type MenuActs } from './menu.ts';
import { writeFile } from 'node:fs/promises';

export function fileMenuOf(service: Service, window: BrowserWindow): FileMenu {
  return { dialog, window, call: service.call };
}

/** Sets the menu, and updates it after each act that may have opened another book. */
export function putMenu(service: Service, window: BrowserWindow): void {
  const recent = readAnswer('file.recent', service.call('file.recent', {}));
  const paths = recent.ok ? recent.value.paths.slice(1) : [];
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuOf(actsOf(service, window), paths, process.platform)));
}

function actsOf(service: Service, window: BrowserWindow): MenuActs {
  const menu = fileMenuOf(service, window);
  const thenPut = (act: Promise<void>) => void act.then(() => putMenu(service, window));
  return {
    newBook: (start) => thenPut(makeBook(menu, start)),
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

/** Opens the system's print dialog; the page's print style sets size and margins. */
function printPage({ webContents }: BrowserWindow): void {
  webContents.print({ printBackground: true, usePrinterDefaultPageSize: true });
}

/** Prints the page to a PDF file. Returns a sentence if that failed. */
async function printToFile(window: BrowserWindow, save: Pick<Dialog, 'showSaveDialog'>): Promise<string | undefined> {
  const filters = [{ name: 'PDF', extensions: ['pdf'] }];
  const chosen = await save.showSaveDialog(window, {
    title: actNames.savePdf,
    defaultPath: 'Loamwright.pdf',
    filters,
  });
  if (chosen.canceled || chosen.filePath === '') return undefined;
  try {
    const paper = await window.webContents.printToPDF({ printBackground: true, preferCSSPageSize: true });
    await writeFile(chosen.filePath, paper);
    return undefined;
  } catch (error) {
    return `${chosen.filePath} could not be written (${error instanceof Error ? error.message : String(error)}).`;
  }
}
