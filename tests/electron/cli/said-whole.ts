import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { lw, useDemoBook } from './run-cli.ts';

/** A command line, and everything it prints; faults and notices begin with `!`. */
export type Said = readonly [argv: readonly string[], says: readonly string[]];

const withoutBook = new Set(['help', 'work', 'treat', 'functions', 'papers', 'acts', 'book new']);

/** Runs on one book of the demo workshop; a word that begins with `./` is a file in its folder. */
export function useSaidWhole(day?: string) {
  const { book, folder } = useDemoBook(day);
  const place = (word: string) => (word.startsWith('./') ? path.join(folder(), word) : word);
  const said = async (...argv: readonly string[]): Promise<readonly string[]> => {
    const needsNone = withoutBook.has(argv[0] ?? '') || withoutBook.has(argv.slice(0, 2).join(' '));
    const ofBook = needsNone ? [] : ['--book', book()];
    const { out, err } = await lw(...argv.map(place), ...ofBook);
    const beside = err.split('\n').slice(0, -1);
    const printed = out.split('\n').slice(0, -1);
    return [...printed, ...beside.map((line) => `! ${line}`)].map((line) => line.replaceAll(`${folder()}/`, './'));
  };
  return {
    file: (name: string, ...rows: readonly string[]) =>
      writeFileSync(path.join(folder(), name), [...rows, ''].join('\n')),
    said,
    /** Runs them one after the other, on one book. */
    saidInTurn: async (turns: readonly Said[]) => {
      const all: Said[] = [];
      for (const [argv] of turns) all.push([argv, await said(...argv)]);
      return all;
    },
  };
}
