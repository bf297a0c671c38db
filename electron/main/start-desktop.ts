import { app, ipcMain, protocol, session, shell } from 'electron';
import type { BrowserWindow } from 'electron';

import type { Service } from '#electron/service/open-service.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { userFiles } from '#electron/host/user-files.ts';

import { answerPageCalls } from './answer-page-calls.ts';
import { bookArgument } from './book-argument.ts';
import { pageFolder, preloadFile } from './built-files.ts';
import { openChosen } from './file-menu.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';
import { openAskedBook } from './open-asked-book.ts';
import { openWindow } from './open-window.ts';
import { pageSchemes, servePage } from './page-scheme.ts';
import { fileMenuOf, putMenu } from './put-menu.ts';
import { refuseDownloads } from './own-downloads.ts';
import { holdToPage, refusePermissions } from './window-walls.ts';

/** Opens the desktop window on a book. What walls it in is said before the shell is ready. */
export async function startDesktop(): Promise<void> {
  app.enableSandbox();
  protocol.registerSchemesAsPrivileged(pageSchemes);
  if (!app.requestSingleInstanceLock()) return app.quit();
  app.on('web-contents-created', (_event, contents) => {
    holdToPage(contents, { openOutside: (address) => void shell.openExternal(address) });
  });
  app.on('window-all-closed', () => app.quit());
  const asked = waitForFiles();
  await app.whenReady();
  const windows: BrowserWindow[] = [];
  const service = openAskedBook(asked.first(), (news) => tellPages(windows, news));
  if (!service) return app.quit();
  app.on('will-quit', service.close);
  await showPage(service, windows, asked);
}

interface AskedFiles {
  /** The file that the program was started with, if any. */
  readonly first: () => string | undefined;
  /** Opens files that are asked for from now on. */
  readonly next: (open: (path: string | undefined) => void) => void;
}

/** A book may be asked for on the command line, by a second start, or by the machine's own file window. */
function waitForFiles(): AskedFiles {
  let first = bookArgument(process.argv, process.cwd());
  let open = (path: string | undefined) => {
    first = path ?? first;
  };
  app.on('open-file', (event, path) => {
    event.preventDefault();
    open(path);
  });
  app.on('second-instance', (_event, argv, folder) => open(bookArgument(argv, folder)));
  return {
    first: () => first,
    next: (then) => {
      open = then;
    },
  };
}

async function showPage(service: Service, windows: BrowserWindow[], asked: AskedFiles): Promise<void> {
  refusePermissions(session.defaultSession);
  refuseDownloads(session.defaultSession);
  servePage(protocol, pageFolder);
  answerPageCalls(ipcMain, service.call);
  const window = await openWindow(preloadFile, userFiles().window);
  windows.push(window);
  putMenu(service, window);
  asked.next((path) => {
    if (window.isMinimized()) window.restore();
    window.focus();
    if (path !== undefined) void openChosen(fileMenuOf(service, window), path);
  });
}

function tellPages(windows: readonly BrowserWindow[], news: News): void {
  for (const { webContents } of windows) if (!webContents.isDestroyed()) webContents.send(newsChannel, news);
}
