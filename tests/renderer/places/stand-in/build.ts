import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import config from '#renderer/vite.config.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

/** Builds the book views over books that exist only in the page, and returns their folder; each test has its own. */
export async function buildStandIn(name: string): Promise<string> {
  const root = fileURLToPath(new URL('.', import.meta.url));
  const outDir = fileURLToPath(new URL(`../../../browser/screens/${name}`, import.meta.url));
  await build({ ...config, configFile: false, root, logLevel: 'warn', build: { ...config.build, outDir } });
  const demo = demoRecords();
  const none = new Map();
  const plain = { ...demo, packPrice: none, job: none, size: none, localValue: none, move: none };
  await writeFile(`${outDir}/demo.json`, JSON.stringify({ today: demoDay, lists: toRecordLists(demo) }));
  await writeFile(`${outDir}/plain.json`, JSON.stringify({ today: demoDay, lists: toRecordLists(plain) }));
  return outDir;
}
