import { isStale, projectFolder } from '#electron/host/is-stale.ts';
import { commandLineBundle } from './bundle.ts';
import { main as runCommandLine, type Streams } from './main.ts';

/** Same as in main.ts. */
export function main(argv: readonly string[], streams?: Streams): Promise<number | undefined> {
  return runCommandLine(argv, streams);
}

/** Whether this bundle is newer than its sources. */
export function isFresh(): boolean {
  return !isStale(projectFolder, commandLineBundle);
}
