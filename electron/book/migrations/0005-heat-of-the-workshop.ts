import type { Migration } from './migration.ts';

/** Water and power of the steam vessel, and the power of the oven; unknown values stay empty. */
export const heatOfTheWorkshop: Migration = {
  version: 5,
  name: 'heat of the workshop',
  up: (db) => {
    db.exec(`
ALTER TABLE workshop ADD COLUMN "steam_water_l" REAL;
ALTER TABLE workshop ADD COLUMN "steam_power_kw" REAL;
ALTER TABLE workshop ADD COLUMN "oven_power_w" REAL;
`);
  },
};
