/** The tables of what the house does, as in the first release. */
export const firstJobTables = `
CREATE TABLE recipe (
  "id" TEXT PRIMARY KEY NOT NULL,
  "title" TEXT NOT NULL,
  "note" TEXT NOT NULL
) STRICT;

CREATE TABLE line (
  "id" TEXT PRIMARY KEY NOT NULL,
  "recipe" TEXT NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  "order" REAL NOT NULL,
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
  "caution" TEXT
) STRICT;
CREATE INDEX line_by_recipe ON line ("recipe");
CREATE INDEX line_by_group ON line ("group");

CREATE TABLE job (
  "id" TEXT PRIMARY KEY NOT NULL,
  "title" TEXT NOT NULL,
  "client" TEXT NOT NULL,
  "contact" TEXT NOT NULL,
  "recipe" TEXT NOT NULL REFERENCES recipe DEFERRABLE INITIALLY DEFERRED,
  "state" TEXT NOT NULL,
  "site" TEXT NOT NULL,
  "access" TEXT NOT NULL,
  "audience" TEXT NOT NULL,
  "animals" TEXT NOT NULL,
  "area" TEXT NOT NULL,
  "enquired_on" TEXT,
  "handover" TEXT,
  "deposit_coins" INTEGER,
  "deposit_on" TEXT,
  "basis" TEXT NOT NULL,
  "next_act" TEXT NOT NULL,
  "next_on" TEXT,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX job_by_recipe ON job ("recipe");

CREATE TABLE size (
  "id" TEXT PRIMARY KEY NOT NULL,
  "job" TEXT NOT NULL REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "tank" TEXT NOT NULL REFERENCES tank DEFERRABLE INITIALLY DEFERRED,
  "order" REAL NOT NULL,
  "label" TEXT NOT NULL,
  "count" INTEGER NOT NULL
) STRICT;
CREATE INDEX size_by_job ON size ("job");
CREATE INDEX size_by_tank ON size ("tank");

CREATE TABLE local_value (
  "id" TEXT PRIMARY KEY NOT NULL,
  "job" TEXT NOT NULL REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "size" TEXT REFERENCES size DEFERRABLE INITIALLY DEFERRED,
  "line" TEXT NOT NULL,
  "text" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "by" TEXT NOT NULL
) STRICT;
CREATE INDEX local_value_by_job ON local_value ("job");
CREATE INDEX local_value_by_size ON local_value ("size");

CREATE TABLE stock_entry (
  "id" TEXT PRIMARY KEY NOT NULL,
  "material" TEXT NOT NULL,
  "amount" REAL NOT NULL,
  "sealed" INTEGER NOT NULL CHECK ("sealed" IN (0, 1)),
  "reserved_for" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "best_before" TEXT,
  "quarantine_until" TEXT,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX stock_entry_by_reserved_for ON stock_entry ("reserved_for");

CREATE TABLE issued_quote (
  "id" TEXT PRIMARY KEY NOT NULL,
  "job" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "number" TEXT NOT NULL,
  "revision" TEXT NOT NULL,
  "issued_on" TEXT NOT NULL,
  "body" TEXT NOT NULL,
  "sha256" TEXT NOT NULL
) STRICT;
CREATE INDEX issued_quote_by_job ON issued_quote ("job");

CREATE TABLE quote_line (
  "id" TEXT PRIMARY KEY NOT NULL,
  "job" TEXT NOT NULL REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "label" TEXT NOT NULL,
  "group" TEXT NOT NULL REFERENCES margin DEFERRABLE INITIALLY DEFERRED,
  "cost_coins" INTEGER NOT NULL,
  "by" TEXT NOT NULL
) STRICT;
CREATE INDEX quote_line_by_job ON quote_line ("job");
CREATE INDEX quote_line_by_group ON quote_line ("group");

CREATE TABLE treatment_batch (
  "id" TEXT PRIMARY KEY NOT NULL,
  "material" TEXT NOT NULL REFERENCES material DEFERRABLE INITIALLY DEFERRED,
  "litres" REAL NOT NULL,
  "way" TEXT NOT NULL,
  "aim" TEXT NOT NULL,
  "on" TEXT NOT NULL,
  "collected_at" TEXT NOT NULL,
  "log" TEXT NOT NULL CHECK (json_valid("log")),
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX treatment_batch_by_material ON treatment_batch ("material");

CREATE TABLE tub (
  "id" TEXT PRIMARY KEY NOT NULL,
  "kind" TEXT NOT NULL REFERENCES culture_kind DEFERRABLE INITIALLY DEFERRED,
  "started_on" TEXT NOT NULL,
  "claimed_by" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "spare" INTEGER NOT NULL CHECK ("spare" IN (0, 1)),
  "place" TEXT NOT NULL,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX tub_by_kind ON tub ("kind");
CREATE INDEX tub_by_claimed_by ON tub ("claimed_by");

CREATE TABLE actual (
  "id" TEXT PRIMARY KEY NOT NULL,
  "job" TEXT NOT NULL REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "size" TEXT REFERENCES size DEFERRABLE INITIALLY DEFERRED,
  "line" TEXT NOT NULL,
  "value" REAL NOT NULL,
  "unit" TEXT NOT NULL,
  "on" TEXT NOT NULL,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX actual_by_job ON actual ("job");
CREATE INDEX actual_by_size ON actual ("size");
`;
