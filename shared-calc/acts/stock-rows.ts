import type { Stock } from '#shared-calc/buy/stock.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { readCsv } from '#shared-calc/read/csv-rows.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { unitOfRow, type RefusedRow, type RowFault } from './import-list.ts';

/**
 * Reads stock on hand from CSV rows of material, amount, unit; amounts are converted to the material's unit. All rows
 * or none.
 */
export function readStockRows(text: string, records: Records): Result<Stock, readonly RefusedRow[]> {
  const { rows, refused } = readCsv(text, ['material', 'amount', 'unit']);
  const stock = new Map<string, number>();
  const faults: RefusedRow[] = [...refused];
  for (const { row, fields } of rows) {
    const { material = '' } = fields;
    const amount = readAmount(fields, records);
    if (amount.ok) stock.set(material, (stock.get(material) ?? 0) + amount.value);
    else faults.push({ row, fault: amount.fault });
  }
  return faults.length > 0 ? failed(faults.toSorted((a, b) => a.row - b.row)) : ok(stock);
}

function readAmount(fields: Readonly<Record<string, string>>, records: Records): Result<number, RowFault> {
  const { material: code = '', unit = '', amount = '' } = fields;
  const own = unitOfRow(code, unit, records);
  if (!own.ok) return own;
  const name = calledOf('move', 'amount');
  const read = readMeasure(amount, { name, stored: own.value, shown: unit, low: 0 }, workshopOf(records));
  return read.ok ? ok(read.value ?? 0) : failed({ kind: 'bad-field', code, fault: read.fault });
}
