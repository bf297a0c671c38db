import { buildIfStale } from '#electron/host/build-stale.ts';
import type { Bundle } from '#electron/host/is-stale.ts';
import { bringBrowser } from './find-browser.ts';

/**
 * Prepares the bench and the pictures, also on a fresh clone: these bundles built from the current sources, and a
 * browser.
 */
export async function readyToLook(bundles: readonly Bundle[]): Promise<void> {
  for (const bundle of bundles) {
    const built = buildIfStale(bundle, say);
    if (!built.ok) throw new Error(built.fault);
  }
  await bringBrowser(say);
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
