import { copyFileSync, existsSync, mkdirSync, readdirSync, rmSync, truncateSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { today } from '#electron/service/today.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const { book, folder } = useDemoBook();

const Checked = z.object({ sound: z.literal(true), counts: z.object({ rate: z.int() }) });
const Backups = z.array(z.object({ file: z.string(), day: z.string(), bytes: z.int() }));
const Recovered = z.object({ recovered: z.string(), from: z.string(), aside: z.string().nullable() });

const later = { id: 'R-night', label: 'Night work', coins: 6200, per: 'h' };

/** A book of its own with a backup of today, and a rate written after it. */
async function shop(name: string): Promise<string> {
  mkdirSync(path.join(folder(), name));
  const file = path.join(folder(), name, 'Shop.loamwright');
  copyFileSync(book(), file);
  await lw('jobs', '--book', file);
  await lwJson('act', 'put', JSON.stringify({ kind: 'rate', record: later }), '--book', file);
  return file;
}

/** How many rates a sound book has. */
async function ratesIn(file: string): Promise<number> {
  return Checked.parse(await lwJson('book', 'check', '--book', file)).counts.rate;
}

describe('a book that does not open', () => {
  test.each([
    ['damaged', (file: string) => truncateSync(file, 5000), true],
    ['missing', (file: string) => rmSync(file), false],
  ])(
    '%s: its backups are listed, and the last one takes its place; what was there is kept',
    async (name, spoil, keeps) => {
      const file = await shop(name);
      const was = await ratesIn(book());
      spoil(file);
      const [newest] = Backups.parse(await lwJson('book', 'backups', '--book', file));
      expect([newest?.day, (await lw('jobs', '--book', file)).code]).toEqual([today(), 3]);

      const { from, aside } = Recovered.parse(await lwJson('book', 'recover', '--book', file));
      expect([from, await ratesIn(file), aside !== null]).toEqual([newest?.file, was, keeps]);
      expect(aside === null || existsSync(aside)).toBe(true);
    },
  );

  test('without a backup nothing is moved', async () => {
    const file = path.join(folder(), 'alone', 'Shop.loamwright');
    mkdirSync(path.dirname(file));
    copyFileSync(book(), file);
    truncateSync(file, 5000);
    const { code, err } = await lw('book', 'recover', '--book', file);

    expect([code, err]).toEqual([1, `No backup of ${file} was found. Those that are there: book backups\n`]);
    expect(readdirSync(path.dirname(file))).toEqual(['Shop.loamwright']);
    expect(await lw('book', 'backups', '--book', file)).toMatchObject({
      code: 1,
      err: `No backup of ${file} was found.\n`,
    });
  });
});

describe('a book that opens', () => {
  test('gets what a backup says as one edit; it is not replaced by one', async () => {
    const file = await shop('open');
    const was = await ratesIn(book());
    expect(await lw('book', 'recover', '--book', file)).toMatchObject({
      code: 1,
      err: `${file} opens and is sound. To bring back what a backup says: book restore DAY\n`,
    });
    expect(await lwJson('book', 'restore', today(), '--book', file)).toMatchObject({ revision: 3 });
    expect(await ratesIn(file)).toBe(was);
    expect(await lw('book', 'restore', '2020-01-01', '--book', file)).toMatchObject({
      code: 1,
      err: `No backup from 2020-01-01 of ${file} was found. Those that are there: book backups\n`,
    });
  });

  test('its backups stand in a table', async () => {
    const file = await shop('table');
    const lines = (await lw('book', 'backups', '--book', file)).out.split('\n');
    expect([lines[0]?.trimEnd(), lines[2]]).toEqual([
      expect.stringMatching(/^day\s+size\s+jobs\s+tanks\s+materials\s+file$/),
      expect.stringMatching(
        new RegExp(`^${today()} +\\d+ kB +1 +12 +48  .*Shop backups/Shop ${today()}\\.loamwright$`),
      ),
    ]);
  });
});
