import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { readDemo } from '#electron/book/read-demo.ts';
import config from '#renderer/vite.config.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { applyChange, emptyChange } from '#shared-calc/records/change.ts';
import { allKinds, type Records } from '#shared-calc/records/records.ts';

/** The day on which the books of these tests lie open. */
export const standInDay = '2027-03-15';

/** Builds the quiet places over books held in the page alone, and gives the folder they stand in. */
export async function buildStandIn(): Promise<string> {
  const root = fileURLToPath(new URL('.', import.meta.url));
  const outDir = fileURLToPath(new URL('../../../browser/screens/books-stand-in', import.meta.url));
  await build({ ...config, configFile: false, root, logLevel: 'warn', build: { ...config.build, outDir } });
  const demo = demoRecords();
  const none = new Map();
  const plain = { ...demo, packPrice: none, job: none, size: none, localValue: none, stockEntry: none };
  await writeFile(`${outDir}/demo.json`, JSON.stringify({ today: standInDay, lists: toRecordLists(demo) }));
  await writeFile(`${outDir}/plain.json`, JSON.stringify({ today: standInDay, lists: toRecordLists(plain) }));
  return outDir;
}

/** The demo book in memory. */
export function demoRecords(): Records {
  const demo = readDemo(standInDay);
  if (!demo.ok) throw new Error(`${demo.fault.file}: ${demo.fault.says}`);
  const none = Object.fromEntries(allKinds.map((kind) => [kind, new Map()])) as unknown as Records;
  return applyChange(none, { ...emptyChange('demo'), added: demo.value });
}
