import { writeFile } from 'node:fs/promises';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import config from '#renderer/vite.config.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

/** Builds the views of preparing over a busy book that exists only in the page, and returns their folder. */
export async function buildPreparePages(): Promise<string> {
  const root = fileURLToPath(new URL('.', import.meta.url));
  const outDir = mkdtempSync(join(tmpdir(), 'loamwright-prepare-'));
  await build({ ...config, configFile: false, root, logLevel: 'warn', build: { ...config.build, outDir } });
  await writeFile(join(outDir, 'book.json'), JSON.stringify({ today: DEMO_DAY, lists: toRecordLists(busyBook()) }));
  return outDir;
}
