import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import type { Bridge } from '#renderer/bridge.ts';
import config from '#renderer/vite.config.ts';
import { entryForm } from '#electron/host/entry-page.ts';
import { openBrowser } from './find-browser.ts';

declare global {
  interface Window {
    readonly bridge: Bridge;
    readonly breaches: string[];
    readonly heard: readonly { readonly is: string; readonly revision?: number }[];
  }
}

const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));
const program = fileURLToPath(new URL('../electron/host/serve-for-test.ts', import.meta.url));
const children: ChildProcess[] = [];
let browser: Browser;

beforeAll(async () => {
  const root = fileURLToPath(new URL('./bridge-page', import.meta.url));
  await build({
    ...config,
    configFile: false,
    root,
    logLevel: 'warn',
    build: { ...config.build, outDir: join(folder, 'page') },
  });
  browser = await openBrowser();
});

afterAll(async () => {
  await browser.close();
  for (const child of children) child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

describe('the page’s door on a loopback address', () => {
  test('two pages write in turn, hear of each other, and find a killed program again', async () => {
    const first = await startProgram();
    const person = await browser.newContext();
    await person.addInitScript(() => {
      const breaches: string[] = [];
      Object.assign(window, { breaches });
      document.addEventListener('securitypolicyviolation', ({ violatedDirective }) => breaches.push(violatedDirective));
    });
    const page = await person.newPage();
    await page.goto(first.link);
    await page.waitForURL(`${new URL(first.link).origin}/`);
    const other = await person.newPage();
    await other.goto(page.url());
    await page.reload();

    expect(await addJobs(page, 3)).toEqual([2, 3, 4]);
    await heardOf(other, { is: 'written', revision: 4 });

    first.child.kill('SIGKILL');
    await heardOf(page, { is: 'away' });
    expect(await revisionOf(page)).toBe('Loamwright does not answer. Not kept, unless it shows when it is back.');
    await startProgram();
    await heardOf(page, { is: 'back' });
    expect(await revisionOf(page)).toBe(4);
    expect(await page.evaluate(() => window.breaches)).toEqual([]);
  });

  test('a browser that is opened with a file comes in, and one without link or file does not', async () => {
    const { origin, searchParams } = new URL((await startProgram()).link);
    const file = join(folder, 'open.html');
    writeFileSync(file, entryForm(origin, searchParams.get('key') ?? ''));
    const page = await (await browser.newContext()).newPage();
    await page.goto(pathToFileURL(file).href);
    await page.waitForURL(`${origin}/`);
    await page.waitForFunction(() => 'bridge' in window);
    const stranger = await (await browser.newContext()).newPage();
    await stranger.goto(origin);
    await stranger.waitForFunction(() => 'bridge' in window);

    expect(await revisionOf(page)).toBeGreaterThan(0);
    expect(await revisionOf(stranger)).toContain('open the link that it wrote then');
  });

  test('what the service refuses comes to the page as a sentence', async () => {
    const { link } = await startProgram();
    const page = await browser.newPage();
    await page.goto(link);
    await page.waitForFunction(() => 'bridge' in window);
    const answer = await page.evaluate(() => window.bridge.call('file.open', { book: 'nowhere' }));

    expect(answer).toMatchObject({ ok: false, fault: { readAgain: false } });
  });
});

interface Started {
  readonly child: ChildProcess;
  readonly link: string;
}

async function startProgram(): Promise<Started> {
  const child = spawn(process.execPath, [program, folder], { stdio: ['ignore', 'pipe', 'inherit'] });
  children.push(child);
  const link = await new Promise<string>((said, failed) => {
    child.stdout.on('data', (part: Buffer) => said(part.toString('utf8').trim()));
    child.on('exit', () => failed(new Error('ended before it was ready')));
  });
  return { child, link };
}

/** Adds jobs without waiting in between; returns the revision after each, in the order of the calls. */
function addJobs(page: Page, count: number): Promise<readonly (number | string)[]> {
  return page.evaluate(async (many) => {
    const read = await window.bridge.call('book.read', {});
    if (!read.ok) return [read.fault.says];
    const { info, records } = read.value;
    const [job] = records.job;
    if (!job) return ['no job'];
    const writes = Array.from({ length: many }, (_, at) => {
      const record = { ...job, id: `J${90 + at}` };
      const change = { label: record.id, added: [{ kind: 'job', record } as const], updated: [], removed: [] };
      return window.bridge.call('book.apply', { opening: info.opening, onRevision: info.revision, change });
    });
    const done = await Promise.all(writes);
    return done.map((each) => (each.ok ? each.value.info.revision : each.fault.says));
  }, count);
}

function revisionOf(page: Page): Promise<number | string> {
  return page.evaluate(async () => {
    const info = await window.bridge.call('book.info', {});
    return info.ok ? info.value.revision : info.fault.says;
  });
}

async function heardOf(page: Page, news: { readonly is: string; readonly revision?: number }): Promise<void> {
  await page.waitForFunction(
    ({ is, revision }) => window.heard.some((each) => each.is === is && each.revision === revision),
    news,
  );
}
