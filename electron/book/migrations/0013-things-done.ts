import type { Migration } from './migration.ts';

/** What was done, by whom and why: a job moved or a quote issued although something stood against it. */
export const thingsDone: Migration = {
  version: 13,
  name: 'things done',
  up: (db) => {
    db.exec(`
CREATE TABLE done (
  "id" TEXT PRIMARY KEY NOT NULL,
  "on" TEXT NOT NULL,
  "step" TEXT NOT NULL,
  "who" TEXT NOT NULL REFERENCES rate DEFERRABLE INITIALLY DEFERRED,
  "job" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "quote" TEXT REFERENCES issued_quote DEFERRABLE INITIALLY DEFERRED,
  "against" TEXT NOT NULL,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX done_by_who ON done ("who");
CREATE INDEX done_by_job ON done ("job");
CREATE INDEX done_by_quote ON done ("quote");
`);
  },
};
