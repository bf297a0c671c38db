import { writeSync } from 'node:fs';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import type { Change } from '#shared-calc/records/change.ts';

/*
 * Edits a book in an endless loop, and reports each revision once it is stored. Every edit adds a supplier and counts
 * them in the tank's note: a half-written edit would show.
 */
const path = process.argv[2] ?? '';
const opened = openBook(path, { today: '2027-03-10', backups: false });
if (!opened.ok) throw new Error(JSON.stringify(opened.fault));
const book = opened.value;
for (let turn = 1; ; turn += 1) {
  const done =
    turn % 7 === 0
      ? book.undo()
      : turn % 7 === 1 && book.canRedo()
        ? book.redo()
        : book.apply(nextEdit(book), book.revision());
  if (!done.ok) throw new Error(JSON.stringify(done.fault));
  if (done.value !== 'nothing') writeSync(1, `${done.value.revision}\n`);
}

function nextEdit({ records }: Book): Change {
  const { supplier, tank } = records();
  const from = tank.get('T07');
  if (!from) throw new Error('no tank');
  const count = supplier.size + 1;
  const record = { id: `S${count}`, name: '', sells: '', leadDays: 1, carriageCoins: 0, note: '' };
  return {
    label: `supplier ${count}`,
    added: [{ kind: 'supplier', record }],
    updated: [{ kind: 'tank', from, to: { ...from, note: String(count) } }],
    removed: [],
  };
}
