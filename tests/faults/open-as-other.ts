import { writeSync } from 'node:fs';
import { openBook } from '#electron/book/open-book.ts';

/* Opens a book as an ordinary user, even where the tests run as one to whom nothing is closed. */
const nobody = 65_534;
if (process.getuid?.() === 0) {
  process.setgid?.(nobody);
  process.setuid?.(nobody);
}
const opened = openBook(process.argv[2] ?? '', { today: '2027-03-10', backups: false });
writeSync(1, `${JSON.stringify(opened.ok ? 'opened' : opened.fault)}\n`);
if (opened.ok) opened.value.close();
