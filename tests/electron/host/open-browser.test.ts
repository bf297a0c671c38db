import { describe, expect, test } from 'vitest';

import { hasScreen, openerOf } from '#electron/host/open-browser.ts';

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
    ['linux', { program: 'xdg-open', args: ['http://127.0.0.1:1/?key=k'] }],
    ['darwin', { program: 'open', args: ['http://127.0.0.1:1/?key=k'] }],
    ['win32', { program: 'cmd', args: ['/d', '/s', '/c', 'start "" "http://127.0.0.1:1/?key=k"'] }],
  ])('%s opens a link by its own custom', (platform, opener) => {
    expect(openerOf(platform, 'http://127.0.0.1:1/?key=k')).toEqual(opener);
  });
});
