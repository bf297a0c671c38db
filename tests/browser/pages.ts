import type { Browser, Page } from 'playwright-core';
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
  const complaints: string[] = [];
  return {
    open: (place, window = usual) => openPage({ browser, served, complaints }, place, window),
    complaints: () => complaints,
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
}

async function openPage({ browser, served, complaints }: Parts, place: string, window: Window): Promise<Page> {
  const { width, height, scheme = 'light' } = window;
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(`${served.url}#/${place}`);
  await page.waitForSelector('h1');
  if (place.startsWith('bench')) await page.waitForSelector('.strips .ag-cell.box');
  return page;
}
