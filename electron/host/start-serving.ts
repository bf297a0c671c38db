import type { Result } from '#shared-calc/result.ts';
import { failed, ok } from '#shared-calc/result.ts';

import { buildIfStale, pageBundle, pageFolder } from './build-stale.ts';
import { openFaultLog } from './fault-log.ts';
import { hasScreen, openBrowser } from './open-browser.ts';
import { serveBook } from './serve-book.ts';
import type { ServeFault } from './serve-book.ts';
import { untilEnded } from './until-ended.ts';
import { bookToOpen, userFiles } from './user-files.ts';

export interface StartOptions {
  readonly book: string | undefined;
  readonly port: number | undefined;
  /** Whether to open the user's browser, if there is a screen. */
  readonly browser: boolean;
  readonly today: () => string;
  /** Writes a line for the user. */
  readonly say: (line: string) => void;
}

export type StartFault = ServeFault | { readonly is: 'no page'; readonly says: string };

/** Serves the page until the user ends it; resolves after everything is closed. */
export async function startServing(options: StartOptions): Promise<Result<undefined, StartFault>> {
  const { book, port, browser, today, say } = options;
  const page = buildIfStale(pageBundle, say);
  if (!page.ok) return failed({ is: 'no page', says: page.fault });
  const files = userFiles();
  const path = bookToOpen(book, files.recent);
  const log = openFaultLog(files.log, () => new Date().toISOString());
  const ended = untilEnded();
  const writeLink = (link: string) => say(`Open this link within a minute; it lets one browser in, once: ${link}`);
  const served = await serveBook({
    path,
    lastUsed: book === undefined,
    port,
    today,
    page: pageFolder,
    recentFile: files.recent,
    logFile: files.log,
    lastPlaceFile: files.lastPlace,
    onOldKey: writeLink,
    log,
  });
  if (!served.ok) return served;
  say(`${served.value.fault ?? `${path} is open.`} Ctrl+C ends Loamwright.`);
  writeLink(served.value.newLink());
  if (browser && hasScreen(process.platform, process.env)) openBrowser(served.value, process.env);
  await ended;
  await served.value.close();
  return ok(undefined);
}
