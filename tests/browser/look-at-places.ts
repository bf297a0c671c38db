import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { makeFullBook } from '#electron/book/seed-demo.ts';
import { pageBundle } from '#electron/host/build-stale.ts';
import { places } from '#shared-calc/contract/places.ts';
import type { Window } from './pages.ts';
import { readyToLook } from './ready-to-look.ts';
import { openServedBook, pageDay, type ServedPages } from './served-book.ts';

/** Pictures of every place at two sizes, light and dark, and of the bench at 400 % zoom, in a folder git does not keep. */
const folder = fileURLToPath(new URL('./screens/', import.meta.url));

const windows: readonly Window[] = (['light', 'dark'] as const).flatMap((scheme) => [
  { width: 1280, height: 800, scheme },
  { width: 1920, height: 1080, scheme },
]);

const narrow: Window = { width: 320, height: 256, scheme: 'light' };

async function look(pages: ServedPages, place: string, window: Window): Promise<void> {
  const page = await pages.open(place, window);
  const file = `${folder}${place}-${window.width}x${window.height}-${window.scheme}.png`;
  await page.screenshot({ path: file, fullPage: window === narrow });
  await page.context().close();
}

/** The workshop in full swing in place of the small one. */
function writeFullBook(path: string): void {
  rmSync(path);
  const made = makeFullBook(path, { today: pageDay, backups: false });
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  made.value.close();
}

mkdirSync(folder, { recursive: true });
await readyToLook([pageBundle]);
const pages = await openServedBook();
await pages.begin('today', writeFullBook);
for (const { id } of places) {
  for (const window of windows) await look(pages, id, window);
}
await look(pages, 'bench', narrow);
await pages.close();
const report = [`Pictures of ${places.length} places are in ${folder}`, ...new Set(pages.complaints())];
process.stdout.write(`${report.join('\n')}\n`);
