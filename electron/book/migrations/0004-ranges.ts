import type { Migration } from './migration.ts';

/** Of a line: the range of a guess, the cases it is wrong in, and the figure whose range stands for its check. */
export const ranges: Migration = {
  version: 4,
  name: 'ranges of guessed figures',
  up: (db) => {
    db.exec(`
ALTER TABLE line ADD COLUMN "least" REAL;
ALTER TABLE line ADD COLUMN "most" REAL;
ALTER TABLE line ADD COLUMN "cases" TEXT CHECK (json_valid("cases"));
ALTER TABLE line ADD COLUMN "unless_ranged" TEXT;
`);
  },
};
