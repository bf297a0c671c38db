import type { Stock } from '#shared-calc/buy/stock.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { findUnit, fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { readCsv, type CsvRow, type RefusedRow } from './csv-rows.ts';

/** Stock on hand from CSV rows of material, amount, unit; each in its material's own unit. Nothing half taken in. */
export function readStockRows(text: string, records: Records): Result<Stock, readonly RefusedRow[]> {
  const { rows, refused } = readCsv(text, ['material', 'amount', 'unit']);
  const stock = new Map<string, number>();
  const faults = [...refused];
  for (const row of rows) {
    const read = readRow(row, records);
    if (read.ok) stock.set(read.value.material, (stock.get(read.value.material) ?? 0) + read.value.amount);
    else faults.push({ row: row.row, says: read.fault });
  }
  return faults.length > 0 ? failed(faults.toSorted((a, b) => a.row - b.row)) : ok(stock);
}

function readRow({ fields }: CsvRow, records: Records): Result<{ material: string; amount: number }, string> {
  const { material = '', unit = '', amount = '' } = fields;
  const own = unitOfGoods(material, records);
  if (own === undefined)
    return failed(`No material called ${material}.${didYouMean(material, records.material.keys())}`);
  const given = findUnit(unit);
  if (!given || !sameDimension(given.dimension, unitOf(own).dimension)) {
    return failed(`${material} is kept in ${own}; "${unit}" does not fit.`);
  }
  const figure = readAmount(amount);
  return figure.ok ? ok({ material, amount: fromBase(toBase(figure.value, given), unitOf(own)) }) : figure;
}

function readAmount(text: string): Result<number, string> {
  const figure = Number(text);
  if (text === '' || !Number.isFinite(figure)) return failed(`Amount "${text}" is not a number.`);
  return figure < 0 ? failed(`Amount ${text} is below zero.`) : ok(figure);
}
