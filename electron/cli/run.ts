import { enableCompileCache } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { isStale, projectFolder } from '#electron/host/build-stale.ts';
import { commandLineBundle } from './bundle.ts';

/** What the built file exports, as main.ts does. */
interface CommandLine {
  readonly main: (argv: readonly string[]) => Promise<number>;
}

enableCompileCache();
const built = join(projectFolder, commandLineBundle.built);
const { main } = isStale(projectFolder, commandLineBundle)
  ? await import('./main.ts')
  : ((await import(pathToFileURL(built).href)) as CommandLine);
process.exitCode = await main(process.argv.slice(2));
