import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames } from '#electron/cli/commands.ts';
import { useSaidWhole } from './said-whole.ts';

/* Long output is in files, compared character by character. */
const { said } = useSaidWhole('2027-03-08');

const inFiles: readonly (readonly [file: string, argv: readonly string[]])[] = [
  ['help', ['help']],
  ['functions', ['functions']],
  ['bench', ['bench', '--sizes', 'T05,T07x2', '--on', '2027-03-08', '--set', 'T05.litter=', '--set', 'kit=show']],
  ['needs', ['needs', '--sizes', 'T05', '--on', '2027-03-08']],
  ['run', ['run', '--sizes', 'T03,T07', '--on', '2027-03-08']],
];

/** The files that hold the full output of a command. */
const readIn: Readonly<Record<string, string>> = {
  work: 'said-of-figures',
  bench: 'said-of-figures',
  needs: 'said-of-figures',
  run: 'said-of-figures',
  store: 'said-of-store',
  'store in': 'said-of-store',
  'store use': 'said-of-store',
  'store waste': 'said-of-store',
  'store sell': 'said-of-store',
  'store count': 'said-of-store',
  'store keep': 'said-of-store',
  'store least': 'said-of-store',
  'order place': 'said-of-orders',
  'order list': 'said-of-orders',
  'order show': 'said-of-orders',
  'order in': 'said-of-orders',
  'order close': 'said-of-orders',
  'order new': 'said-of-orders',
  quote: 'said-of-figures',
  changed: 'said-of-revisions',
  today: 'said-of-today',
  jobs: 'said-of-jobs',
  'job new': 'said-of-jobs',
  'job set': 'said-of-jobs',
  'job state': 'said-of-jobs',
  'job deposit': 'said-of-jobs',
  'job copy': 'said-of-jobs',
  'job sizes': 'said-of-jobs',
  'job survey': 'said-of-survey',
  'job sold': 'said-of-sold',
  'house propose': 'said-of-sold',
  'house force': 'said-of-sold',
  'house drop': 'said-of-sold',
  'house changes': 'said-of-sold',
  'house answer': 'said-of-sold',
  'recipe list': 'commands/recipe',
  'recipe diff': 'commands/recipe',
  'recipe fork': 'commands/recipe',
  'recipe take': 'commands/recipe',
  'recipe send': 'commands/recipe',
  'recipe log': 'commands/recipe',
  'recipe new': 'commands/recipe',
  acts: 'said-of-books',
  act: 'said-of-books',
  prepare: 'said-of-plans',
  did: 'said-of-steps',
  treat: 'said-of-plans',
  cultures: 'said-of-plans',
  'tub start': 'said-of-tubs',
  'tub harvest': 'said-of-tubs',
  'tub count': 'said-of-tubs',
  'tub end': 'said-of-tubs',
  'tub list': 'said-of-tubs',
  animals: 'said-of-animals',
  functions: 'said-of-figures',
  papers: 'said-of-books',
  paper: 'said-of-papers',
  'book new': 'said-of-books',
  'book check': 'said-of-books',
  'book export': 'said-of-books',
  'book backups': 'book-backups',
  'book restore': 'book-backups',
  'book recover': 'book-backups',
  'book import-prices': 'said-of-books',
  'prices import': 'said-of-price-lists',
  'prices export': 'said-of-price-lists',
  'prices rise': 'said-of-prices',
  'prices touched': 'said-of-prices',
  'prices missing': 'said-of-missing',
  start: '../start',
  completion: 'completion',
};

describe('what is printed at length', () => {
  test.each(inFiles)('%s', async (file, argv) => {
    expect(`${(await said(...argv)).join('\n')}\n`).toBe(read(`said/${file}.txt`));
  });
});

describe('what is printed', () => {
  test('is compared for every command that there is', () => {
    expect(Object.keys(readIn)).toEqual(commandNames);
  });

  test.each(Object.entries(readIn))('of %s is compared whole in %s', (command, file) => {
    const words = command.split(' ').map((word) => `'${word}'`);
    const called = new RegExp(String.raw`${words.join(String.raw`,\s*`)}|\b${command}Command\.run`);
    expect(read(`${file}.test.ts`)).toMatch(called);
  });
});

function read(file: string): string {
  return readFileSync(path.join(import.meta.dirname, file), 'utf8');
}
