import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser } from 'playwright-core';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** The program of the first browser that starts, or the paths that were tried. */
type FoundBrowser = Result<string, readonly string[]>;

const commands = [
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
];

const fixedPlaces: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  linux: ['/snap/bin/chromium', '/opt/google/chrome/chrome'],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: ['ProgramFiles(x86)', 'ProgramFiles', 'LOCALAPPDATA'].flatMap((variable) => {
    const folder = process.env[variable];
    if (folder === undefined) return [];
    return ['Microsoft/Edge/Application/msedge.exe', 'Google/Chrome/Application/chrome.exe'].map((program) =>
      path.join(folder, program),
    );
  }),
};

/** Starts a browser for the page's tests; the caller closes it. */
export async function openBrowser(): Promise<Browser> {
  const found = await findBrowser();
  if (!found.ok) throw new Error(sayMissing(found.fault));
  return chromium.launch({ executablePath: found.value, args: ['--disable-gpu'] });
}

/** Returns the first browser that starts. If APP_TEST_BROWSER is set, only that one is tried. */
async function findBrowser(): Promise<FoundBrowser> {
  const places = candidates();
  for (const place of places) {
    if (existsSync(place) && (await starts(place))) return ok(place);
  }
  return failed(process.env['APP_TEST_BROWSER'] === undefined ? [...commands, ...places] : places);
}

/** Finds a browser or downloads one: as root from Debian's packages, otherwise from the browser library's own store. */
async function findOrBringBrowser(say: (line: string) => void): Promise<FoundBrowser> {
  const found = await findBrowser();
  if (found.ok || process.env['APP_TEST_BROWSER'] !== undefined) return found;
  if (isRoot() && onPath('apt-get').length > 0) {
    say('No browser on this machine: installing the package chromium with apt-get, once.');
    run('apt-get', ['-qq', 'update']);
    run('apt-get', ['-qq', 'install', '-y', '--no-install-recommends', 'chromium']);
    const installed = await findBrowser();
    if (installed.ok) return installed;
  }
  say('No browser on this machine: fetching Chromium for the browser library, once.');
  run(process.execPath, [libraryProgram(), 'install', 'chromium']);
  return findBrowser();
}

/** Makes sure that `openBrowser` finds a browser, here and in child processes; says so if none is available. */
export async function bringBrowser(say: (line: string) => void): Promise<void> {
  const browser = await findOrBringBrowser(say);
  if (browser.ok) process.env['APP_TEST_BROWSER'] = browser.value;
  else say(sayMissing(browser.fault));
}

function sayMissing(lookedAt: readonly string[]): string {
  return `No browser starts here, so the page cannot be tested. Looked at: ${lookedAt.join(', ')}. Set APP_TEST_BROWSER to the program of one.`;
}

function candidates(): readonly string[] {
  const chosen = process.env['APP_TEST_BROWSER'];
  if (chosen !== undefined) return [chosen];
  return [...commands.flatMap(onPath), chromium.executablePath(), ...(fixedPlaces[process.platform] ?? [])];
}

function onPath(command: string): readonly string[] {
  const folders = (process.env['PATH'] ?? '').split(path.delimiter);
  return folders.map((folder) => path.join(folder, command)).filter((place) => existsSync(place));
}

async function starts(executablePath: string): Promise<boolean> {
  try {
    const browser = await chromium.launch({ executablePath, timeout: 30_000 });
    await browser.close();
    return true;
  } catch {
    // An installed browser that does not start is skipped: the next path may have one that does.
    return false;
  }
}

function run(program: string, args: readonly string[]): void {
  spawnSync(program, args, {
    stdio: 'ignore',
    timeout: 600_000,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
}

function libraryProgram(): string {
  return fileURLToPath(new URL('cli.js', import.meta.resolve('playwright-core/package.json')));
}

function isRoot(): boolean {
  return process.getuid?.() === 0;
}
