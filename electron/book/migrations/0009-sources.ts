import type Database from 'better-sqlite3';
import { z } from 'zod';
import { lazy } from '#shared-calc/records/memo.ts';
import { kindOf, type Line } from './0007-worked-recipe.ts';
import { linesOf } from './0007-worked-air.ts';
import data from './0009-sources.json' with { type: 'json' };
import type { Migration } from './migration.ts';

/**
 * Lines, materials and rates come to say where their figures come from. What the house has as the program ships it gets
 * the program's mark; what it has changed has none until somebody gives it.
 */
export const sources: Migration = {
  version: 9,
  name: 'where figures come from',
  up: (db) => {
    for (const table of ['line', 'material', 'rate']) {
      db.exec(`ALTER TABLE ${table} ADD COLUMN "source" TEXT; ALTER TABLE ${table} ADD COLUMN "source_note" TEXT;`);
    }
    markLines(db);
    markRows(db, 'material', ['id', 'label', 'unit', 'note']);
    markRows(db, 'rate', ['id', 'coins', 'per']);
  },
};

const Mark = { source: z.string(), sourceNote: z.string().optional() };
const Shipped = z.strictObject({
  lines: z.array(
    z.strictObject({
      in: z.array(z.string()),
      name: z.string(),
      text: z.string(),
      least: z.number().optional(),
      most: z.number().optional(),
      ...Mark,
    }),
  ),
  materials: z.array(
    z.strictObject({ id: z.string(), label: z.string(), unit: z.string(), note: z.string(), ...Mark }),
  ),
  rates: z.array(z.strictObject({ id: z.string(), coins: z.int(), per: z.string(), ...Mark })),
});
/** Parsed when a book takes this step. */
const shipped = lazy(() => Shipped.parse(data));

function markLines(db: Database.Database): void {
  const update = db.prepare('UPDATE line SET "source" = ?, "source_note" = ? WHERE "id" = ?');
  const recipes = z.array(z.string()).parse(db.prepare('SELECT "id" FROM recipe').pluck().all());
  for (const recipe of recipes) {
    const lines = linesOf(db, recipe);
    const marks = marksOf(kindOf(recipe, lines));
    for (const line of lines) {
      // A line that was renamed still has its id.
      const mark = marks.get(line.id.slice(recipe.length + 1));
      if (mark && isUnchanged(line, mark)) update.run(mark.source, mark.sourceNote ?? null, line.id);
    }
  }
}

type ShippedLine = z.infer<typeof Shipped>['lines'][number];

/** By name; nothing for a recipe that was made from none of the program's own. */
function marksOf(kind: string | undefined): ReadonlyMap<string, ShippedLine> {
  const own = kind === undefined ? [] : shipped().lines.filter((line) => line.in.includes(kind));
  return new Map(own.map((line) => [line.name, line]));
}

function isUnchanged(line: Line, { text, least, most }: ShippedLine): boolean {
  return line.text === text && line['least'] === (least ?? null) && line['most'] === (most ?? null);
}

function markRows(db: Database.Database, table: 'material' | 'rate', same: readonly string[]): void {
  const where = same.map((column) => `"${column}" = @${column}`).join(' AND ');
  const update = db.prepare(`UPDATE ${table} SET "source" = @source, "source_note" = @sourceNote WHERE ${where}`);
  for (const row of shipped()[`${table}s`]) update.run({ sourceNote: null, ...row });
}
