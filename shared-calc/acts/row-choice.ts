import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { readListDay } from '#shared-calc/read/list-days.ts';
import { readListPack } from '#shared-calc/read/list-pack.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { readListPrice } from './price-list-money.ts';
import type { ListRow } from './price-list.ts';

/** What a person says of a row of a list; what is left out stays as the list has it. */
export interface RowChoice {
  /** Left out: the row is taken if its goods are known. */
  readonly act?: 'new material' | 'leave';
  /** One of our own codes. */
  readonly material?: string;
  /** Texts as a person types them, by the workshop's own signs and order of dates. */
  readonly pack?: string;
  readonly price?: string;
  readonly from?: string;
}

/** The row with what was typed over its cells. */
export function rowAsTyped(row: ListRow, { pack, price, from }: RowChoice, workshop: Workshop): ListRow {
  const decimal = { sign: workshop.decimalComma ? ',' : '.', isKnown: false } as const;
  const name = recordFields.packPrice.from.heading;
  return {
    ...row,
    ...(pack !== undefined && { pack: readListPack(pack, '', decimal) }),
    ...(price !== undefined && { priceCoins: readListPrice(price.trim(), { decimal, workshop, marks: [] }) }),
    ...(from !== undefined && { from: readListDay(from, name, workshop.dateOrder) }),
  };
}
