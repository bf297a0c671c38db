import { describe, expect, test } from 'vitest';

import { holdToPage, pagePreferences, refusePermissions } from '#electron/main/window-walls.ts';

describe('pagePreferences', () => {
  test('the page has no more of the machine than any page of the web', () => {
    expect(pagePreferences('/preload.cjs')).toEqual({
      preload: '/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      safeDialogs: true,
    });
  });
});

describe('holdToPage', () => {
  test.each(['will-navigate', 'will-redirect', 'will-frame-navigate'])('%s keeps to the page', (name) => {
    const { fire } = contentsAtHand();

    expect(fire(name, { url: 'app://page/#/bench' })).toBe(false);
    for (const url of [
      'https://evil.example/',
      'file:///etc/passwd',
      'javascript:0',
      'app://evil/',
      'data:text/html,x',
    ]) {
      expect(fire(name, { url })).toBe(true);
    }
  });

  test('no page is laid into the page', () => {
    expect(contentsAtHand().fire('will-attach-webview', {})).toBe(true);
  });

  test('no window is opened, and no address is handed to a browser', () => {
    const { openWindow } = contentsAtHand();
    for (const url of ['https://evil.example/', 'app://page/', 'file:///etc/passwd', 'javascript:0']) {
      expect(openWindow({ url })).toEqual({ action: 'deny' });
    }
  });
});

describe('refusePermissions', () => {
  test.each([
    'media',
    'geolocation',
    'notifications',
    'clipboard-read',
    'openExternal',
    'fullscreen',
    'hid',
    'display-capture',
  ])('%s is not lent', (permission) => {
    const { asked, checked } = sessionAtHand();

    expect([asked(permission, 'app://page/'), checked(permission, 'app://page')]).toEqual([false, false]);
  });

  test('the page may copy, and nobody else', () => {
    const { asked, checked } = sessionAtHand();

    expect([
      asked('clipboard-sanitized-write', 'app://page/'),
      checked('clipboard-sanitized-write', 'app://page'),
    ]).toEqual([true, true]);
    expect([
      asked('clipboard-sanitized-write', 'https://evil.example/'),
      checked('clipboard-sanitized-write', 'null'),
    ]).toEqual([false, false]);
  });
});

/** Contents of a window that only record the handlers set on them. */
function contentsAtHand() {
  const handlers = new Map<string, (event: object) => void>();
  let openWindow: (asked: { readonly url: string }) => unknown = () => undefined;
  const contents = {
    on: (name: string, handler: (event: object) => void) => handlers.set(name, handler),
    setWindowOpenHandler: (handler: typeof openWindow) => {
      openWindow = handler;
    },
  };
  holdToPage(contents as never);
  const fire = (name: string, event: object) => {
    let prevented = false;
    handlers.get(name)?.({ ...event, preventDefault: () => (prevented = true) });
    return prevented;
  };
  return { fire, openWindow: (asked: { readonly url: string }) => openWindow(asked) };
}

/** A session that only records its permission handlers. */
function sessionAtHand() {
  type Request = (contents: { getURL: () => string }, permission: string, answer: (lent: boolean) => void) => void;
  type Check = (contents: null, permission: string, origin: string) => boolean;
  let request: Request = () => undefined;
  let check: Check = () => true;
  refusePermissions({
    setPermissionRequestHandler: (handler: Request) => (request = handler),
    setPermissionCheckHandler: (handler: Check) => (check = handler),
    setDevicePermissionHandler: () => undefined,
  } as never);
  return {
    asked: (permission: string, url: string) => {
      let lent = true;
      request({ getURL: () => url }, permission, (is) => (lent = is));
      return lent;
    },
    checked: (permission: string, origin: string) => check(null, permission, origin),
  };
}
