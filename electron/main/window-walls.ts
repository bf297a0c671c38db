import type { Session, WebContents, WebPreferences } from 'electron';

import { isOwnLink, isPageUrl } from './trusted-url.ts';

/** How the page's window is walled: all that the shell's own guide asks for is said, whatever its defaults are. */
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

/** Nothing of the machine is lent to the page; it may put text on the clipboard, which copying boxes needs. */
export function refusePermissions(session: Session): void {
  const isLent = (permission: string, address: string) =>
    permission === 'clipboard-sanitized-write' && isPageUrl(address);
  session.setPermissionRequestHandler((contents, permission, answer) => answer(isLent(permission, contents.getURL())));
  session.setPermissionCheckHandler((_contents, permission, origin) => isLent(permission, `${origin}/`));
  session.setDevicePermissionHandler(() => false);
}

interface Opening {
  /** Opens a link in the person's browser. */
  readonly openOutside: (address: string) => void;
}

/** The window stays on the page: no going elsewhere, no windows of the page's own, no pages within the page. */
export function holdToPage(contents: WebContents, { openOutside }: Opening): void {
  const stay = (event: { readonly preventDefault: () => void }, address: string) => {
    if (!isPageUrl(address)) event.preventDefault();
  };
  contents.on('will-navigate', (event) => stay(event, event.url));
  contents.on('will-redirect', (event) => stay(event, event.url));
  contents.on('will-frame-navigate', (event) => stay(event, event.url));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    if (isOwnLink(url)) openOutside(url);
    return { action: 'deny' };
  });
}
