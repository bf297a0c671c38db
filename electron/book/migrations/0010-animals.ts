import type { Migration } from './migration.ts';

const tables = `
CREATE TABLE animal_kind (
  "id" TEXT PRIMARY KEY NOT NULL,
  "label" TEXT NOT NULL,
  "ceiling" REAL,
  "act_from" REAL,
  "floor" REAL,
  "band_low" REAL,
  "band_high" REAL,
  "dip_allowed" REAL,
  "vents" TEXT,
  "least_floor" REAL,
  "least_height" REAL,
  "group_least" INTEGER,
  "group_most" INTEGER,
  "prey" TEXT REFERENCES culture_kind DEFERRABLE INITIALLY DEFERRED,
  "prey_a_day" REAL,
  "crushes_plants" INTEGER CHECK ("crushes_plants" IN (0, 1)),
  "eats_isopods" INTEGER CHECK ("eats_isopods" IN (0, 1)),
  "harm_to_people" TEXT NOT NULL,
  "permits" TEXT NOT NULL,
  "quarantine_days" INTEGER NOT NULL,
  "source" TEXT,
  "source_note" TEXT,
  "note" TEXT NOT NULL,
  "marks" TEXT CHECK (json_valid("marks"))
) STRICT;
CREATE INDEX animal_kind_by_prey ON animal_kind ("prey");
ALTER TABLE size ADD COLUMN "animal_kind" TEXT REFERENCES animal_kind DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE size ADD COLUMN "animals" INTEGER;
CREATE INDEX size_by_animal_kind ON size ("animal_kind");
CREATE TABLE animal_batch (
  "id" TEXT PRIMARY KEY NOT NULL,
  "kind" TEXT NOT NULL REFERENCES animal_kind DEFERRABLE INITIALLY DEFERRED,
  "count" INTEGER NOT NULL,
  "came_on" TEXT NOT NULL,
  "from" TEXT NOT NULL,
  "joined_on" TEXT,
  "looks" TEXT NOT NULL CHECK (json_valid("looks")),
  "tests" TEXT NOT NULL CHECK (json_valid("tests")),
  "place" TEXT NOT NULL,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX animal_batch_by_kind ON animal_batch ("kind");
CREATE TABLE placement (
  "id" TEXT PRIMARY KEY NOT NULL,
  "batch" TEXT NOT NULL REFERENCES animal_batch DEFERRABLE INITIALLY DEFERRED,
  "size" TEXT NOT NULL REFERENCES size DEFERRABLE INITIALLY DEFERRED,
  "count" INTEGER NOT NULL,
  "on" TEXT NOT NULL,
  "anyway" TEXT NOT NULL,
  "who" TEXT REFERENCES rate DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX placement_by_batch ON placement ("batch");
CREATE INDEX placement_by_size ON placement ("size");
CREATE INDEX placement_by_who ON placement ("who");
UPDATE line SET "use" = 'dipAllowed' WHERE "name" = 'dip_allowed' AND "use" IS NULL AND "unit" IN ('%', 'share');
`;

/**
 * Kinds of animal, batches of animals and where they go; what a size is for. A book that exists has none of them. The
 * dip between mistings is read by use, so that a kind can give it.
 */
export const animals: Migration = { version: 10, name: 'animals', up: (db) => db.exec(tables) };
