import type { Migration } from './migration.ts';

/** A supplier remembers how its price lists are read: columns, article numbers, order of dates, decimal sign. */
export const priceLists: Migration = {
  version: 20,
  name: 'price lists',
  up: (db) => db.exec('ALTER TABLE supplier ADD COLUMN "price_list" TEXT CHECK (json_valid("price_list"));'),
};
