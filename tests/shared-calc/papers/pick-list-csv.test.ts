import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { pickListCsv } from '#shared-calc/papers/pick-list-csv.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';

describe('pickListCsv', () => {
  test('a row a thing to have ready, size after size, read back by another reader', () => {
    const records = demoRecords();
    const bench = demoBench({ sizes: ['T05', 'T07'], job: { soil_rise: '0 mm' } }, records);
    const lists = pickLists(bench, records, plainDisplay);
    bench.close();

    const rows: readonly string[][] = parse(pickListCsv(lists, { decimalComma: false }), { from: 2 });

    expect(rows).toHaveLength(lists.reduce((sum, { rows: things }) => sum + things.length, 0));
    expect(rows.find(([size, , , , what]) => size === 'T07' && what === 'Expanded clay, loose')).toEqual([
      'T07',
      'Rectangle 900 × 445 × 600',
      '1',
      'Drainage',
      'Expanded clay, loose',
      'Expanded clay 8-16 mm',
      '16.84\u00a0L',
      'Store',
      'Builder',
    ]);
  });
});
