import { writeSync } from 'node:fs';
import { openBook } from '#electron/book/open-book.ts';

/* Opens a book as an ordinary user, even if the tests run as root. */
const nobody = 65_534;
if (process.getuid?.() === 0) {
  process.setgid?.(nobody);
  process.setuid?.(nobody);
}
const opened = openBook(process.argv[2] ?? '', { today: '2027-03-10', backups: false });
const looking = opened.ok ? opened.value.looking?.fault : undefined;
// Closed before the report: the reader may look at the folder at once.
if (opened.ok) opened.value.close();
writeSync(1, `${JSON.stringify(opened.ok ? (looking ?? 'opened') : opened.fault)}\n`);
