import { existsSync } from 'node:fs';
import { join } from 'node:path';

import { serveBook } from '#electron/host/serve-book.ts';
import { untilEnded } from '#electron/host/until-ended.ts';
import { writeDemoBook } from '#tests/write-demo-book.ts';

/* A separate program that serves a book from the given folder, to be killed by a test. */
const folder = process.argv[2] ?? '';
const ended = untilEnded();
const path = join(folder, 'Workshop.loamwright');
if (!existsSync(path)) writeDemoBook(path, '2027-03-10');
const served = await serveBook({
  path,
  today: () => '2027-03-10',
  page: join(folder, 'page'),
  recentFile: join(folder, 'recent.json'),
  lastPlaceFile: join(folder, 'last-place.json'),
  log: (text) => process.stderr.write(`${text}\n`),
});
if (!served.ok) throw new Error(served.fault.says);
process.stdout.write(`${served.value.newLink()}\n`);
await ended;
await served.value.close();
