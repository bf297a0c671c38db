import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { serveBook, type ServedBook } from '#electron/host/serve-book.ts';
import { today } from '#electron/service/today.ts';
import { openBrowser } from './find-browser.ts';
import type { Window } from './pages.ts';

/** The real page over the real loopback host and a demo book of its own. */
export interface ServedPages {
  readonly book: string;
  /** A page in a window of its own, at a place. */
  readonly open: (place: string, window?: Window) => Promise<Page>;
  /** The program ended and started again on the same book. */
  readonly restart: () => Promise<void>;
  /** Errors, warnings and breaches of the content policy that any page told of. */
  readonly complaints: readonly string[];
  /** Every address that any page asked for outside the program's own. */
  readonly strangers: readonly string[];
  readonly close: () => Promise<void>;
}

const built = fileURLToPath(new URL('../../renderer/dist', import.meta.url));
const usual: Window = { width: 1440, height: 900 };

/** `prepare` may write in the book before the page opens. */
export async function openServedBook(prepare?: (book: string) => void): Promise<ServedPages> {
  const folder = mkdtempSync(path.join(tmpdir(), 'loamwright-page-'));
  const book = path.join(folder, 'page.loamwright');
  const complaints: string[] = [];
  const strangers: string[] = [];
  const browser = await openBrowser();
  const contexts: BrowserContext[] = [];
  prepare?.(book);
  let served = await serve(folder, book, complaints);

  async function open(place: string, window: Window = usual): Promise<Page> {
    const context = await newWindow(browser, window);
    contexts.push(context);
    const page = await context.newPage();
    listen(page, complaints, strangers);
    const link = served.newLink();
    await page.goto(link);
    await page.waitForSelector('h1');
    await page.goto(`${new URL(link).origin}/#/${place}`);
    await page.waitForSelector(place.startsWith('bench') ? '.strips .ag-cell.box' : 'h1');
    return page;
  }

  return {
    book,
    open,
    complaints,
    strangers,
    restart: async () => {
      for (const context of contexts.splice(0)) await context.close();
      await served.close();
      served = await serve(folder, book, complaints);
    },
    close: async () => {
      await browser.close();
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function serve(folder: string, book: string, complaints: string[]): Promise<ServedBook> {
  const served = await serveBook({
    path: book,
    page: built,
    today,
    log: (text) => complaints.push(text),
    recentFile: path.join(folder, 'recent.json'),
    lastPlaceFile: path.join(folder, 'last-place.json'),
  });
  if (!served.ok) throw new Error(served.fault.says);
  return served.value;
}

function newWindow(browser: Browser, { width, height, scheme = 'light' }: Window): Promise<BrowserContext> {
  return browser.newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
}

function listen(page: Page, complaints: string[], strangers: string[]): void {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    if (!/^(http:\/\/127\.0\.0\.1:\d+\/|data:|blob:)/.test(request.url())) strangers.push(request.url());
  });
}
