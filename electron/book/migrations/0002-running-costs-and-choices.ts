import type { Migration } from './migration.ts';

/** Running costs of a tank, the narrowest point on the way in, and packs chosen by hand. Unknown values stay empty. */
export const runningCostsAndChoices: Migration = {
  version: 2,
  name: 'running costs, way in, chosen packs',
  up: (db) => {
    db.exec(`
ALTER TABLE workshop ADD COLUMN "electricity_per_kwh" REAL;
ALTER TABLE workshop ADD COLUMN "water_per_l" REAL;
ALTER TABLE job ADD COLUMN "narrowest_mm" REAL;
CREATE TABLE pack_choice (
  "id" TEXT PRIMARY KEY NOT NULL,
  "jobs" TEXT NOT NULL CHECK (json_valid("jobs")),
  "material" TEXT NOT NULL,
  "packs" TEXT NOT NULL CHECK (json_valid("packs"))
) STRICT;
`);
  },
};
