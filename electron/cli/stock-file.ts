import type { Stock } from '#shared-calc/buy/stock.ts';
import { readStockRows } from '#shared-calc/acts/stock-rows.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { readText } from './read-text.ts';

/** Reads `--stock FILE.csv`: rows of material, amount, unit. */
export function readStockFile(file: string, records: Records): Result<Stock, string> {
  const text = readText(file);
  if (text === undefined) return failed(`Cannot read ${file}.`);
  const read = readStockRows(text, records);
  return read.ok
    ? read
    : failed(read.fault.map((row) => `${file}, row ${row.row}: ${sayRowFault(row.fault)}`).join('\n'));
}
