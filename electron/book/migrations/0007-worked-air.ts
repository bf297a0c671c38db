import type Database from 'better-sqlite3';
import { z } from 'zod';
import { workedRecipe, type Line } from './0007-worked-recipe.ts';
import type { Migration } from './migration.ts';

/**
 * Gives every house recipe the lines that work air, humidity, warming, litter, weight and cover glass. What a house has
 * changed stays as it is.
 */
export const workedAir: Migration = {
  version: 7,
  name: 'air, water and weight worked',
  up: (db, tell) => {
    const recipes = z.array(z.string()).parse(db.prepare('SELECT "id" FROM recipe ORDER BY "id"').pluck().all());
    for (const recipe of recipes) {
      const before = linesOf(db, recipe);
      const worked = workedRecipe(recipe, before);
      if (!worked) continue;
      for (const line of worked.lines) put(db, line);
      for (const line of worked.gone) take(db, line);
      tell(worked.note);
    }
  },
};

const StoredLine = z
  .object({ id: z.string(), order: z.string(), section: z.string(), name: z.string(), text: z.string() })
  .catchall(z.union([z.string(), z.number(), z.null()]));

export function linesOf(db: Database.Database, recipe: string): readonly Line[] {
  const rows = db.prepare('SELECT * FROM line WHERE "recipe" = ? ORDER BY "order"').all(recipe);
  return z.array(StoredLine).parse(rows);
}

function put(db: Database.Database, line: Line): void {
  const columns = Object.keys(line);
  const names = columns.map((column) => `"${column}"`);
  db.prepare(
    `INSERT INTO line (${names.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})
     ON CONFLICT ("id") DO UPDATE SET ${names.map((name) => `${name} = excluded.${name}`).join(', ')}`,
  ).run(...Object.values(line));
}

/** With what jobs of its recipe have written over it. */
function take(db: Database.Database, { id, recipe, name }: Line): void {
  db.prepare('DELETE FROM local_value WHERE "line" = ? AND "job" IN (SELECT "id" FROM job WHERE "recipe" = ?)').run(
    name,
    recipe,
  );
  db.prepare('DELETE FROM line WHERE "id" = ?').run(id);
}
