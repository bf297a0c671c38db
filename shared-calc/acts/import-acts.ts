import { z } from 'zod';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ListImport } from './import-list.ts';
import { importPrices } from './import-prices.ts';
import { importRecords } from './import-records.ts';

const readers = {
  tanks: (csv, records) => importRecords('tank', csv, records),
  materials: (csv, records) => importRecords('material', csv, records),
  animals: (csv, records) => importRecords('animalKind', csv, records),
  suppliers: (csv, records) => importRecords('supplier', csv, records),
  prices: importPrices,
} as const satisfies Readonly<Record<string, (csv: string, records: Records) => ListImport<unknown>>>;

const TakeInList = z.strictObject({
  list: z.enum(['tanks', 'materials', 'suppliers', 'animals', 'prices']),
  csv: z.string().describe('The list itself: comma-separated text, with its headings in the first row.'),
  file: z.string().max(200).optional().describe('What the file is called, for Undo.'),
});

export const takeInList = act<z.infer<typeof TakeInList>>({
  name: 'takeInList',
  says: 'Takes a list of tanks, materials, suppliers, kinds of animal or prices in, the whole of it or nothing.',
  input: TakeInList,
  run: ({ records }, { list, csv, file }) => {
    const { refused, change } = readers[list](csv, records);
    if (refused.length > 0) return failed({ kind: 'rows-refused', rows: refused });
    return ok({ ...change, label: file === undefined ? change.label : `${change.label}, ${file}` });
  },
});
