import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { figures, quietLine, seenBox, stored, write } from './bench-hands.ts';
import { openBrowser } from './find-browser.ts';
import { builtPage } from './served-book.ts';

const program = fileURLToPath(new URL('../electron/host/serve-for-test.ts', import.meta.url));
const sizes = ['T03', 'T07', 'T08'] as const;
let browser: Browser;
let page: Page;
let folder: string;
let running: Running;

beforeAll(async () => {
  browser = await openBrowser();
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  context.setDefaultTimeout(15_000);
  page = await context.newPage();
});
afterAll(async () => {
  await browser.close();
});
beforeEach(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'loamwright-killed-'));
  symlinkSync(builtPage, path.join(folder, 'page'), 'junction');
  running = await start();
});
afterEach(async () => {
  await running.kill();
  rmSync(folder, { recursive: true, force: true });
});

interface Running {
  readonly link: string;
  /** Kills it at once, whatever it is doing. */
  readonly kill: () => Promise<void>;
}

/** The program as a process of its own, over the book in the folder. */
async function start(): Promise<Running> {
  const child: ChildProcess = spawn(process.execPath, [program, folder], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = new Promise<void>((done) => child.once('exit', () => done()));
  const link = await new Promise<string>((said) =>
    child.stdout?.once('data', (part: Buffer) => said(part.toString('utf8').trim())),
  );
  return {
    link,
    kill: () => {
      child.kill('SIGKILL');
      return ended;
    },
  };
}

async function openBench(): Promise<void> {
  await page.goto(`${running.link}#/bench`);
  await page.waitForSelector('[role="gridcell"]');
}

async function saysSoon(words: string): Promise<void> {
  await page.waitForFunction((said) => document.querySelector('footer')?.textContent?.includes(said), words);
}

/** The labels of every edit in the book's journal, and whether the book is whole. */
function journal(): { readonly edits: readonly string[]; readonly whole: boolean } {
  const book = openBook(path.join(folder, 'Workshop.loamwright'), { today: '2027-03-10', backups: false });
  if (!book.ok) throw new Error(book.fault.kind);
  const entries = book.value.entriesAfter(1);
  const whole = book.value.check();
  book.value.close();
  return { edits: entries.ok ? entries.value.map(({ change }) => change.label) : [], whole: whole.ok };
}

describe('a service that is killed', () => {
  test('the page says so, edits go on and wait, and go through when it is back', async () => {
    await openBench();
    await write(page, ['Litter depth', 'T07'], '20');
    await stored(page, 'litter depth of T07 to 20 mm');
    await running.kill();
    await saysSoon('The book does not answer for the moment');

    await page.keyboard.press('F2');
    expect(await page.getByText('Not kept at present').isVisible()).toBe(true);
    await page.keyboard.press('Escape');
    await write(page, ['Litter depth', 'T08'], '45');
    await write(page, ['Litter depth', 'T07'], '25');
    await write(page, ['Litter depth', 'T03'], '15');
    const meanwhile = [await figures(page, 'Oak leaves, dry', sizes), await quietLine(page)];
    running = await start();
    await saysSoon('Saved');
    expect(await page.locator(':root[data-unkept]').count()).toBe(0);
    expect(meanwhile).toEqual([
      // 1.1 * 12.2 g/L over 0.198025, 0.4005 and 0.72 m2 at 15, 25 and 45 mm.
      ['39.86', '134.37', '434.81'],
      expect.stringContaining('Not saved: 3 edits wait for the book to answer'),
    ]);

    await write(page, ['Air gap under the mesh', 'T07'], '12');
    await stored(page, 'air gap under the mesh of T07 to 12 mm');
    await page.reload();
    await page.waitForSelector('[role="gridcell"]');
    const shown = [
      await figures(page, 'Air gap under the mesh', sizes),
      (await seenBox(page, 'Price', 'T08'))?.figure !== '',
    ];
    await running.kill();
    expect([shown, journal()]).toEqual([
      [['10', '12', '10'], true],
      {
        edits: [
          'litter depth of T07 to 20 mm',
          'litter depth of T08 to 45 mm',
          'litter depth of T07 to 25 mm',
          'litter depth of T03 to 15 mm',
          'air gap under the mesh of T07 to 12 mm',
        ],
        whole: true,
      },
    ]);
  });

  test('one that dies with an edit in hand, before it is written and after, leaves each edit there once', async () => {
    await openBench();
    await page.route(
      '**/call/book.apply',
      async (route) => {
        await running.kill();
        await route.abort();
      },
      { times: 1 },
    );
    await write(page, ['Litter depth', 'T07'], '20');
    await saysSoon('Not saved: 1 edit waits');
    running = await start();
    await saysSoon('Saved');

    await page.route(
      '**/call/book.apply',
      async (route) => {
        await route.fetch();
        await running.kill();
        await route.abort();
      },
      { times: 1 },
    );
    await write(page, ['Litter depth', 'T08'], '45');
    await saysSoon('Not saved: 1 edit waits');
    running = await start();
    await saysSoon('Saved');

    await page.keyboard.press('Control+z');
    await saysSoon('Undone: litter depth of T08 to 45 mm');
    const after = await figures(page, 'Litter depth', sizes);
    await running.kill();
    const { edits, whole } = journal();
    expect([after, edits.slice(0, 2), edits.length, whole]).toEqual([
      ['30', '20', '30'],
      ['litter depth of T07 to 20 mm', 'litter depth of T08 to 45 mm'],
      3,
      true,
    ]);
  });
});
