import type Database from 'better-sqlite3';
import { z } from 'zod';
import { declaredOf } from '#shared-calc/fields/first-recipes.ts';
import type { Migration } from './migration.ts';

/**
 * Gives every job a survey of which nothing is asked but the way in, where it was measured: what was told in words
 * stays as a note. Lines that a survey gives a figure to come to be read by use.
 */
export const structuredSurvey: Migration = {
  version: 11,
  name: 'survey',
  up: (db) => {
    db.exec(`
ALTER TABLE job ADD COLUMN "survey" TEXT NOT NULL DEFAULT '${notAsked}' CHECK (json_valid("survey"));
UPDATE job SET survey = json_set(survey, '$.narrowestMm', narrowest_mm) WHERE narrowest_mm >= 1 AND narrowest_mm <= 20000;
ALTER TABLE job DROP COLUMN narrowest_mm;
`);
    declareLines(db);
  },
};

const notAsked = JSON.stringify({
  underFives: 'not asked',
  weakImmunity: 'not asked',
  publicRoom: 'not asked',
  feeder: '',
  namedPerson: '',
  clearLengthMm: null,
  clearDepthMm: null,
  clearHeightMm: null,
  shelfRatingKg: null,
  narrowestMm: null,
  steps: null,
  lift: 'not asked',
  socketNear: 'not asked',
  residualCurrentDevice: 'not asked',
  waterDistanceM: null,
  drainDistanceM: null,
  sunHours: null,
  sunAreaM2: null,
  heaterNear: 'not asked',
  roomSummerC: null,
  roomWinterC: null,
  roomLowestC: null,
  humiditySummer: null,
  humidityWinter: null,
  noiseDb: null,
  notes: '',
});

const Asked = z.object({
  id: z.string(),
  name: z.string(),
  section: z.string(),
  role: z.string(),
  unit: z.string(),
});
const newUses: ReadonlySet<string> = new Set(['shelfShare', 'roomSummer', 'roomLowest', 'humiditySummer', 'sunArea']);

function declareLines(db: Database.Database): void {
  const lines = z
    .array(Asked)
    .parse(db.prepare('SELECT "id", "name", "section", "role", "unit" FROM line WHERE "use" IS NULL').all());
  const update = db.prepare('UPDATE line SET "use" = ? WHERE "id" = ?');
  for (const line of lines) {
    const { use } = declaredOf(line);
    if (use !== undefined && newUses.has(use)) update.run(use, line.id);
  }
}
