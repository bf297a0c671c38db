import { existsSync } from 'node:fs';
import { enableCompileCache } from 'node:module';

/*
 * Starts the command line: from the one file that `npm ci` makes, unless its sources are newer. Plain JavaScript,
 * since making Node read TypeScript takes a third of the whole start.
 */
enableCompileCache();
const built = new URL('../dist/command-line.js', import.meta.url);
const oneFile = existsSync(built)
  ? /** @type {typeof import('./one-file.ts')} */ (await import(built.href))
  : undefined;
const { main } = oneFile?.isFresh() ? oneFile : await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
