import { describe, expect, test } from 'vitest';
import { readStockRows } from '#shared-calc/acts/stock-rows.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();

function read(...rows: readonly string[]) {
  const stock = readStockRows(['material,amount,unit', ...rows, ''].join('\r\n'), records);
  if (stock.ok) return Object.fromEntries(stock.value);
  return stock.fault.toSorted((a, b) => a.row - b.row).map(({ row, fault }) => [row, sayRowFault(fault)]);
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
      [3, 'M05 is sold in L; "mm" does not fit.'],
      [4, 'Nothing called M5 in the material book or the tank book. Did you mean M05?'],
      [5, 'M05: Amount: "six" is not a figure.'],
      [6, 'M05: Amount needs a figure.'],
      [7, 'M05: Amount is 0 L or more; -1 L is less.'],
      [8, 'Has 2 fields; the heading has 3.'],
    ]);
  });

  test('a heading without the amounts is refused', () => {
    const stock = readStockRows('material,unit\r\nM05,L\r\n', records);
    expect(stock).toEqual({ ok: false, fault: [{ row: 1, fault: { kind: 'heading-lacks', names: ['amount'] } }] });
  });
});
