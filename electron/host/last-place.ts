import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

import { z } from 'zod';

const LastPlace = z.strictObject({ port: z.int().min(1).max(65_535), secret: z.string().length(43) });
export type LastPlace = z.infer<typeof LastPlace>;

/** Where a run that did not end by itself was served: the next takes the same place, so that its pages find it again. */
export function readLastPlace(file: string): LastPlace | undefined {
  try {
    return LastPlace.safeParse(JSON.parse(readFileSync(file, 'utf8'))).data;
  } catch {
    // None was left behind, or it is spoilt: a new place is taken.
    return undefined;
  }
}

/** Only the user may read it. Where it cannot be written, pages do not find their way back, and no more. */
export function writeLastPlace(file: string, place: LastPlace): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
    rmSync(file, { force: true });
    writeFileSync(file, JSON.stringify(place), { mode: 0o600 });
  } catch {
    // See above.
  }
}

/** A run that ends by itself takes its own place away, and lets another's be. */
export function forgetLastPlace(file: string, place: LastPlace): void {
  const last = readLastPlace(file);
  if (last?.secret === place.secret) rmSync(file, { force: true });
}
