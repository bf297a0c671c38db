import { describe, expect, test } from 'vitest';
import { heatWords } from '#shared-calc/prepare/heat-words.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { plainDisplay, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { DEMO_DAY, demoBench, demoRecords } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { jobOf, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { workedJob } from '#tests/worked-job.ts';

const records = demoRecords();
const inFahrenheit: Display = { ...plainDisplay, unitsShown: { temperature: 'degF' } };

function words(ceiling: string, display = plainDisplay) {
  return heatWords(
    sizeFigures(demoBench({ sizes: ['T07'], job: { species_ceiling: ceiling } }, records), 'T07', display),
  );
}

describe('heatWords', () => {
  test('people act from the ceiling of these animals, in the unit of the workshop', () => {
    expect([words('24 degC').above, words('28 degC').above, words('24 degC', inFahrenheit).above]).toEqual([
      'Above 24\u00a0degC',
      'Above 28\u00a0degC',
      'Above 75.2\u00a0degF',
    ]);
  });

  test('without a line for it nobody knows when it is an emergency, and it is said so', () => {
    expect(words('24 degC').emergency).toBe('When it is an emergency is not known yet: ask the keeper or vet.');
  });

  test('with a line for it, the emergency is that figure', () => {
    const line = [...records.line.values()].find(({ name }) => name === 'species_ceiling');
    if (!line) throw new Error('no ceiling');
    const emergency = {
      ...line,
      id: 'H1.species_emergency',
      name: 'species_emergency',
      use: 'speciesEmergency' as const,
    };
    const more = withRecords(records, 'line', [{ ...emergency, order: `${line.order}m`, text: '29 degC' }]);
    expect(heatWords(sizeFigures(demoBench({ sizes: ['T07'] }, more), 'T07', plainDisplay)).emergency).toBe(
      'Above 29\u00a0degC is an emergency.',
    );
  });

  test.each([
    ['A1', plainDisplay, 'From 26\u00a0degC on', 'Above 27\u00a0degC is an emergency.'],
    ['A5', plainDisplay, 'From 31\u00a0degC on', 'Above 33\u00a0degC is an emergency.'],
    ['A5', inFahrenheit, 'From 87.8\u00a0degF on', 'Above 91.4\u00a0degF is an emergency.'],
  ])('%s says from when people act, and above what it is an emergency', (animalKind, display, above, emergency) => {
    const named = done(libraryJob(), 'setAnimals', { job: 'J02', column: 'T05', animalKind, animals: 4 }).records;
    const { bench } = workedJob(named, jobOf(named, 'J02'), DEMO_DAY);

    expect(heatWords(sizeFigures(bench, 'T05', display))).toEqual({ above, emergency });
  });

  test('a ceiling that is no figure yet is said to be not known', () => {
    expect(words('').above).toBe('Above what its animals stand, not known yet');
  });
});
