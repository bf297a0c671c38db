import { app, ipcMain, protocol, session, BrowserWindow, dialog, screen } from 'electron';
import { type Service, openService } from '#electron/service/open-service.ts';
import type { News } from '#shared-calc/contract/news.ts';
import { userFiles, bookToOpen } from '#electron/host/user-files.ts';
import { answerPageCalls } from './answer-page-calls.ts';
import { bookArgument } from './book-argument.ts';
import { openChosen } from './file-menu.ts';
import { newsChannel } from '#shared-calc/contract/news-channel.ts';
import { pageSchemes, servePage } from './page-scheme.ts';
import { answerFileCalls, fileMenuOf, putMenu } from './put-menu.ts';
import { refuseDownloads } from './own-downloads.ts';
import { giveTextMenu } from './text-menu.ts';
import { holdToPage, refusePermissions, pagePreferences } from './window-walls.ts';
import { openFaultLog } from '#electron/host/fault-log.ts';
import { today } from '#electron/service/today.ts';
import { placeWindow, readWindowState, writeWindowState } from './window-state.ts';
import { watchPage } from './watch-page.ts';
import { windowTitle } from './window-title.ts';
import { pageAddress } from './trusted-url.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { fileURLToPath } from 'node:url';

/** Opens the desktop window on a book. The security settings must be made before the app is ready. */
export async function startDesktop(): Promise<void> {
  app.enableSandbox();
  protocol.registerSchemesAsPrivileged(pageSchemes);
  if (!app.requestSingleInstanceLock()) return app.quit();
  app.on('web-contents-created', (_event, contents) => {
    holdToPage(contents);
    giveTextMenu(contents);
  });
  app.on('window-all-closed', () => app.quit());
  const requested = waitForFiles();
  await app.whenReady();
  const heard: Heard = { windows: [], after: () => undefined };
  const service = openRequestedBook(requested.first(), (news) => {
    tellPages(heard.windows, news);
    heard.after();
  });
  if (!service) return app.quit();
  app.on('will-quit', service.close);
  await showPage(service, heard, requested);
}

/** Who hears what is written: the pages, then the window's menu and title. */
interface Heard {
  readonly windows: BrowserWindow[];
  after: () => void;
}

interface AskedFiles {
  /** The file the program was started with, if any. */
  readonly first: () => string | undefined;
  /** Opens the files requested from now on. */
  readonly next: (open: (path: string | undefined) => void) => void;
}

/** The command line, a second start, or the system's file manager may request a book. */
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

async function showPage(service: Service, heard: Heard, asked: AskedFiles): Promise<void> {
  refusePermissions(session.defaultSession);
  refuseDownloads(session.defaultSession);
  servePage(protocol, pageFolder);
  answerPageCalls(ipcMain, service.answer);
  const window = await openWindow(preloadFile, userFiles().window);
  heard.windows.push(window);
  followBook(service, window, heard);
  answerFileCalls(ipcMain, service, window);
  asked.next((path) => {
    if (window.isMinimized()) window.restore();
    window.focus();
    if (path !== undefined) void openChosen(fileMenuOf(service, window), path);
  });
}

/** Several edits in a row change the menu once, ms. */
const menuWaitMs = 150;

/** Keeps menu and title to the open book, and watches the page. */
function followBook(service: Service, window: BrowserWindow, heard: Heard): void {
  const name = () => window.setTitle(windowTitle(window.webContents.getTitle(), service.files.name()));
  window.on('page-title-updated', (event) => {
    event.preventDefault();
    name();
  });
  const put = () => {
    waiting = undefined;
    if (window.isDestroyed()) return;
    putMenu(service, window);
    name();
  };
  let waiting: NodeJS.Timeout | undefined;
  heard.after = () => {
    waiting ??= setTimeout(put, menuWaitMs).unref();
  };
  put();
  const log = openFaultLog(userFiles().log, () => new Date().toISOString());
  watchPage({ window, dialog, log, quit: () => app.quit() });
}

function tellPages(windows: readonly BrowserWindow[], news: News): void {
  for (const { webContents } of windows) if (!webContents.isDestroyed()) webContents.send(newsChannel, news);
}

/**
 * Opens the requested book, or the one used last; of that, the page brings back what cannot be opened. Where a file is no
 * book at all, the user can choose another.
 */
function openRequestedBook(asked: string | undefined, onNews: (news: News) => void): Service | undefined {
  const files = userFiles();
  const log = openFaultLog(files.log, () => new Date().toISOString());
  const rest = { today, onNews, log, recentFile: files.recent, logFile: files.log };
  let path: string | undefined = bookToOpen(asked, files.recent);
  let lastUsed = asked === undefined;
  while (path !== undefined) {
    const service = openService({ path, lastUsed, ...rest });
    if (service.ok) return service.value;
    path = askForAnother(service.fault);
    lastUsed = false;
  }
  return undefined;
}

function askForAnother(says: string): string | undefined {
  const response = dialog.showMessageBoxSync({
    type: 'error',
    title: 'Loamwright',
    message: 'This book cannot be opened.',
    detail: says,
    buttons: ['Open another book …', 'Quit'],
    defaultId: 0,
    cancelId: 1,
  });
  if (response !== 0) return undefined;
  const filters = [{ name: 'Loamwright books', extensions: ['loamwright'] }];
  return dialog.showOpenDialogSync({ title: actNames.openBook, filters, properties: ['openFile'] })?.[0];
}

/** Opens the window at its last position with the page; it is shown once the page has been drawn. */
async function openWindow(preload: string, stateFile: string): Promise<BrowserWindow> {
  const last = readWindowState(stateFile);
  const areas = screen.getAllDisplays().map((display) => display.workArea);
  const window = new BrowserWindow({
    ...placeWindow(last, areas),
    minWidth: 640,
    minHeight: 480,
    show: false,
    title: 'Loamwright',
    backgroundColor: '#f6f1e7',
    webPreferences: pagePreferences(preload),
  });
  if (last?.maximised) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    writeWindowState(stateFile, { ...window.getNormalBounds(), maximised: window.isMaximized() });
  });
  await window.loadURL(pageAddress);
  return window;
}

// From the source and from the built file alike, the project or the packaged program is two folders up.
const pageFolder: string = fileURLToPath(new URL('../../renderer/dist/', import.meta.url));
const preloadFile: string = fileURLToPath(new URL('../../electron/dist/preload.cjs', import.meta.url));
