import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { serveBook, type ServedBook } from '#electron/host/serve-book.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';
import { openBrowser } from './find-browser.ts';
import type { Window } from './pages.ts';

/** The date in these tests: one week into the demo's prices. */
export const pageDay = '2027-03-08';

/** The built page, as it is served. */
export const builtPage = fileURLToPath(new URL('../../renderer/dist', import.meta.url));

/** Changes a book's file before it is served. */
export type Prepare = (book: string) => void;

/** The real page over the real loopback host and a demo book of its own. */
export interface ServedPages {
  /** The file of the book that is being served. */
  readonly book: () => string;
  /**
   * A fresh demo book, `prepare`d before it is served, and a window on one of its views; all other windows are closed.
   */
  readonly begin: (place: string, prepare?: Prepare) => Promise<Page>;
  /** A second window of the same browser, on the same book. */
  readonly beside: (place: string) => Promise<Page>;
  /** A further window, with a storage of its own. */
  readonly open: (place: string, window?: Window, more?: BrowserContextOptions) => Promise<Page>;
  /** Restarts the program on the same book, and opens a window without stored data. */
  readonly restart: (place: string) => Promise<Page>;
  /** Errors, warnings, dialogs and violations of the content policy on any page since the last call. */
  readonly complaints: () => readonly string[];
  /** Every address outside the program that a page requested. */
  readonly strangers: readonly string[];
  /** Ends the program and clears the records; the browser stays open for the next book. */
  readonly leave: () => Promise<void>;
  readonly close: () => Promise<void>;
}

interface Standing {
  readonly folder: string;
  readonly browser: Browser;
  readonly contexts: BrowserContext[];
  readonly complaints: string[];
  readonly strangers: string[];
  book: string;
  books: number;
  served: ServedBook | undefined;
  /** The same port for all books, so that the page's compiled code is reused. */
  port: number | undefined;
  page: Page | undefined;
}

const usual: Window = { width: 1440, height: 900 };

/** One browser and one program, for one book after another. */
export async function openServedBook(): Promise<ServedPages> {
  const folder = mkdtempSync(path.join(tmpdir(), 'loamwright-page-'));
  const browser = await openBrowser();
  const now: Standing = {
    folder,
    browser,
    contexts: [],
    complaints: [],
    strangers: [],
    book: '',
    books: 0,
    served: undefined,
    port: undefined,
    page: undefined,
  };
  return {
    book: () => now.book,
    begin: (place, prepare) => begin(now, place, prepare),
    beside: async (place) => {
      const context = now.page?.context() ?? (await newContext(now, usual, {}));
      const page = await newPage(now, context);
      await goIn(now, page, place);
      return page;
    },
    open: (place, window = usual, more = {}) => openWindow(now, place, window, more),
    restart: async (place) => {
      await leave(now);
      await serve(now);
      return arrive(now, place);
    },
    complaints: () => now.complaints.splice(0),
    strangers: now.strangers,
    leave: async () => {
      await leave(now);
      now.complaints.length = 0;
      now.strangers.length = 0;
    },
    close: async () => {
      await browser.close();
      await now.served?.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function begin(now: Standing, place: string, prepare: Prepare | undefined): Promise<Page> {
  await leave(now);
  now.books += 1;
  now.book = path.join(now.folder, `Book ${now.books}`, 'page.loamwright');
  mkdirSync(path.dirname(now.book));
  writeDemoBook(now.book, pageDay);
  prepare?.(now.book);
  await serve(now);
  return arrive(now, place);
}

async function arrive(now: Standing, place: string): Promise<Page> {
  now.page ??= await newPage(now, await newContext(now, usual, {}));
  await goIn(now, now.page, place);
  return now.page;
}

/** Moves the remaining window to a file of the same address, so that the browser keeps the page's compiled code. */
async function leave(now: Standing): Promise<void> {
  const { page, served } = now;
  if (page && served) {
    await page.unrouteAll({ behavior: 'ignoreErrors' });
    await page.evaluate(() => localStorage.clear());
    await page.goto(new URL('/.vite/license.md', page.url()).href);
    await page.emulateMedia({ media: null, colorScheme: 'light' });
    await page.setViewportSize(usual);
    await page.context().clearPermissions();
  }
  await end(now, page?.context());
}

/** Ends the program in an orderly way, and closes all windows but one. */
async function end(now: Standing, keep?: BrowserContext): Promise<void> {
  for (const context of now.contexts.splice(0)) if (context !== keep) await context.close();
  for (const page of keep?.pages() ?? []) if (page !== now.page) await page.close();
  if (keep) now.contexts.push(keep);
  else now.page = undefined;
  await now.served?.close();
  now.served = undefined;
}

async function serve(now: Standing): Promise<void> {
  const { folder, book, complaints, port } = now;
  const served = await serveBook({
    path: book,
    port,
    page: builtPage,
    today: () => pageDay,
    log: (text) => complaints.push(text),
    recentFile: path.join(folder, 'recent.json'),
    lastPlaceFile: path.join(folder, 'last-place.json'),
  });
  if (!served.ok) throw new Error(served.fault.says);
  now.served = served.value;
  now.port = Number(new URL(served.value.address).port);
}

async function openWindow(now: Standing, place: string, window: Window, more: BrowserContextOptions): Promise<Page> {
  const page = await newPage(now, await newContext(now, window, more));
  await goIn(now, page, place);
  return page;
}

async function newContext(now: Standing, window: Window, more: BrowserContextOptions): Promise<BrowserContext> {
  const { width, height, scheme = 'light' } = window;
  const viewport = { width, height };
  const context = await now.browser.newContext({ viewport, colorScheme: scheme, reducedMotion: 'reduce', ...more });
  context.setDefaultTimeout(15_000);
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      reportError(new Error(`the content policy refused ${blockedURI} by ${violatedDirective}`)),
    );
  });
  now.contexts.push(context);
  return context;
}

async function newPage({ complaints, strangers }: Standing, context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.on('console', (message) => {
    // The browser requests an icon by itself on a page without one.
    if (message.location().url.endsWith('/favicon.ico')) return;
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('dialog', (dialog) => {
    complaints.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('request', (request) => {
    if (!/^(http:\/\/127\.0\.0\.1:\d+\/|data:|blob:)/.test(request.url())) strangers.push(request.url());
  });
  return page;
}

/** A window comes in by a link of its own. */
async function goIn({ served }: Standing, page: Page, place: string): Promise<void> {
  await page.goto(`${served?.newLink() ?? ''}#/${place}`);
  await page.waitForSelector(place.startsWith('bench') ? '[role="gridcell"]' : 'h1');
}
