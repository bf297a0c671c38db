import { dialog } from 'electron';

import { openFaultLog } from '#electron/host/fault-log.ts';
import { bookToOpen, userFiles } from '#electron/host/user-files.ts';
import { openService } from '#electron/service/open-service.ts';
import type { Service } from '#electron/service/open-service.ts';
import { today } from '#electron/service/today.ts';
import type { News } from '#shared-calc/contract/news.ts';

/** Opens the book that is asked for. One that cannot be opened is left as it is, and another may be chosen. */
export function openAskedBook(asked: string | undefined, onNews: (news: News) => void): Service | undefined {
  const files = userFiles();
  const log = openFaultLog(files.log, () => new Date().toISOString());
  let path: string | undefined = bookToOpen(asked, files.recent);
  while (path !== undefined) {
    const service = openService({ path, today, onNews, log, recentFile: files.recent });
    if (service.ok) return service.value;
    path = askForAnother(service.fault);
  }
  return undefined;
}

function askForAnother(says: string): string | undefined {
  const response = dialog.showMessageBoxSync({
    type: 'error',
    title: 'Loamwright',
    message: 'This book cannot be opened.',
    detail: says,
    buttons: ['Open another book …', 'Quit'],
    defaultId: 0,
    cancelId: 1,
  });
  if (response !== 0) return undefined;
  const filters = [{ name: 'Loamwright books', extensions: ['loamwright'] }];
  return dialog.showOpenDialogSync({ title: 'Open a book', filters, properties: ['openFile'] })?.[0];
}
