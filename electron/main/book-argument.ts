import { resolve } from 'node:path';

/** The book the program is started with: `--book FILE`, or a book file that was double-clicked. */
export function bookArgument(argv: readonly string[], folder: string): string | undefined {
  const at = argv.indexOf('--book');
  const named = at >= 0 ? argv[at + 1] : argv.slice(1).find((each) => each.endsWith('.loamwright'));
  return named === undefined || named.startsWith('--') ? undefined : resolve(folder, named);
}
