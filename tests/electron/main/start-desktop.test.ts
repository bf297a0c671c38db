import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

import { startDesktop } from '#electron/main/start-desktop.ts';
import { pagePreferences } from '#electron/main/window-walls.ts';
import { fileCalls } from '#shared-calc/contract/file-calls.ts';
import { channelNames } from '#shared-calc/contract/channel-names.ts';
import { temporaryFolder } from '#tests/electron/host/host-at-hand.ts';
import { answers, app, requests, handlers, menus, sent, windows } from './stand-in-shell.ts';

vi.mock('electron', () => import('./stand-in-shell.ts'));

const page = { senderFrame: { url: 'app://page/', parent: null } };

beforeEach(() => {
  for (const list of [requests, sent, windows, menus, answers]) list.length = 0;
  handlers.clear();
  app.removeAllListeners();
  app.isFirst = true;
});

afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

/** A user with an empty folder. */
function newUser(): string {
  const home = temporaryFolder();
  for (const name of ['XDG_DATA_HOME', 'APPDATA', 'HOME']) vi.stubEnv(name, home);
  return home;
}

describe('startDesktop', () => {
  test('walls first, then the book, then the window on the page', async () => {
    newUser();
    await startDesktop();

    expect(requests).toEqual([
      'sandbox for every page',
      'schemes app',
      'waited until ready',
      'permissions refused',
      'permission checks refused',
      'devices refused',
      'will-download looked at',
      'files over app',
      'new windows refused',
      'page app://page/',
      'shown',
      'menu',
    ]);
    expect(windows.map(({ options }) => options.webPreferences)).toEqual([
      pagePreferences(expect.stringMatching(/electron[\\/]dist[\\/]preload\.cjs$/) as unknown as string),
    ]);
    expect([...handlers.keys()].toSorted()).toEqual([...channelNames, ...Object.values(fileCalls)].toSorted());
    app.quit();
  });

  test('the page is answered by the user’s own book, and told what is written in it', async () => {
    newUser();
    await startDesktop();
    const read = (await handlers.get('book.read')?.(page, {})) as {
      value: { info: { opening: string }; records: { job: { id: string }[] } };
    };
    const { info, records } = read.value;
    const change = {
      label: 'J90',
      added: [{ kind: 'job', record: { ...records.job[0], id: 'J90' } }],
      updated: [],
      removed: [],
    };
    const written = await handlers.get('book.apply')?.(page, { opening: info.opening, onRevision: 1, change });

    expect(written).toMatchObject({ ok: true, value: { info: { revision: 2 } } });
    expect(sent).toEqual([['news', { is: 'written', opening: info.opening, revision: 2 }]]);
    await expect.poll(() => JSON.stringify(menus.at(-1))).toContain('"Undo: J90"');
    app.quit();
  });

  test('the window is named by its page and its book', async () => {
    newUser();
    await startDesktop();
    expect(windows[0]?.title).toMatch(/^Size bench, .+ - Loamwright$/);
    expect(windows[0]?.title).not.toContain('.loamwright');
    app.quit();
  });

  test('a page that has ended or hangs is told of, and opened again', async () => {
    newUser();
    await startDesktop();
    const [window] = windows;
    const after = async (act: () => void, ...pressed: number[]) => {
      const before = requests.length;
      answers.push(...pressed);
      act();
      await new Promise((settled) => setImmediate(settled));
      return requests.slice(before);
    };
    const ends = (reason: string) => () =>
      void window?.webContents.emit('render-process-gone', {}, { reason, exitCode: 1 });
    const ended = 'asked: The page has ended unexpectedly.';
    const hung = 'asked: The page does not answer.';

    expect(await after(ends('clean-exit'))).toEqual([]);
    expect(await after(ends('oom'), 0)).toEqual([ended, 'page again']);
    expect(await after(() => void window?.emit('unresponsive'), 0)).toEqual([hung]);
    expect(await after(() => void window?.emit('unresponsive'), 1)).toEqual([hung, 'page ended', 'page again']);
    // The page answers again before the person does.
    expect(await after(() => void window?.emit('unresponsive'))).toEqual([hung]);
    expect(await after(() => void window?.emit('responsive'))).toEqual([]);
    expect(await after(ends('crashed'), 1)).toEqual([ended, 'quit']);
  });

  test('the window comes up where it was', async () => {
    const home = newUser();
    await startDesktop();
    windows[0]?.emit('close');
    app.quit();
    const [file] = ['Loamwright', 'Library/Application Support/Loamwright', '.local/share/Loamwright']
      .map((folder) => join(home, folder, 'window.json'))
      .filter((each) => existsSync(each));

    expect(JSON.parse(readFileSync(file ?? '', 'utf8'))).toEqual({
      x: 10,
      y: 20,
      width: 1000,
      height: 700,
      maximised: true,
    });
  });

  test('a second start brings the first one forward, and ends', async () => {
    newUser();
    await startDesktop();
    const before = requests.length;
    app.emit('second-instance', {}, ['loamwright'], '.');
    expect(requests.slice(before)).toEqual(['brought forward']);
    app.quit();

    app.isFirst = false;
    requests.length = 0;
    await startDesktop();
    expect(requests).toEqual(['sandbox for every page', 'schemes app', 'quit']);
  });

  test('a book that cannot be opened is told, and nothing is put in its place', async () => {
    const home = newUser();
    const book = join(home, 'spoilt.loamwright');
    writeFileSync(book, 'not a book '.repeat(50));
    vi.spyOn(process, 'argv', 'get').mockReturnValueOnce(['shell', '.', '--book', book]);
    await startDesktop();

    expect(requests.slice(3)).toEqual([`said: ${book} is not a book.`, 'quit']);
    expect([windows.length, readFileSync(book, 'utf8')]).toEqual([0, 'not a book '.repeat(50)]);
  });
});
