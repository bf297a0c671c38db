import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { build } from 'vite';
import { serveBook, type ServedBook } from '#electron/host/serve-book.ts';
import config from '#renderer/vite.config.ts';
import { openBrowser } from '#tests/browser/find-browser.ts';
import { fillPaperBook, paperDay } from './paper-book.ts';

export interface PaperWindow {
  readonly width: number;
  readonly height: number;
  readonly scheme?: 'light' | 'dark';
}

/** The program's own page in a browser, over a book of its own with jobs and issued quotes. */
export interface ServedPapers {
  readonly open: (place: string, window?: PaperWindow) => Promise<Page>;
  readonly complaints: () => readonly string[];
  readonly close: () => Promise<void>;
}

const usual: PaperWindow = { width: 1440, height: 900 };

/** `touch` changes the book's file before it is served. */
export async function servePapers(touch: (path: string) => void = () => undefined): Promise<ServedPapers> {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-papers-'));
  const path = join(folder, 'Workshop.loamwright');
  fillPaperBook(path, join(folder, 'recent.json'));
  touch(path);
  const page = join(folder, 'page');
  await build({ ...config, configFile: false, logLevel: 'warn', build: { ...config.build, outDir: page } });
  const complaints: string[] = [];
  const served = await serveBook({
    path,
    page,
    today: () => paperDay,
    recentFile: join(folder, 'recent.json'),
    lastPlaceFile: join(folder, 'last-place.json'),
    log: (text) => complaints.push(text),
  });
  if (!served.ok) throw new Error(served.fault.says);
  const browser = await openBrowser();
  return {
    open: (place, window = usual) => openPage({ browser, served: served.value, complaints }, place, window),
    complaints: () => complaints,
    close: async () => {
      await browser.close();
      await served.value.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

interface Parts {
  readonly browser: Browser;
  readonly served: ServedBook;
  readonly complaints: string[];
}

async function openPage({ browser, served, complaints }: Parts, place: string, window: PaperWindow): Promise<Page> {
  const { width, height, scheme = 'light' } = window;
  const context: BrowserContext = await browser.newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${served.newLink()}#/${place}`);
  await page.waitForSelector('h1');
  return page;
}
