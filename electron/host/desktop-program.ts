import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { z } from 'zod';

const Package = z.looseObject({ version: z.string() });

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The Electron program, if it is installed. Its package is not imported, because importing it would start a download.
 */
export function findDesktopProgram(packageFolder: string, environment: Environment): string | undefined {
  const name = readText(join(packageFolder, 'path.txt'));
  const elsewhere = environment['ELECTRON_OVERRIDE_DIST_PATH'];
  if (elsewhere) return thereOnly(join(elsewhere, name ?? 'electron'));
  const version = readText(join(packageFolder, 'dist/version'))?.replace(/^v/, '');
  if (name === undefined || version === undefined || version !== packageVersion(packageFolder)) return undefined;
  return thereOnly(join(packageFolder, 'dist', name));
}

function packageVersion(folder: string): string | undefined {
  const text = readText(join(folder, 'package.json'));
  return text === undefined ? undefined : Package.parse(JSON.parse(text)).version;
}

function readText(file: string): string | undefined {
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : undefined;
}

function thereOnly(file: string): string | undefined {
  return existsSync(file) ? file : undefined;
}
