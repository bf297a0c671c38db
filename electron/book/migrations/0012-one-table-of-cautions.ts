import type Database from 'better-sqlite3';
import type { Migration } from './migration.ts';

/** Words that came with the house recipes; the program's own table of cautions says them beside the same lines. */
const seeded = [
  'Measure at the soil.',
  'Not a floor verdict: feet concentrate it, the floor spreads it.',
  'Say so in panel_buried where the background goes down to the base, or the soil behind it is counted.',
  'Standing water stays below the mesh, always. A sour smell means drain now.',
  'The range covers lamp heat and glass. Sun counts only where its area is given; a heater or hot air under the lamp does not. The watch reading decides.',
  'Turns on air changes nobody measured; look at the water after two weeks.',
  'Use a dense cup.',
];

/** Lines of the leak test, by the name and unit they came with. */
const leakTest = [
  { use: 'testLitres', name: 'test_litres', unit: 'L' },
  { use: 'testMass', name: 'test_mass', unit: 'kg' },
];

/** Takes from the lines the cautions that the table says now; what a house has worded itself stays. */
export const oneTableOfCautions: Migration = {
  version: 12,
  name: 'one table of cautions',
  up: (db) => {
    const clear = db.prepare(`UPDATE line SET "caution" = NULL,
      "decides" = CASE WHEN "role" = 'check' THEN "decides" END WHERE "caution" = ?`);
    for (const words of seeded) clear.run(words);
    for (const line of leakTest) declare(db, line);
  },
};

/** In each recipe that does not read another line for it. */
function declare(db: Database.Database, line: (typeof leakTest)[number]): void {
  db.prepare(
    `UPDATE line SET "use" = @use WHERE "name" = @name AND "unit" = @unit AND "use" IS NULL
       AND NOT EXISTS (SELECT 1 FROM line AS other WHERE other."recipe" = line."recipe" AND other."use" = @use)`,
  ).run(line);
}
