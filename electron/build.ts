import { desktopBundles } from './desktop-bundles.ts';
import { buildIfStale, pageBundle } from '#electron/host/build-stale.ts';

/** `node electron/build.ts`: builds page, main and preload if they are older than their sources. */
for (const bundle of [pageBundle, ...desktopBundles]) {
  const built = buildIfStale(bundle, (line) => process.stdout.write(`${line}\n`));
  if (built.ok) continue;
  process.stderr.write(`${built.fault}\n`);
  process.exitCode = 1;
}
