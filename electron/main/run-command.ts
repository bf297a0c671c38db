import { createRequire } from 'node:module';
import { app } from 'electron';

/** What `cli/one-file.ts` gives. */
interface CommandLine {
  readonly main: (argv: readonly string[]) => Promise<number | undefined>;
}

/** Runs the command line in place of the window, from its own file, which the window need not read. */
export async function runCommand(words: readonly string[]): Promise<void> {
  // As in cli/run.js: a reader that stops is no fault, a full disk is.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => app.exit(error.code === 'EPIPE' ? 0 : 1));
  const commandLine = createRequire(import.meta.url)('./command-line.cjs') as CommandLine;
  const code = await commandLine.main(words);
  // `app.exit` does not wait for what is still to be written.
  process.stdout.write('', () => process.stderr.write('', () => app.exit(code ?? 0)));
}
