import { commandLineBundle } from '#electron/cli/bundle.ts';
import { buildIfStale } from '#electron/host/build-stale.ts';

/**
 * Runs after `npm ci`: bundles the command line into one file. If that fails, it runs from its sources, only slower.
 */
const built = buildIfStale(commandLineBundle, (line) => process.stdout.write(`${line}\n`));
if (!built.ok) process.stderr.write(`${built.fault} It runs from its sources.\n`);
