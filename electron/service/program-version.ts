import { readFileSync } from 'node:fs';
import { z } from 'zod';

const Manifest = z.object({ version: z.string(), license: z.string() });

/** Version and licence of a package, by the path of its package.json. */
export function readManifest(file: URL | string): z.infer<typeof Manifest> {
  return Manifest.parse(JSON.parse(readFileSync(file, 'utf8')));
}

/** The program's version. From source and built file alike, the project or packed program is two folders up. */
export function programVersion(): string {
  return readManifest(new URL('../../package.json', import.meta.url)).version;
}
