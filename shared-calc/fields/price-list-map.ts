import { z } from 'zod';
import { code, day } from './field.ts';
import { dateOrders } from './workshop.ts';

const Heading = z.string().min(1).max(200).optional();

/** The heading of each column, as the list has it. */
const Columns = z.strictObject({
  article: Heading,
  material: Heading,
  label: Heading,
  pack: Heading,
  unit: Heading,
  price: Heading,
  from: Heading,
});

/** What a column of a supplier's price list may hold. */
export const listColumns = Columns.keyof().options;

export type ListColumn = (typeof listColumns)[number];

/** How a supplier writes price lists; every part may be left out. */
export const PriceListMap = z.strictObject({
  columns: Columns.optional(),
  /** The code of our goods by the supplier's article number. */
  articles: z.record(z.string(), code().schema).optional(),
  dates: z.enum(dateOrders).optional(),
  decimal: z.enum(['.', ',']).optional(),
  /** The day from which prices hold, if the list has no column of days. */
  from: day('From').schema.optional(),
});

export type PriceListMap = z.infer<typeof PriceListMap>;
