import { createRequire } from 'node:module';
import { newestVersion } from '#electron/book/migrate.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import type { Output, Refusal } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { programVersion, readManifest } from './program-version.ts';
import type { Session } from './session.ts';

/** What runs beside the page, and where the program writes; the page knows its own packages. */
export function aboutProgram({ options }: Session): Result<Output<'program.about'>, Refusal> {
  const { logFile } = options;
  const { node, electron } = process.versions;
  return ok({
    version: programVersion(),
    format: newestVersion(migrations),
    ...(logFile !== undefined && { log: logFile }),
    packages: [
      driver(),
      ...(electron === undefined ? [] : [{ name: 'electron', version: electron, licence: 'MIT' }]),
      { name: 'node', version: node, licence: 'MIT' },
    ],
  });
}

function driver(): Output<'program.about'>['packages'][number] {
  const name = 'better-sqlite3';
  const { version, license } = readManifest(createRequire(import.meta.url).resolve(`${name}/package.json`));
  return { name, version, licence: license };
}
