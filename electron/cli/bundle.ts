import type { Bundle } from '#electron/host/is-stale.ts';

/** The command line as one file; built by `npm ci`, and not used while its sources are newer. */
export const commandLineBundle: Bundle = {
  name: 'command line',
  settings: 'electron/cli/vite.config.ts',
  sources: ['electron', 'shared-calc', 'package-lock.json'],
  built: 'electron/dist/command-line.cjs',
};
