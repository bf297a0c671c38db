import type { Workshop } from '#shared-calc/records/records.ts';
import { csvText, type CsvCell } from './csv-text.ts';
import type { SupplierOrder } from './supplier-orders.ts';

/** An order to one supplier as CSV: a row a thing to send, the cost at the first of a material, then sums and days. */
export function orderCsv(order: SupplierOrder, workshop: Pick<Workshop, 'decimalComma'>): string {
  const rows = order.rows.flatMap(({ material, label, what, cost }) =>
    (what.length > 0 ? what : ['']).map((send, at): CsvCell[] => [
      material,
      label,
      send,
      at === 0 ? { amount: cost } : '',
    ]),
  );
  const sum = (label: string, amount: string): CsvCell[] => ['', label, '', { amount }];
  const day = (label: string, on: string | undefined): CsvCell[][] => (on === undefined ? [] : [['', label, on, '']]);
  return csvText(
    [
      ['material', 'label', 'send', 'cost'],
      ...rows,
      sum('goods', order.goods),
      sum('carriage', order.carriage),
      sum('landed', order.landed),
      ...day('order by', order.orderBy?.day),
      ...day('expected', order.arrivesOn),
    ],
    workshop,
  );
}
