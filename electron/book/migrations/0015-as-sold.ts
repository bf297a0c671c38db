import type { Migration } from './migration.ts';

/**
 * Jobs past *quoted* are worked from their last issued quote; one without any is worked in the house as it is until it
 * moves on. A closed job was sold if it was paid for.
 */
export const asSold: Migration = {
  version: 15,
  name: 'as sold',
  up: (db) => {
    db.exec(`
ALTER TABLE job ADD COLUMN "sold_as" TEXT;
ALTER TABLE job ADD COLUMN "accepted_on" TEXT;
ALTER TABLE job ADD COLUMN "lost_why" TEXT;
UPDATE job SET "sold_as" = (
  SELECT "id" FROM issued_quote WHERE issued_quote."job" = job."id"
  ORDER BY length("number") DESC, "number" DESC, length("revision") DESC, "revision" DESC LIMIT 1
) WHERE "state" NOT IN ('enquiry', 'surveyed', 'quoted', 'closed') OR ("state" = 'closed' AND "deposit_on" IS NOT NULL);
CREATE TABLE house_change (
  "id" TEXT PRIMARY KEY NOT NULL,
  "recipe" TEXT NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL,
  "before" TEXT,
  "after" TEXT,
  "note" TEXT NOT NULL,
  "from_job" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "in_force_on" TEXT,
  "answers" TEXT NOT NULL
) STRICT;
CREATE INDEX house_change_by_recipe ON house_change ("recipe");
CREATE INDEX house_change_by_from_job ON house_change ("from_job");
`);
  },
};
