import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import type { RecordImport } from '#shared-calc/papers/import-records.ts';
import type { RefusedRow } from '#shared-calc/papers/csv-rows.ts';
import type { PriceImport } from '#shared-calc/papers/import-prices.ts';
import type { Change } from '#shared-calc/records/change.ts';

/** A list as it would be taken in, for a person to look at. */
export interface ImportPreview {
  readonly heading: readonly string[];
  /** Positions of the fields that hold figures. */
  readonly figures: readonly number[];
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
  readonly refused: readonly RefusedRow[];
  readonly change: Change;
}

export function previewRecords({ taken, refused, change }: RecordImport): ImportPreview {
  return {
    heading: ['row', 'code', 'is', 'with'],
    figures: [0],
    rows: taken.map(({ row, code, is, touches }) => ({ row, cells: [String(row), code, is, touches.join(', ')] })),
    refused,
    change,
  };
}

export function previewPrices({ taken, refused, change }: PriceImport, { workshop }: BookContext): ImportPreview {
  return {
    heading: ['row', 'material', 'pack', 'from', 'before', 'price'],
    figures: [0, 4, 5],
    rows: taken.map(({ row, material, pack, unit, from, beforeCoins, priceCoins }) => ({
      row,
      cells: [
        String(row),
        material,
        `${pack} ${unit}`,
        from,
        showCoins(beforeCoins, workshop),
        showCoins(priceCoins, workshop),
      ],
    })),
    refused,
    change,
  };
}
