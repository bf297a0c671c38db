import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test, vi } from 'vitest';

import { hasScreen, openBrowser, openerOf } from '#electron/host/open-browser.ts';
import { bring, hostAtHand } from './host-at-hand.ts';

describe('hasScreen', () => {
  test.each([
    ['linux', {}, false],
    ['linux', { DISPLAY: ':0' }, true],
    ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, true],
    ['linux', { DISPLAY: '' }, false],
    ['darwin', {}, true],
    ['darwin', { SSH_CONNECTION: '10.0.0.2 1 10.0.0.3 22' }, false],
    ['win32', {}, true],
  ])('%s with %j: %s', (platform, environment, is) => {
    expect(hasScreen(platform, environment)).toBe(is);
  });
});

describe('openerOf', () => {
  test.each([
    ['linux', { program: 'xdg-open', args: ['/run/user/1000/open.html'] }],
    ['darwin', { program: 'open', args: ['/run/user/1000/open.html'] }],
    ['win32', { program: 'explorer', args: ['/run/user/1000/open.html'] }],
  ])('%s opens a file by its own custom', (platform, opener) => {
    expect(openerOf(platform, '/run/user/1000/open.html')).toEqual(opener);
  });
});

describe.runIf(process.platform === 'linux')('openBrowser', () => {
  test('shows no key to the other users of the machine, and leaves nothing behind', async () => {
    const at = await hostAtHand();
    // Stands for the user's browser: notes how it was called, as every user can see it, and what it can read.
    const seen = join(at.folder, 'seen');
    const opener = join(at.folder, 'xdg-open');
    writeFileSync(
      opener,
      `#!/bin/sh\n{ tr '\\0' ' ' < /proc/$$/cmdline; echo; cat "$1"; } > ${seen}.part\nmv ${seen}.part ${seen}\n`,
      {
        mode: 0o700,
      },
    );
    vi.stubEnv('PATH', `${at.folder}:${process.env['PATH'] ?? ''}`);
    onTestFinished(() => void vi.unstubAllEnvs());
    openBrowser(at.served, { XDG_RUNTIME_DIR: at.folder });
    await expect.poll(() => existsSync(seen), { timeout: 5000 }).toBe(true);
    const [commandLine = '', ...form] = readFileSync(seen, 'utf8').split('\n');
    const key = /name="key" value="([\w-]{43})"/.exec(form.join('\n'))?.[1] ?? '';
    const file = /\S+open\.html/.exec(commandLine)?.[0] ?? '';

    expect(key).not.toBe('');
    expect(commandLine).not.toContain(key);
    expect([file, dirname(file)].map((path) => statSync(path).mode & 0o777)).toEqual([0o600, 0o700]);
    expect((await bring(at.address, key, { origin: 'null', 'sec-fetch-site': 'cross-site' })).status).toBe(200);
    expect(existsSync(dirname(file))).toBe(false);
  });
});
