import { existsSync } from 'node:fs';
import { createRequire, enableCompileCache } from 'node:module';

/*
 * Starts the command line: from the one file that `npm ci` makes, unless its sources are newer. Plain JavaScript,
 * since making Node read TypeScript takes a third of the whole start.
 */
enableCompileCache();
const built = `${import.meta.dirname}/../dist/command-line.cjs`;
const oneFile = existsSync(built)
  ? /** @type {typeof import('./one-file.ts')} */ (createRequire(import.meta.url)(built))
  : undefined;
const { main } = oneFile?.isFresh() ? oneFile : await import('./main.ts');
// A reader that stops, such as `head`, is no fault; a full disk is.
process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
  const isClosed = error.code === 'EPIPE';
  if (!isClosed) process.stderr.write(`What was to be said could not be written (${error.message}).\n`);
  process.exit(isClosed ? 0 : 1);
});
const code = await main(process.argv.slice(2));
// Once all that was said is out it ends at once: left to itself Node waits for work of its own that nobody reads.
if (code !== undefined) {
  process.stdout.write('', (error) => error || process.stderr.write('', () => process.exit(code)));
}
