import { isStale, projectFolder } from '#electron/host/is-stale.ts';
import { commandLineBundle } from './bundle.ts';
import { main as runCommandLine, type Streams } from './main.ts';

/** As main.ts does it. */
export function main(argv: readonly string[], streams?: Streams): Promise<number | undefined> {
  return runCommandLine(argv, streams);
}

/** Whether this one file is as new as its sources. */
export function isFresh(): boolean {
  return !isStale(projectFolder, commandLineBundle);
}
