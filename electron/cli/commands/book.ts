import { sayBookFault } from '#electron/book/say-book-fault.ts';
import { beginBook } from '#electron/book/seed-demo.ts';
import { sayFinding } from '#electron/book/say-finding.ts';
import { type Beginning, beginnings } from '#shared-calc/contract/beginnings.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal, wrongUse } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { ok } from '#shared-calc/result.ts';
import { today } from '#electron/service/today.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';

const STARTS = beginnings.join('|');

/** Creates a book. Always says what it starts with. */
export const bookNewCommand: Command = {
  name: 'book new',
  usage: `book new FILE --start ${STARTS} [--guesses]: makes a book; full is the demo workshop in full swing, plain the small one, house a workshop of your own with the house recipes, empty one with nothing; --guesses brings the demo's prices into house, marked as guesses`,
  options: { start: 'text', guesses: 'flag' },
  misuse: newMisuse,
  run: (given) => {
    const [file = ''] = given.words;
    const start = startOf(given) ?? 'plain';
    const guesses = given.flag('guesses');
    const made = beginBook(file, { start, guesses }, { today: today(), backups: false });
    if (!made.ok) return refusal(sayBookFault(made.fault, file));
    const { path, close } = made.value;
    close();
    return { is: 'answer', json: { made: path, start, ...(guesses && { guesses }) }, table: () => `Made: ${path}` };
  },
};

function newMisuse(given: Arguments): string | undefined {
  if (given.words.length !== 1) return 'Name one file: book new shop.loamwright --start plain';
  const start = given.text('start');
  if (start === undefined) return `Say what it begins with: --start ${STARTS}.`;
  if (startOf(given) === undefined) return `--start ${start}: it takes ${STARTS}.`;
  return given.flag('guesses') && start !== 'house' ? '--guesses goes with --start house alone.' : undefined;
}

function startOf(given: Arguments): Beginning | undefined {
  return beginnings.find((each) => each === given.text('start'));
}

/** Checks a whole book: the file, every record and its checksum, the issued quotes, the journal. */
export const bookCheckCommand: Command = {
  name: 'book check',
  usage:
    'book check [--accept] [--book FILE]: looks through the whole book; --accept first takes it as it stands, where checksums or journal say otherwise',
  options: { ...bookOption, accept: 'flag' },
  misuse: ({ words: [word] }) =>
    word === undefined ? undefined : `What is ${word} for? Another book is named by --book.`,
  run: (given) =>
    withBook(given, (book) => {
      const accepted = given.flag('accept') ? book.accept() : ok(undefined);
      if (!accepted.ok) return refusal(sayBookFault(accepted.fault, book.path));
      const checked = book.check();
      if (!checked.ok) return { is: 'no book', says: sayBookFault(checked.fault, book.path) };
      const { sound, version, revision, counts, findings } = checked.value;
      const says = findings.map(sayFinding);
      const json = { sound, version, revision, counts, findings: says };
      if (!sound) return { is: 'refused', says, json };
      const rows = Object.entries(counts).map(([kind, count]) => [inWords(kind), String(count)]);
      const table = () => `${textTable(['records', ''], rows, [1])}\n\nThe book is sound, at revision ${revision}.`;
      return { is: 'answer', json, table };
    }),
};

/** `packPrice` as "pack price". */
function inWords(kind: string): string {
  return kind.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** Exports the book as one file, even while it is open in another program. */
export const bookExportCommand: Command = {
  name: 'book export',
  usage: 'book export FILE [--book FILE]: writes the book out as one file',
  options: bookOption,
  run: (given) => {
    const [file, ...more] = given.words;
    if (file === undefined || more.length > 0) return wrongUse('Name one file: book export copy.loamwright');
    return withBook(given, (book) => {
      const done = book.exportTo(file);
      if (!done.ok) return refusal(sayBookFault(done.fault, file));
      return { is: 'answer', json: { exported: done.value.path }, table: () => `Written: ${done.value.path}` };
    });
  },
};
