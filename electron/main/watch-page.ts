import type { BrowserWindow, Dialog } from 'electron';

export interface WatchParts {
  readonly window: BrowserWindow;
  readonly dialog: Pick<Dialog, 'showMessageBox'>;
  readonly log: (text: string) => void;
  readonly quit: () => void;
}

/** What was shown as saved is in the book, which the page does not hold. */
const kept = 'All that was shown as saved is in the book.';

/** A page that has ended, or that hangs, is told of in a sentence, with a way on: the book is not in it. */
export function watchPage(parts: WatchParts): void {
  const { window, log } = parts;
  let isAsking = false;
  const once = (ask: () => Promise<void>) => {
    if (isAsking) return;
    isAsking = true;
    void ask().finally(() => (isAsking = false));
  };
  window.webContents.on('render-process-gone', (_event, { reason, exitCode }) => {
    if (reason === 'clean-exit') return;
    log(`the page has ended: ${reason}, ${exitCode}`);
    once(() => askAfterEnd(parts));
  });
  window.on('unresponsive', () => {
    log('the page does not answer');
    once(() => askWhileHung(parts));
  });
}

async function askAfterEnd({ window, dialog, quit }: WatchParts): Promise<void> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'error',
    message: 'The page has ended unexpectedly.',
    detail: kept,
    buttons: ['Open again', 'Quit'],
    defaultId: 0,
    cancelId: 0,
  });
  if (response === 1) quit();
  else window.webContents.reload();
}

/** The question goes by itself once the page answers again. */
async function askWhileHung({ window, dialog }: WatchParts): Promise<void> {
  const answers = new AbortController();
  const leave = () => answers.abort();
  window.once('responsive', leave);
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: 'The page does not answer.',
    detail: `${kept} What is being written may be lost.`,
    buttons: ['Wait', 'Open again'],
    defaultId: 0,
    cancelId: 0,
    signal: answers.signal,
  });
  window.removeListener('responsive', leave);
  if (response !== 1 || answers.signal.aborted) return;
  // A page that hangs does not hear a reload.
  window.webContents.forcefullyCrashRenderer();
  window.webContents.reload();
}
