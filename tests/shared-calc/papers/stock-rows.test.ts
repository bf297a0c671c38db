import { describe, expect, test } from 'vitest';
import { readStockRows } from '#shared-calc/papers/stock-rows.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function read(...rows: readonly string[]) {
  const stock = readStockRows(['material,amount,unit', ...rows, ''].join('\r\n'), records);
  if (stock.ok) return Object.fromEntries(stock.value);
  return stock.fault.toSorted((a, b) => a.row - b.row).map(({ row, says }) => [row, says]);
}

describe('readStockRows', () => {
  test('amounts come in the unit of their material, whatever they are written in', () => {
    expect(read('M05,6,L', 'M08,2000,mL', 'M15,0.35,kg', 'T07,1,each')).toEqual({ M05: 6, M08: 2, M15: 350, T07: 1 });
  });

  test('rows of one material add up', () => {
    expect(read('M05,6,L', 'M05,1.5,L')).toEqual({ M05: 7.5 });
  });

  test('an empty store is none', () => {
    expect(read()).toEqual({});
  });

  test('every row that cannot be read is named, and nothing is half taken in', () => {
    expect(read('M05,6,L', 'M05,6,mm', 'M5,6,L', 'M05,six,L', 'M05,,L', 'M05,-1,L', 'M05,6')).toEqual([
      [3, 'M05 is kept in L; "mm" does not fit.'],
      [4, 'No material called M5. Did you mean M05?'],
      [5, 'Amount "six" is not a number.'],
      [6, 'Amount "" is not a number.'],
      [7, 'Amount -1 is below zero.'],
      [8, 'Has 2 fields; the heading has 3.'],
    ]);
  });

  test('a heading without the amounts is refused', () => {
    const stock = readStockRows('material,unit\r\nM05,L\r\n', records);
    expect(stock).toEqual({ ok: false, fault: [{ row: 1, says: 'The heading lacks amount.' }] });
  });
});
