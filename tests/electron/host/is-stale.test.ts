import { mkdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { isStale } from '#electron/host/is-stale.ts';

import { temporaryFolder } from './host-at-hand.ts';

const bundle = { name: 'page', settings: 'page/settings.ts', sources: ['page', 'core'], built: 'page/dist/index.html' };

/** A project whose page is newer than all its sources. */
function builtProject(): string {
  const root = temporaryFolder();
  for (const folder of ['page/dist', 'core/inner']) mkdirSync(join(root, folder), { recursive: true });
  for (const file of ['page/settings.ts', 'page/main.ts', 'core/inner/sum.ts', 'page/dist/index.html']) {
    writeFileSync(join(root, file), '');
    utimesSync(join(root, file), 1_000, 1_000);
  }
  for (const folder of ['core/inner', 'core', 'page']) utimesSync(join(root, folder), 1_000, 1_000);
  utimesSync(join(root, 'page/dist/index.html'), 2_000, 2_000);
  return root;
}

describe('isStale', () => {
  test('what was built last of all is not built again', () => {
    expect(isStale(builtProject(), bundle)).toBe(false);
  });

  test.each(['page/main.ts', 'core/inner/sum.ts', 'page/settings.ts'])('a later %s makes it stale', (file) => {
    const root = builtProject();
    utimesSync(join(root, file), 3_000, 3_000);

    expect(isStale(root, bundle)).toBe(true);
  });

  test('a source that went makes it stale', () => {
    const root = builtProject();
    rmSync(join(root, 'core/inner/sum.ts'));

    expect(isStale(root, bundle)).toBe(true);
  });

  test('what was never built is stale', () => {
    const root = builtProject();
    rmSync(join(root, 'page/dist'), { recursive: true });

    expect(isStale(root, bundle)).toBe(true);
  });
});
