import type { Migration } from './migration.ts';

/** How the book's tables are shown: order, widths and absence of columns, sorting and filters. */
export const tableViews: Migration = {
  version: 22,
  name: 'table views',
  up: (db) =>
    db.exec(`
CREATE TABLE table_view (
  "id" TEXT PRIMARY KEY NOT NULL,
  "columns" TEXT NOT NULL CHECK (json_valid("columns")),
  "sort" TEXT CHECK (json_valid("sort")),
  "filters" TEXT NOT NULL CHECK (json_valid("filters"))
) STRICT;
`),
};
