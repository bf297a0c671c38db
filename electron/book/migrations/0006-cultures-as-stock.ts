import type Database from 'better-sqlite3';
import { z } from 'zod';
import { declaredOf } from '#shared-calc/fields/first-recipes.ts';
import type { Migration } from './migration.ts';

/**
 * Tubs come to know what they were started with, kinds how they are harvested, fed and warmed, and what is taken from a
 * tub becomes a record. Isopods are picked, springtails floated.
 */
export const culturesAsStock: Migration = {
  version: 6,
  name: 'cultures as stock',
  up: (db) => {
    db.exec(`
ALTER TABLE culture_kind ADD COLUMN "taken" TEXT NOT NULL DEFAULT 'floated';
ALTER TABLE culture_kind ADD COLUMN "feed_every_days" INTEGER;
ALTER TABLE culture_kind ADD COLUMN "q10" REAL NOT NULL DEFAULT 2;
ALTER TABLE culture_kind ADD COLUMN "at_c" REAL NOT NULL DEFAULT 21;
UPDATE culture_kind SET taken = 'picked' WHERE label LIKE '%isopod%' OR productive_days IS NOT NULL;
UPDATE culture_kind SET feed_every_days = iif(label LIKE '%isopod%', 14, 7) WHERE productive_days IS NULL;
ALTER TABLE tub ADD COLUMN "founders" INTEGER NOT NULL DEFAULT 1;
ALTER TABLE tub ADD COLUMN "way" TEXT NOT NULL DEFAULT 'split';
ALTER TABLE tub ADD COLUMN "from" TEXT REFERENCES tub DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE tub ADD COLUMN "deg_c" REAL;
ALTER TABLE tub ADD COLUMN "ended_on" TEXT;
UPDATE tub SET founders = (SELECT founders FROM culture_kind WHERE culture_kind.id = tub.kind);
CREATE INDEX tub_by_from ON tub ("from");
CREATE TABLE move (
  "id" TEXT PRIMARY KEY NOT NULL,
  "lot" TEXT NOT NULL REFERENCES tub DEFERRABLE INITIALLY DEFERRED,
  "of" TEXT NOT NULL REFERENCES culture_kind DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL,
  "what" TEXT NOT NULL,
  "amount" REAL NOT NULL,
  "job" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX move_by_lot ON move ("lot");
CREATE INDEX move_by_of ON move ("of");
CREATE INDEX move_by_job ON move ("job");
`);
    declareSprings(db);
  },
};

const SeedLine = z.object({
  id: z.string(),
  name: z.string(),
  section: z.string(),
  role: z.string(),
  unit: z.string(),
});
const newUses: ReadonlySet<string> = new Set(['springtailTarget', 'springtailRoom', 'springtailRate']);

/** How springtails grow in a tank is read by use from now on. */
function declareSprings(db: Database.Database): void {
  const lines = z
    .array(SeedLine)
    .parse(db.prepare('SELECT "id", "name", "section", "role", "unit" FROM line WHERE "use" IS NULL').all());
  const update = db.prepare('UPDATE line SET "use" = ? WHERE "id" = ?');
  for (const line of lines) {
    const { use } = declaredOf(line);
    if (use !== undefined && newUses.has(use)) update.run(use, line.id);
  }
}
