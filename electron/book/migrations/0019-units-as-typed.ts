import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { Migration } from './migration.ts';

/**
 * A workshop's one choice of units, the order of its dates, its paper and the first day of its week; figures as they
 * were typed. A workshop that sees length, volume, mass and temperature in US units becomes a US one.
 */
export const unitsAsTyped: Migration = {
  version: 19,
  name: 'units, dates and figures as typed',
  up: (db) => {
    db.exec(`
ALTER TABLE workshop ADD COLUMN "units" TEXT;
ALTER TABLE workshop ADD COLUMN "date_order" TEXT;
ALTER TABLE workshop ADD COLUMN "paper" TEXT;
ALTER TABLE workshop ADD COLUMN "week_start" TEXT;
`);
    for (const table of tables) {
      db.exec(`ALTER TABLE ${table} ADD COLUMN "typed" TEXT CHECK (json_valid("typed"));`);
    }
    chooseUs(db);
  },
};

const tables = [
  'workshop',
  'tank',
  'material',
  'plant',
  'pack',
  'culture_kind',
  'animal_kind',
  'job',
  'treatment_batch',
  'tub',
  'actual',
];

const usUnits = z.object({
  length: z.enum(['in', 'ft']),
  volume: z.enum(['gal', 'qt', 'dry_qt', 'fl_oz', 'ft3', 'in3']),
  mass: z.enum(['lb', 'oz']),
  temperature: z.literal('degF'),
});
/** What a US workshop sees without a word of its own. */
const usual: Readonly<Record<string, string>> = {
  length: 'in',
  volume: 'gal',
  mass: 'lb',
  temperature: 'degF',
  area: 'ft2',
};

function chooseUs(db: Database.Database): void {
  const text = z.string().parse(db.prepare('SELECT units_shown FROM workshop').pluck().get() ?? '{}');
  const shown = z.record(z.string(), z.string()).parse(JSON.parse(text));
  if (!usUnits.safeParse(shown).success) return;
  const others = Object.fromEntries(Object.entries(shown).filter(([kind, unit]) => usual[kind] !== unit));
  db.prepare(
    "UPDATE workshop SET units = 'us', date_order = 'mdy', paper = 'Letter', week_start = 'Sunday', units_shown = ?",
  ).run(JSON.stringify(others));
}
