import type { Migration } from './migration.ts';

/** A recipe may have a parent and hold only its differences; a size may have a recipe of its own. */
export const recipeFamily: Migration = {
  version: 21,
  name: 'recipe family',
  up: (db) =>
    db.exec(`
ALTER TABLE recipe ADD COLUMN "parent" TEXT REFERENCES recipe DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE recipe ADD COLUMN "animal_kind" TEXT REFERENCES animal_kind DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE recipe ADD COLUMN "tanks" TEXT CHECK (json_valid("tanks"));
ALTER TABLE recipe ADD COLUMN "season" TEXT CHECK (json_valid("season"));
CREATE INDEX recipe_by_parent ON recipe ("parent");
CREATE INDEX recipe_by_animal_kind ON recipe ("animal_kind");
CREATE TABLE difference (
  "id" TEXT PRIMARY KEY NOT NULL,
  "recipe" TEXT NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  "line" TEXT NOT NULL,
  "what" TEXT NOT NULL,
  "fields" TEXT NOT NULL CHECK (json_valid("fields")),
  "was" TEXT NOT NULL CHECK (json_valid("was")),
  "for" TEXT CHECK (json_valid("for"))
) STRICT;
CREATE INDEX difference_by_recipe ON difference ("recipe");
ALTER TABLE size ADD COLUMN "recipe" TEXT REFERENCES recipe DEFERRABLE INITIALLY DEFERRED;
CREATE INDEX size_by_recipe ON size ("recipe");
ALTER TABLE house_change ADD COLUMN "how" TEXT;
ALTER TABLE house_change ADD COLUMN "of" TEXT REFERENCES recipe DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE house_change ADD COLUMN "by" TEXT REFERENCES rate DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE house_change ADD COLUMN "for" TEXT CHECK (json_valid("for"));
CREATE INDEX house_change_by_of ON house_change ("of");
CREATE INDEX house_change_by_by ON house_change ("by");
`),
};
