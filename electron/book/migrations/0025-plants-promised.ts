import type { Migration } from './migration.ts';

/**
 * For how long dead plants are replaced is the workshop's own promise, by kit. Until now every quote named the days
 * below; a workshop that has jobs or issued quotes keeps them and is told, any other begins without.
 */
export const plantsPromised: Migration = {
  version: 25,
  name: 'promise for plants',
  up: (db, tell) => {
    db.exec(`
ALTER TABLE workshop ADD COLUMN "plants_basic_days" INTEGER;
ALTER TABLE workshop ADD COLUMN "plants_full_days" INTEGER;
ALTER TABLE workshop ADD COLUMN "plants_show_days" INTEGER;
`);
    const { changes } = db
      .prepare(
        `UPDATE workshop SET "plants_basic_days" = 14, "plants_full_days" = 30, "plants_show_days" = 90
         WHERE EXISTS (SELECT 1 FROM job) OR EXISTS (SELECT 1 FROM issued_quote)`,
      )
      .run();
    if (changes > 0) tell({ kind: 'plants-promised', basicDays: 14, fullDays: 30, showDays: 90 });
  },
};
