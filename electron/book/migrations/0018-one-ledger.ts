import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { Migration } from './migration.ts';

/**
 * Every good thing in the workshop is in lots, and what comes and goes is a move. What lay in the Store came in on the
 * day of the step, and stays kept for its job. Orders become records, materials get a least level.
 */
export const oneLedger: Migration = {
  version: 18,
  name: 'one ledger',
  up: (db, _tell, day) => {
    db.exec(`
ALTER TABLE material ADD COLUMN "least" REAL;
ALTER TABLE material ADD COLUMN "up_to" REAL;
CREATE TABLE "order" (
  "id" TEXT PRIMARY KEY NOT NULL,
  "supplier" TEXT NOT NULL REFERENCES supplier DEFERRABLE INITIALLY DEFERRED,
  "on" TEXT NOT NULL,
  "lines" TEXT NOT NULL CHECK (json_valid("lines")),
  "carriage_coins" INTEGER NOT NULL,
  "closed_on" TEXT,
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX order_by_supplier ON "order" ("supplier");
CREATE TABLE old_move AS SELECT * FROM move;
DROP TABLE move;
CREATE TABLE move (
  "id" TEXT PRIMARY KEY NOT NULL,
  "lot" TEXT NOT NULL,
  "of" TEXT NOT NULL,
  "on" TEXT NOT NULL,
  "what" TEXT NOT NULL,
  "amount" REAL NOT NULL,
  "job" TEXT REFERENCES job DEFERRABLE INITIALLY DEFERRED,
  "order" TEXT REFERENCES "order" DEFERRABLE INITIALLY DEFERRED,
  "line" INTEGER,
  "coins" INTEGER,
  "until" TEXT,
  "best_before" TEXT,
  "sealed" INTEGER CHECK ("sealed" IN (0, 1)),
  "note" TEXT NOT NULL
) STRICT;
CREATE INDEX move_by_lot ON move ("lot");
CREATE INDEX move_by_of ON move ("of");
CREATE INDEX move_by_job ON move ("job");
CREATE INDEX move_by_order ON move ("order");
INSERT INTO move ("id", "lot", "of", "on", "what", "amount", "job", "note")
  SELECT "id", "lot", "of", "on", "what", "amount", "job", "note" FROM old_move;
DROP TABLE old_move;
`);
    moveEntries(db, day);
    db.exec('DROP TABLE stock_entry');
  },
};

const Entry = z.object({
  id: z.string(),
  material: z.string(),
  amount: z.number(),
  sealed: z.number(),
  reserved_for: z.string().nullable(),
  best_before: z.string().nullable(),
  quarantine_until: z.string().nullable(),
  note: z.string(),
});

function moveEntries(db: Database.Database, day: string): void {
  const entries = z.array(Entry).parse(db.prepare('SELECT * FROM stock_entry WHERE amount > 0').all());
  const ids = z.array(z.string()).parse(db.prepare('SELECT id FROM tub UNION SELECT id FROM move').pluck().all());
  const taken = new Set(ids);
  const add = db.prepare(`INSERT INTO move
    ("id", "lot", "of", "on", "what", "amount", "job", "until", "best_before", "sealed", "note")
    VALUES (@id, @lot, @of, @on, @what, @amount, @job, @until, @best, @sealed, @note)`);
  for (const entry of entries) {
    const { material: of, amount, reserved_for: job, note } = entry;
    const lot = freeId(entry.id, taken);
    const common = { lot, of, on: day, amount };
    const { quarantine_until: until, best_before: best, sealed } = entry;
    add.run({ ...common, id: lot, what: 'in', job: null, until, best, sealed, note });
    if (job === null) continue;
    const kept = { id: freeId(`${lot}-kept`, taken), what: 'kept', job, note: '' };
    add.run({ ...common, ...kept, until: null, best: null, sealed: null });
  }
}

function freeId(wanted: string, taken: Set<string>): string {
  let id = wanted;
  for (let nth = 2; taken.has(id); nth += 1) id = `${wanted}-${nth}`;
  taken.add(id);
  return id;
}
