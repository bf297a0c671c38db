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
  /** A fresh page at a place, told to the console's and the content policy's complaints. */
  readonly open: (place: string, window?: Window) => Promise<Page>;
  /** What any page complained of so far: errors, warnings, refused by the content policy. */
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
  /** Kept until a test closes it: the page's code is then ready for the next page. */
  context: BrowserContext | undefined;
}

async function openPage(parts: Parts, place: string, window: Window): Promise<Page> {
  const { width, height, scheme = 'light' } = window;
  const { served, complaints } = parts;
  const context = (parts.context ??= await newContext(parts));
  const page = await context.newPage();
  await page.setViewportSize({ width, height });
  await page.emulateMedia({ colorScheme: scheme });
  // What an earlier page kept on this machine is not this one's; what this one keeps stays when it is loaded anew.
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
  if (place.startsWith('bench')) await page.waitForSelector('.strips .ag-cell.box');
  return page;
}

async function newContext(parts: Parts): Promise<BrowserContext> {
  const context = await parts.browser.newContext({ reducedMotion: 'reduce' });
  context.on('close', () => {
    if (parts.context === context) parts.context = undefined;
  });
  return context;
}
