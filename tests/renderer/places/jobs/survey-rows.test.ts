import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { describe, expect, test } from 'vitest';
import { surveyRows } from '#renderer/places/jobs/survey-rows.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { jobOf, libraryJob, written } from '#tests/shared-calc/jobs/demo-jobs.ts';

function rowOf(records: Records, name: string, unitsShown: Readonly<Record<string, string>> = {}) {
  const display = { ...displayOf(workshopOf(records)), unitsShown };
  const row = surveyRows(records, { job: jobOf(records, 'J02'), lines: linesOf(records, 'H1') }, display).find(
    ({ line }) => line.name === name,
  );
  if (!row) throw new Error(`no ${name}`);
  return { ...row, display };
}

describe('surveyRows', () => {
  test('a figure nobody has measured stands as the house has it', () => {
    const { label, text, unit, ofJob, house } = rowOf(libraryJob(), 'shelf_rating');
    expect({ label, text, unit, ofJob, house }).toEqual({
      label: 'Shelf rating',
      text: '100',
      unit: 'kg',
      ofJob: false,
      house: { text: '100', unit: 'kg' },
    });
  });

  test('what was found is said in the unit that the workshop reads', () => {
    const { text, unit } = rowOf(libraryJob(), 'room_summer', { temperature: 'degF' });
    expect([text, unit]).toEqual(['73.4', '°F']);
  });

  test('sizes that say otherwise are named', () => {
    expect(rowOf(written(libraryJob(), 'us', { 'T05.shelf_rating': '80 kg' }), 'shelf_rating').locals).toEqual(['T05']);
  });

  test('a question of yes and no is chosen, not written', () => {
    expect(rowOf(libraryJob(), 'public_site').options).toEqual(['yes', 'no']);
  });

  test('the kit is no figure of the survey', () => {
    expect(() => rowOf(libraryJob(), 'kit')).toThrow('no kit');
  });
});
