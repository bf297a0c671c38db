import type Database from 'better-sqlite3';
import { z } from 'zod';
import { declaredOf } from '#shared-calc/fields/first-recipes.ts';
import { sortKeyAt } from '#shared-calc/records/sort-key.ts';
import type { Migration } from './migration.ts';

const OldLine = z.object({
  id: z.string(),
  recipe: z.string(),
  name: z.string(),
  section: z.string(),
  role: z.string(),
  unit: z.string(),
});

/** Adds to a line the use the program reads it for, and makes its position a text that sorts. */
export const lineUses: Migration = {
  version: 3,
  name: 'uses of lines',
  up: (db) => {
    db.exec('ALTER TABLE line RENAME TO old_line; DROP INDEX line_by_recipe; DROP INDEX line_by_group;');
    db.exec(lineTable);
    db.exec(`INSERT INTO line SELECT "id", "recipe", "id", ${copied}, NULL, NULL, NULL, NULL, NULL FROM old_line`);
    declareAll(db);
    db.exec('DROP TABLE old_line');
  },
};

const copied = `"section", "name", "label", "role", "unit", "text", "options", "note", "low", "high", "shown_first", "inset",
  "material", "group", "task", "per_job", "level", "says", "decides", "caution"`;

const lineTable = `
CREATE TABLE line (
  "id" TEXT PRIMARY KEY NOT NULL,
  "recipe" TEXT NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  "order" TEXT NOT NULL,
  "section" TEXT NOT NULL,
  "name" TEXT NOT NULL,
  "label" TEXT,
  "role" TEXT NOT NULL,
  "unit" TEXT NOT NULL,
  "text" TEXT NOT NULL,
  "options" TEXT CHECK (json_valid("options")),
  "note" TEXT NOT NULL,
  "low" REAL,
  "high" REAL,
  "shown_first" INTEGER NOT NULL CHECK ("shown_first" IN (0, 1)),
  "inset" INTEGER NOT NULL CHECK ("inset" IN (0, 1)),
  "material" TEXT,
  "group" TEXT REFERENCES margin DEFERRABLE INITIALLY DEFERRED,
  "task" TEXT,
  "per_job" INTEGER NOT NULL CHECK ("per_job" IN (0, 1)),
  "level" TEXT,
  "says" TEXT,
  "decides" TEXT,
  "caution" TEXT,
  "use" TEXT,
  "as" TEXT CHECK (json_valid("as")),
  "place" TEXT,
  "part" TEXT,
  "cures" TEXT CHECK (json_valid("cures"))
) STRICT;
CREATE INDEX line_by_recipe ON line ("recipe");
CREATE INDEX line_by_group ON line ("group");
CREATE UNIQUE INDEX line_use_once ON line ("recipe", "use") WHERE "use" IS NOT NULL;
`;

/** Takes lines in the order of the old numbers: the n-th line of its recipe gets the n-th key. */
function declareAll(db: Database.Database): void {
  const lines = z.array(OldLine).parse(db.prepare('SELECT * FROM old_line ORDER BY "recipe", "order", "id"').all());
  const update = db.prepare(
    'UPDATE line SET "order" = ?, "use" = ?, "as" = ?, "place" = ?, "part" = ?, "cures" = ? WHERE "id" = ?',
  );
  const taken = new Map<string, number>();
  for (const line of lines) {
    const nth = (taken.get(line.recipe) ?? 0) + 1;
    taken.set(line.recipe, nth);
    const { use, as, place, part, cures } = declaredOf(line);
    update.run(sortKeyAt(nth), use ?? null, json(as), place ?? null, part ?? null, json(cures), line.id);
  }
}

function json(value: unknown): string | null {
  return value === undefined ? null : JSON.stringify(value);
}
