import type { Migration } from './migration.ts';

/**
 * Materials that are to be had only in a season; of what was done also who took how long, whether it ends a step, and
 * what was read. The leaves of the workshop that the program brings get the season that its supplier's note tells.
 */
export const stepsDone: Migration = {
  version: 16,
  name: 'steps done, and seasons',
  up: (db) => {
    db.exec(`
ALTER TABLE material ADD COLUMN "season" TEXT CHECK (json_valid("season"));
UPDATE material SET season = '{"from":"10-01","to":"03-31"}' WHERE id IN ('M15', 'M16', 'M17') AND supplier = 'S-saltbarrow';
ALTER TABLE done ADD COLUMN "name" TEXT;
ALTER TABLE done ADD COLUMN "minutes" REAL;
ALTER TABLE done ADD COLUMN "rate_coins" INTEGER;
ALTER TABLE done ADD COLUMN "ends" INTEGER NOT NULL DEFAULT 0 CHECK ("ends" IN (0, 1));
ALTER TABLE done ADD COLUMN "size" TEXT REFERENCES size DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE done ADD COLUMN "tub" TEXT REFERENCES tub DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE done ADD COLUMN "order" TEXT;
ALTER TABLE done ADD COLUMN "readings" TEXT CHECK (json_valid("readings"));
CREATE INDEX done_by_size ON done ("size");
CREATE INDEX done_by_tub ON done ("tub");
`);
  },
};
