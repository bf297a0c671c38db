import { commandLineBundle } from '#electron/cli/bundle.ts';
import { buildIfStale } from '#electron/host/build-stale.ts';

/** After `npm ci`: makes the command line one file. Where that fails it runs from its sources, only slower. */
const built = buildIfStale(commandLineBundle, (line) => process.stdout.write(`${line}\n`));
if (!built.ok) process.stderr.write(`${built.fault} It runs from its sources.\n`);
