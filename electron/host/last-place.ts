import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

import { z } from 'zod';

const LastPlace = z.strictObject({ port: z.int().min(1).max(65_535), secret: z.string().length(43) });
export type LastPlace = z.infer<typeof LastPlace>;

/** The port and secret of a run that was killed: the next run uses the same, so that open pages reconnect. */
export function readLastPlace(file: string): LastPlace | undefined {
  try {
    return LastPlace.safeParse(JSON.parse(readFileSync(file, 'utf8'))).data;
  } catch {
    // Missing or invalid: a new port and secret are used.
    return undefined;
  }
}

/** Only the user can read the file. If it cannot be written, open pages cannot reconnect after a crash. */
export function writeLastPlace(file: string, place: LastPlace): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
    rmSync(file, { force: true });
    writeFileSync(file, JSON.stringify(place), { mode: 0o600 });
  } catch {
    // See above.
  }
}

/** A run that ends normally removes its own entry, and leaves the entry of another run. */
export function forgetLastPlace(file: string, place: LastPlace): void {
  const last = readLastPlace(file);
  if (last?.secret === place.secret) rmSync(file, { force: true });
}
