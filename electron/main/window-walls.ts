import type { Session, WebContents, WebPreferences } from 'electron';

import { isPageUrl } from './trusted-url.ts';

/**
 * Security settings of the page's window: sets everything Electron's security guide asks for, whatever the defaults.
 */
export function pagePreferences(preload: string): WebPreferences {
  return {
    preload,
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
  };
}

/** Refuses every permission except writing to the clipboard, which copying cells needs. */
export function refusePermissions(session: Session): void {
  const isLent = (permission: string, address: string) =>
    permission === 'clipboard-sanitized-write' && isPageUrl(address);
  session.setPermissionRequestHandler((contents, permission, answer) => answer(isLent(permission, contents.getURL())));
  session.setPermissionCheckHandler((_contents, permission, origin) => isLent(permission, `${origin}/`));
  session.setDevicePermissionHandler(() => false);
}

/** Keeps the window on the page: no navigation, no new windows, no embedded pages. */
export function holdToPage(contents: WebContents): void {
  const stay = (event: { readonly preventDefault: () => void }, address: string) => {
    if (!isPageUrl(address)) event.preventDefault();
  };
  contents.on('will-navigate', (event) => stay(event, event.url));
  contents.on('will-redirect', (event) => stay(event, event.url));
  contents.on('will-frame-navigate', (event) => stay(event, event.url));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
