import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { tradeFunctions } from '#shared-calc/trade/all-functions.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { BookCheck, Entry, Import } from './answers.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const { book, folder } = useDemoBook();
const records = demoRecords();

function writeFile(name: string, ...rows: readonly string[]): string {
  const file = path.join(folder(), name);
  writeFileSync(file, [...rows, ''].join('\r\n'));
  return file;
}

describe('functions --json', () => {
  test('the whole function book, and one entry of it by any spelling', async () => {
    const all = z.array(Entry).parse(await lwJson('functions'));
    expect(all.map(({ name }) => name)).toEqual(tradeFunctions.map(({ name }) => name));
    const one = all.find(({ name }) => name === 'layer_volume');
    expect(one?.call).toBe('layer_volume(area, depth)');
    expect([await lwJson('functions', 'layer_volume'), await lwJson('functions', 'LAYER_VOLUME')]).toEqual([one, one]);
    expect(Entry.parse(await lwJson('functions', 'pack_mix')).name).toBe('PACK_MIX');
  });
});

describe('book --json', () => {
  test('check tells what the book holds', async () => {
    const report = BookCheck.parse(await lwJson('book', 'check', '--book', book()));
    expect(report).toMatchObject({
      sound: true,
      findings: [],
      counts: { workshop: 1, tank: records.tank.size, recipe: 4 },
    });
  });

  test('export tells where it was written', async () => {
    const file = path.join(folder(), 'copy.loamwright');
    expect(await lwJson('book', 'export', file, '--book', book())).toEqual({ exported: file });
    expect(BookCheck.parse(await lwJson('book', 'check', '--book', file)).sound).toBe(true);
  });

  test('import-prices tells every row, and with --try writes nothing', async () => {
    const file = writeFile(
      'prices.csv',
      'material,pack,unit,price,from',
      'M01,10,L,10.20,2090-04-01',
      'T07,1,each,220,2090-04-01',
    );
    const before = BookCheck.parse(await lwJson('book', 'check', '--book', book()));
    const tried = Import.parse(await lwJson('book', 'import-prices', file, '--try', '--book', book()));
    expect(tried).toEqual({
      tried: true,
      taken: 2,
      prices: [
        { row: 2, material: 'M01', pack: 10, unit: 'L', from: '2090-04-01', price: '10.20', before: '9.80' },
        { row: 3, material: 'T07', pack: 1, unit: 'each', from: '2090-04-01', price: '220.00', before: '214.00' },
      ],
      refused: [],
    });
    expect(BookCheck.parse(await lwJson('book', 'check', '--book', book()))).toEqual(before);
  });

  test('a refused list gives its report as well, exit 1', async () => {
    const file = writeFile('broken.csv', 'material,pack,unit,price,from', 'M01,11,L,10.20,2090-04-01');
    const { code, out } = await lw('book', 'import-prices', file, '--json', '--book', book());
    expect([code, Import.parse(JSON.parse(out))]).toEqual([
      1,
      {
        tried: false,
        taken: 0,
        prices: [],
        refused: [{ row: 2, says: 'M01 has no pack of 11 L. Its packs: 10 L, 45 L.' }],
      },
    ]);
  });
});
