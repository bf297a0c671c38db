import type { Migration } from './migration.ts';

/** A kind of culture says which animals it is; until now its productive days and its label were read for that. */
export const animalsOfACulture: Migration = {
  version: 14,
  name: 'animals of a culture',
  up: (db) => {
    db.exec(`
ALTER TABLE culture_kind ADD COLUMN "animals" TEXT NOT NULL DEFAULT 'springtails';
UPDATE culture_kind SET animals = 'isopods' WHERE label LIKE '%isopod%';
UPDATE culture_kind SET animals = 'flies' WHERE productive_days IS NOT NULL;
`);
  },
};
