import { z } from 'zod';

import { code, data, orEmpty } from './field.ts';

const Key = z.string().max(120);

/** A column as it is shown, in its place from the left. Columns that the view does not name follow in their own order. */
const Column = z.strictObject({
  key: Key,
  widthRem: z.number().min(2).max(100).optional(),
  hidden: z.boolean().optional(),
});

const Sort = z.strictObject({ column: Key, down: z.boolean() });

/**
 * What a column's cells must meet for their row to be shown: words that stand in it, one of some words, or a figure
 * within bounds, in the unit that is stored.
 */
const Filter = z.strictObject({
  column: Key,
  has: z.string().max(200).optional(),
  among: z.array(z.string().max(200)).max(500).optional(),
  least: z.number().optional(),
  most: z.number().optional(),
});

/** How a table of the program is shown in this book: the order, widths and absence of its columns, sorting, filters. */
export const tableView = {
  /** The table: `tank`, `bench`. */
  id: code('Table'),
  columns: data('Columns', z.array(Column).max(200)),
  /** Left out: the book's own order. */
  sort: orEmpty(data('Sorted by', Sort)),
  filters: data('Filters', z.array(Filter).max(200)),
};
