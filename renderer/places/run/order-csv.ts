import { orderWords } from '#renderer/print/goods-words.ts';
import { csvText, type CsvCell } from '#shared-calc/papers/csv-text.ts';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { Workshop } from '#shared-calc/records/records.ts';

/** An order to one supplier as CSV: a row a thing to send, the cost at the first of a material, then the sums. */
export function orderCsv(order: SupplierOrder, workshop: Pick<Workshop, 'decimalComma'>): string {
  const rows = order.rows.flatMap(({ material, label, what, cost }) =>
    (what.length > 0 ? what : ['']).map((send, at): CsvCell[] => [
      material,
      label,
      orderWords(send),
      at === 0 ? { amount: cost } : '',
    ]),
  );
  const sum = (label: string, amount: string): CsvCell[] => ['', label, '', { amount }];
  return csvText(
    [
      ['material', 'label', 'send', 'cost'],
      ...rows,
      sum('goods', order.goods),
      sum('carriage', order.carriage),
      sum('landed', order.landed),
    ],
    workshop,
  );
}
