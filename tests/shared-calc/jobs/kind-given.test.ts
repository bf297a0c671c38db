import { describe, expect, test } from 'vitest';
import { restsOn } from '#shared-calc/bench/rests-on.ts';
import { partsOf, reworkQuote } from '#shared-calc/jobs/rework-quote.ts';
import type { AnimalKind, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { workedJob } from '#tests/worked-job.ts';
import { issued, jobOf, libraryJob, valueOf, withRecords, written } from './demo-jobs.ts';

/** J02 on a recipe, its T05 for a kind of animal with some of its figures changed. */
function jobFor(kind: string, figures: Partial<AnimalKind> = {}, recipe = 'H1'): Records {
  const before = libraryJob({ recipe, writings: [] });
  const asBooked = before.animalKind.get(kind);
  if (!asBooked) throw new Error(`no kind ${kind}`);
  const records = withRecords(before, 'animalKind', [{ ...asBooked, ...figures }]);
  return done(records, 'setAnimals', { job: 'J02', column: 'T05', animalKind: kind, animals: 3 }).records;
}

function boxesOf(records: Records, ...lines: readonly string[]) {
  const { bench } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
  return lines.map((line) => {
    const { text, state } = bench.box('T05', line);
    return `${text} ${state}`;
  });
}

const envelope = ['species_ceiling', 'species_floor', 'band_low', 'band_high', 'dip_allowed'] as const;

describe('kindGiven', () => {
  test.each(['H1', 'H2', 'H3', 'H4'])(
    'the dry gecko gives its envelope to %s, whatever its lines are called',
    (recipe) => {
      expect(boxesOf(jobFor('A5', {}, recipe), ...envelope)).toEqual([
        '33 degC kind',
        '20 degC kind',
        '35 % kind',
        '60 % kind',
        '10 % kind',
      ]);
    },
  );

  test('a figure of the kind wears its own mark, else that of the kind; one without is without a source', () => {
    const from = (figures: Partial<AnimalKind>) => {
      const { bench } = workedJob(jobFor('A5', figures), jobOf(jobFor('A5', figures), 'J02'), DEMO_DAY);
      const footings = restsOn(bench, 'T05', 'cool_enough');
      return footings.find(({ line }) => line.name === 'species_ceiling')?.from;
    };

    expect([
      from({ source: 'practice', marks: { ceiling: 'memory' } }),
      from({ source: 'practice', marks: {} }),
      from({ source: undefined, marks: undefined }),
    ]).toEqual(['memory', 'practice', 'none']);
  });

  test('an issued quote still says where the kind had its ceiling from', () => {
    const records = jobFor('A5', { source: 'practice', marks: { ceiling: 'memory' } });
    const { body } = issued(records, 'A');
    const given = body.columns.flatMap((column) => column.given ?? []);

    expect(given.find(({ line }) => line === 'species_ceiling')).toEqual({
      line: 'species_ceiling',
      text: '33 degC',
      from: 'kind',
      source: { source: 'memory' },
    });
  });

  test('no figure of a recipe moves for the small bold frog, which H1 is made for', () => {
    const bare = libraryJob({ writings: [] });
    const values = (records: Records) => {
      const { bench } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
      return bench.input().lines.map(({ name }) => [name, bench.box('T05', name).value]);
    };

    expect(values(jobFor('A1'))).toEqual(values(bare));
  });

  test('the vents of a kind are a strip, or half the depth of this tank', () => {
    const figures = (vents: AnimalKind['vents']) => {
      const records = jobFor('A1', { vents });
      const { bench } = workedJob(records, jobOf(records, 'J02'), DEMO_DAY);
      return ['cover_vent', 'overall_depth'].map((line) => bench.box('T05', line).value);
    };
    const [half, depth] = figures('large');

    expect([figures('small')[0], figures('middle')[0]]).toEqual([0.025, 0.05]);
    expect(Number(half) * 2).toBeCloseTo(Number(depth), 9);
  });

  test('animals that eat isopods get none to begin with', () => {
    expect([boxesOf(jobFor('A3'), 'isopod_founders'), boxesOf(jobFor('A1'), 'isopod_founders')]).toEqual([
      ['0 each kind'],
      ['10 each house'],
    ]);
  });

  test('what is not known of a kind is the house’s, and says so', () => {
    expect(boxesOf(jobFor('A5', { ceiling: undefined }), 'species_ceiling', 'species_floor')).toEqual([
      '27 degC house',
      '20 degC kind',
    ]);
  });

  test('a value written over is nearer than the kind', () => {
    const records = written(jobFor('A5'), 'us', { species_ceiling: '30 degC', 'T05.species_floor': '19 degC' });

    expect(boxesOf(records, 'species_ceiling', 'species_floor', 'band_low')).toEqual([
      '30 degC job',
      '19 degC local',
      '35 % kind',
    ]);
  });

  test('plants only: there is nothing to give', () => {
    const plants = done(jobFor('A5'), 'setAnimals', { job: 'J02', column: 'T05', animals: 0 }).records;

    expect(boxesOf(plants, ...envelope)).toEqual([
      '27 degC house',
      '18 degC house',
      '75 % house',
      '95 % house',
      '10 % house',
    ]);
  });

  test('a kind that is changed in its book moves the sizes that name it', () => {
    const records = jobFor('A5');
    const kind = records.animalKind.get('A5');
    if (!kind) throw new Error('no kind');
    const warmer = done(records, 'put', { kind: 'animalKind', record: { ...kind, ceiling: 34 } }).records;

    expect(boxesOf(warmer, 'species_ceiling')).toEqual(['34 degC kind']);
  });

  test('a quote keeps what the kind gave, and is worked again to the same sums', () => {
    const { body } = issued(jobFor('A5'), 'A');

    expect(body.columns[0]?.given).toContainEqual(
      expect.objectContaining({ line: 'species_ceiling', text: '33 degC', from: 'kind' }),
    );
    expect(valueOf(reworkQuote(partsOf(body)))).toEqual(body.sums);
  });

  test('a copy of a size is for the same animals', () => {
    const copied = done(jobFor('A5'), 'copySize', { job: 'J02', column: 'T05' }).records;

    expect(
      [...copied.size.values()].filter(({ animalKind, animals }) => animalKind === 'A5' && animals === 3),
    ).toHaveLength(2);
  });
});
