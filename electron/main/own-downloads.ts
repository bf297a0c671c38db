import type { Session } from 'electron';

import { isPageUrl } from './trusted-url.ts';

/** Lists and calendars are all that the page hands out. */
const ownFile = /^[^/\\]+\.(?:csv|ics)$/i;

/** Whether a download is a list or calendar that the page itself made; the person still says where it goes. */
export function isOwnDownload(address: string, fileName: string): boolean {
  return address.startsWith('blob:') && isPageUrl(address.slice('blob:'.length)) && ownFile.test(fileName);
}

/** Nothing else is ever brought onto the machine. */
export function refuseDownloads(session: Session): void {
  session.on('will-download', (event, item) => {
    if (!isOwnDownload(item.getURL(), item.getFilename())) event.preventDefault();
  });
}
