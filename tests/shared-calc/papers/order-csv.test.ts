import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';

const order: SupplierOrder = {
  order: 'O-0001',
  supplier: 'S-greavel',
  name: 'Greavel Pane Cutters',
  on: '2027-03-08',
  jobs: 'J02',
  note: '',
  plantsByClass: '',
  rows: [
    { material: 'T05', label: 'Rectangle 600 × 445 × 600', what: '1 piece', cost: '148.00' },
    {
      material: 'M25b',
      label: '=Cover "glass", cut',
      what: '1 of 597 × 418 mm, 4 mm glass (J02)',
      cost: '11.60',
    },
  ],
  goods: '159.60',
  carriage: '12.00',
  landed: '171.60',
  shortOfMinimum: '',
  arrivesOn: '2027-03-22',
  orderBy: { day: '2027-03-16', job: 'J02' },
};

describe('orderCsv', () => {
  test('another reader finds a row for each line, the sums and the days', () => {
    expect(parse(orderCsv(order, { decimalComma: false }))).toEqual([
      ['material', 'label', 'send', 'cost'],
      ['T05', 'Rectangle 600 × 445 × 600', '1 piece', '148.00'],
      ['M25b', '\'=Cover "glass", cut', '1 of 597 × 418 mm, 4 mm glass (J02)', '11.60'],
      ['', 'goods', '', '159.60'],
      ['', 'carriage', '', '12.00'],
      ['', 'landed', '', '171.60'],
      ['', 'order by', '2027-03-16', ''],
      ['', 'expected', '2027-03-22', ''],
    ]);
  });

  test('with a decimal comma fields are parted by semicolons', () => {
    expect(parse(orderCsv(order, { decimalComma: true }), { delimiter: ';' })[1]).toEqual([
      'T05',
      'Rectangle 600 × 445 × 600',
      '1 piece',
      '148,00',
    ]);
  });
});
