import type { Session } from 'electron';

import { isPageUrl } from './trusted-url.ts';

/** The page saves only lists and calendars. */
const ownFile = /^[^/\\]+\.(?:csv|ics)$/i;

/** Whether a download is a list or calendar made by the page itself; the user still chooses where it is saved. */
export function isOwnDownload(address: string, fileName: string): boolean {
  return address.startsWith('blob:') && isPageUrl(address.slice('blob:'.length)) && ownFile.test(fileName);
}

/** Refuses every other download. */
export function refuseDownloads(session: Session): void {
  session.on('will-download', (event, item) => {
    if (!isOwnDownload(item.getURL(), item.getFilename())) event.preventDefault();
  });
}
