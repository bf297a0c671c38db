import { basename } from 'node:path';

import type { PlantsNote, RecipeNote } from '#electron/book/migrations/migration.ts';
import { sayAltered } from '#electron/book/say-altered.ts';
import { sayByKind, type Sayings } from '#shared-calc/words/say-by-kind.ts';
import type { LookingFault } from '#shared-calc/records/book-fault.ts';
import type { OpeningNote } from '#electron/book/open-options.ts';
import { sayBookFault } from '#electron/book/say-book-fault.ts';

const sayings: Sayings<OpeningNote, [book: string], readonly string[]> = {
  'backed-up': () => [],
  looking: ({ fault }, book) => [sayLooking(fault, book)],
  altered: ({ rows }, book) => [sayAltered(rows, book)],
  'backup-failed': ({ fault }, book) => [`Today's backup of ${book} could not be made: ${sayBookFault(fault, book)}`],
  'backup-unsound': (_, book) => [
    `${book} is not sound, so it was not backed up today; the earlier backups stay. book check says what is wrong.`,
  ],
  'log-aside': ({ file }, book) => [
    `${book} was put in the place of another file, whose last edits are not in it. They lie in ${basename(file)}.`,
  ],
  migrated: (_, book) => [
    `${book} was brought to the form of this Loamwright; a copy as it was lies with its backups.`,
  ],
  'recipe-worked': sayRecipe,
  'plants-promised': (note) => [sayPlants(note)],
  'issued-altered': ({ quotes }) => [
    `Issued quotes that no longer say what was issued: ${quotes.join(', ')}. Somebody has changed the file.`,
  ],
  'sync-folder': ({ folder }, book) => sayFolder(folder, book),
};

/** What the user should know about a book that has been opened; a backup is not mentioned. */
export function sayOpeningNotes(notes: readonly OpeningNote[], path: string): readonly string[] {
  return notes.flatMap((note) => sayByKind(sayings, note, basename(path)));
}

/** Why a book is only looked at. */
export function sayLooking(fault: LookingFault, book: string): string {
  return `${sayBookFault(fault, book)} It is open for looking: nothing is written in it.`;
}

/** What a recipe has more, what moved, and where it stays as the house has it. */
function sayRecipe({ recipe, added, moved, kept, left }: RecipeNote): readonly string[] {
  const house = (text: string) => (text === '' ? 'new houses have no such line' : `in new houses ${text}`);
  return [
    `${recipe} has ${added} lines more: air, humidity, warming, litter, weight and cover glass answer to vent, plants and lamps.`,
    ...(moved.length > 0 ? [`${recipe} works these otherwise now, so their figures move: ${list(moved)}.`] : []),
    ...(kept.length > 0
      ? [
          `${recipe} keeps what the house has: ${list(kept.map((line) => `${line.label} ${line.has} (${house(line.house)})`))}.`,
        ]
      : []),
    ...(left.length > 0 ? [`${recipe} lacks a line that these read, so they were left out: ${list(left)}.`] : []),
  ];
}

function sayPlants({ basicDays, fullDays, showDays }: PlantsNote): string {
  return `Quotes say that plants that die within ${basicDays} (basic kit), ${fullDays} (full) or ${showDays} days (show) are replaced once. These days are your own promise now: change or clear them in Workshop.`;
}

function list(parts: readonly string[]): string {
  return parts.join('; ');
}

function sayFolder(folder: Extract<OpeningNote, { readonly kind: 'sync-folder' }>['folder'], book: string): string[] {
  const copies =
    folder.conflictCopies.length === 0
      ? ''
      : ` Copies that do not agree lie beside it: ${folder.conflictCopies.join(', ')}.`;
  return [
    `${book} seems to lie in a folder that is kept alike on several machines; open it on one machine at a time.${copies}`,
  ];
}
