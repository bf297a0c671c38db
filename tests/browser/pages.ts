import type { Browser, BrowserContext, Page } from 'playwright-core';
import { openBrowser } from './find-browser.ts';
import { servePage } from './serve-page.ts';
import type { Served } from './serve-page.ts';

export interface Window {
  readonly width: number;
  readonly height: number;
  readonly scheme?: 'light' | 'dark';
}

export interface Pages {
  /** A fresh page at a view; messages of the console and violations of the content policy are recorded. */
  readonly open: (place: string, window?: Window) => Promise<Page>;
  /** Everything the pages reported so far: errors, warnings, violations of the content policy. */
  readonly complaints: () => readonly string[];
  readonly close: () => Promise<void>;
}

const usual: Window = { width: 1440, height: 900 };

/** A browser over a built page. */
export async function openPages(folder: string): Promise<Pages> {
  const [browser, served] = await Promise.all([openBrowser(), servePage(folder)]);
  const parts: Parts = { browser, served, complaints: [], context: undefined };
  return {
    open: (place, window = usual) => openPage(parts, place, window),
    complaints: () => parts.complaints,
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
}

interface Parts {
  readonly browser: Browser;
  readonly served: Served;
  readonly complaints: string[];
  /** Kept open until a test closes it, so that the compiled code of the page is reused. */
  context: BrowserContext | undefined;
}

async function openPage(parts: Parts, place: string, window: Window): Promise<Page> {
  const { width, height, scheme = 'light' } = window;
  const { served, complaints } = parts;
  const context = (parts.context ??= await newContext(parts));
  const page = await context.newPage();
  await page.setViewportSize({ width, height });
  await page.emulateMedia({ colorScheme: scheme });
  // Storage of an earlier page is cleared; storage of this page survives its reloads.
  await page.addInitScript(() => {
    if (sessionStorage.getItem('begun') === null) localStorage.clear();
    sessionStorage.setItem('begun', 'yes');
  });
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${served.url}#/${place}`);
  await page.waitForSelector('h1');
  if (place.startsWith('bench')) await page.waitForSelector('[role="gridcell"]');
  return page;
}

async function newContext(parts: Parts): Promise<BrowserContext> {
  const context = await parts.browser.newContext({ reducedMotion: 'reduce' });
  context.on('close', () => {
    if (parts.context === context) parts.context = undefined;
  });
  return context;
}
