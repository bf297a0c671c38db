import { firstHouseTables } from './0001-house-tables.ts';
import { firstJobTables } from './0001-job-tables.ts';
import { firstJournal } from './0001-journal.ts';
import type { Migration } from './migration.ts';

export const firstBook: Migration = {
  version: 1,
  name: 'first book',
  up: (db) => {
    db.exec(firstHouseTables);
    db.exec(firstJobTables);
    db.exec(firstJournal);
  },
};
