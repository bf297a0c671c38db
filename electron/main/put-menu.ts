import { dialog, Menu, shell } from 'electron';
import type { BrowserWindow } from 'electron';

import type { Service } from '#electron/service/open-service.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';
import { readAnswer } from '#shared-calc/contract/read-answer.ts';

import { chooseBook, makeBook, openChosen, restoreChosen, saveCopyAs } from './file-menu.ts';
import type { FileMenu } from './file-menu.ts';
import { menuOf } from './menu.ts';
import type { MenuActs } from './menu.ts';
import { printPage, printToFile } from './print-page.ts';
import { licenceLink } from './trusted-url.ts';

export function fileMenuOf(service: Service, window: BrowserWindow): FileMenu {
  return { dialog, window, call: service.call };
}

/** Puts the menu up, and anew after each act that may have opened another book. */
export function putMenu(service: Service, window: BrowserWindow): void {
  const recent = readAnswer('file.recent', service.call('file.recent', {}));
  const paths = recent.ok ? recent.value.paths.slice(1) : [];
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuOf(actsOf(service, window), paths, process.platform)));
}

function actsOf(service: Service, window: BrowserWindow): MenuActs {
  const menu = fileMenuOf(service, window);
  const thenPut = (act: Promise<void>) => void act.then(() => putMenu(service, window));
  return {
    newBook: (how) => thenPut(makeBook(menu, how)),
    open: () => thenPut(chooseBook(menu)),
    openRecent: (path) => thenPut(openChosen(menu, path)),
    saveCopy: () => void saveCopyAs(menu),
    restore: () => void restoreChosen(menu),
    print: () => printPage(window),
    printToFile: () =>
      void printToFile(window, dialog).then((fault) => fault && dialog.showErrorBox('Not printed', fault)),
    showLicence: () => void shell.openExternal(licenceLink),
    tell: (news) => window.webContents.send(newsChannel, news),
  };
}
