import type { Workshop } from '#shared-calc/records/records.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import type { SupplierOrder } from './supplier-orders.ts';

const head = ['material', 'label', 'send', 'cost'];

/** An order to one supplier as CSV. */
export function orderCsv(order: SupplierOrder, workshop: Pick<Workshop, 'decimalComma'>): string {
  return csvText([head, ...orderRows(order)], workshop);
}

/** Orders to several suppliers as one CSV, each row with its supplier. */
export function ordersCsv(orders: readonly SupplierOrder[], workshop: Pick<Workshop, 'decimalComma'>): string {
  const rows = orders.flatMap((order) => orderRows(order).map((row) => [order.name, ...row]));
  return csvText([['supplier', ...head], ...rows], workshop);
}

/** A row for each line, then sums and days. */
function orderRows(order: SupplierOrder): readonly (readonly CsvCell[])[] {
  const rows = order.rows.map(({ material, label, what, cost }): CsvCell[] => [
    material,
    label,
    what,
    { amount: cost },
  ]);
  const sum = (label: string, amount: string): CsvCell[] => ['', label, '', { amount }];
  const day = (label: string, on: string): CsvCell[][] => (on === '' ? [] : [['', label, on, '']]);
  return [
    ...rows,
    sum('goods', order.goods),
    sum('carriage', order.carriage),
    sum('landed', order.landed),
    ...day('order by', order.orderBy?.day ?? ''),
    ...day('expected', order.arrivesOn),
  ];
}
