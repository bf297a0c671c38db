import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { unasked, type Survey } from '#shared-calc/fields/survey.ts';
import { placeChecks, placeUses, unseenPlace, type PlaceUse } from '#shared-calc/jobs/place-checks.ts';
import type { PlacedSize } from '#shared-calc/jobs/placed-size.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { peopleNear } from '#shared-calc/papers/audience-rules.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { jobOf, libraryJob, withRecords } from './demo-jobs.ts';

/** T07 outside: 900 + 2 x 6 by 445 + 2 x 6; 600 + 6 + 4 with its cover. */
const t07: PlacedSize = {
  key: 'T07',
  called: 'T07',
  count: 1,
  lengthMm: 912,
  depthMm: 457,
  heightMm: 610,
  massKg: { likely: 83, worst: 90 },
  ratingKg: 100,
  shelfShare: 0.8,
  sunM2: undefined,
  hottestC: { likely: 26, worst: 28 },
  ceilingC: 27,
};
const t05: PlacedSize = { ...t07, key: 'T05', called: 'T05', lengthMm: 610, massKg: { likely: 40, worst: 45 } };

interface There {
  readonly sizes?: readonly PlacedSize[];
  readonly of?: string;
  readonly state?: Job['state'];
}

function checkOf(
  use: PlaceUse,
  answers: Partial<Survey>,
  { sizes = [t07], of = 'T07', state = 'accepted' }: There = {},
) {
  const survey = { ...unasked, ...answers };
  const found = placeChecks({ survey, state, sizes, display: plainDisplay }, of).find((check) => check.use === use);
  if (!found) throw new Error(`no check of ${use}`);
  return found;
}

describe('placeChecks', () => {
  test('what nobody asked is not known yet, says so, and names who decides', () => {
    const checks = placeChecks({ ...unseenPlace, sizes: [t07], display: plainDisplay }, 'T07');
    expect(checks.map(({ use, state, level }) => [use, state, level])).toEqual(
      placeUses.map((use) => [use, 'not known yet', 'watch']),
    );
    for (const { says, decides } of checks) {
      expect(says.toLowerCase()).toMatch(/nobody has (asked|measured)/);
      expect(says).toMatch(/(Ask the \w+|Measure it there)/);
      expect(decides).not.toBe('');
    }
  });

  test.each([
    ['underFives', 'yes', 'fails', 'stop'],
    ['underFives', 'no', 'holds', 'stop'],
    ['weakImmunity', 'yes', 'fails', 'watch'],
    ['weakImmunity', 'no', 'holds', 'watch'],
  ] as const)('%s answered %s', (use, answer, state, level) => {
    expect(checkOf(use, { [use]: answer })).toMatchObject({
      state,
      level,
      decides: 'School or centre health lead, public-health office',
    });
  });

  test.each([
    ['a door of 780 mm', t07, 780, true],
    ['a gap of 458 mm', t07, 458, true],
    ['a gap as wide as the tank is deep', t07, 457, false],
    ['a tank deeper than long goes by its length', { ...t07, lengthMm: 400, depthMm: 900 }, 457, true],
    ['a cylinder goes by its width', { ...t07, lengthMm: 612, depthMm: 612 }, 600, false],
    ['a hexagon goes by its overall width over its flat sides', { ...t07, lengthMm: 712, depthMm: 618 }, 650, true],
    ['a tank that nobody measured', { ...t07, lengthMm: undefined }, 780, undefined],
  ])('the way in, %s', (_, size, narrowestMm, holds) => {
    expect(answerOfState(checkOf('wayIn', { narrowestMm }, { sizes: [size] }).state)).toBe(holds);
  });

  test('it says how the tank is carried, both widths, and who decides', () => {
    expect(checkOf('wayIn', { narrowestMm: 400 })).toEqual({
      use: 'wayIn',
      level: 'stop',
      state: 'fails',
      says: 'Carried upright, never on its side, the tank is 457\u00a0mm at its narrowest outside; the way in is 400\u00a0mm at its narrowest.',
      decides: 'Crew leader',
    });
  });

  test('widths are said in the unit that the workshop reads', () => {
    const display = { ...plainDisplay, unitsShown: { length: 'in' } };
    const checks = placeChecks(
      { ...unseenPlace, survey: { ...unasked, narrowestMm: 780 }, sizes: [t07], display },
      'T07',
    );
    expect(checks.find(({ use }) => use === 'wayIn')?.says).toContain('the way in is 30.71\u00a0in');
  });

  const clear = { clearLengthMm: 912, clearDepthMm: 457, clearHeightMm: 610 };
  test.each([
    ['a place as big as the tank', clear, [t07], 'holds'],
    ['a place a millimetre short', { ...clear, clearLengthMm: 911 }, [t07], 'fails'],
    ['a place not deep enough, its length not asked', { clearDepthMm: 456 }, [t07], 'fails'],
    ['a place too low', { ...clear, clearHeightMm: 600 }, [t07], 'fails'],
    ['a place of which the height was not asked', { ...clear, clearHeightMm: null }, [t07], 'not known yet'],
    ['a tank that nobody measured', clear, [{ ...t07, heightMm: undefined }], 'not known yet'],
    ['two sizes that fit each by itself, not in a row', { ...clear, clearLengthMm: 1500 }, [t07, t05], 'fails'],
    ['two sizes that fit in a row', { ...clear, clearLengthMm: 1522 }, [t07, t05], 'holds'],
    ['a size built twice', { ...clear, clearLengthMm: 1823 }, [{ ...t07, count: 2 }], 'fails'],
  ] as const)('the clear size, %s', (_, answers, sizes, state) => {
    expect(checkOf('clearSize', answers, { sizes }).state).toBe(state);
  });

  test.each([
    ['one tank within the share', [t05], 100, 'holds'],
    ['a tank over the share at its likely weight', [t07], 100, 'fails'],
    ['a tank over it only at its worst', [t07], 110, 'may not hold'],
    ['two tanks on one shelf are summed', [t05, { ...t07, massKg: { likely: 50, worst: 50 } }], 100, 'fails'],
    ['a size built twice counts twice', [{ ...t05, count: 2 }], 100, 'may not hold'],
    ['a weight that nobody knows yet', [t05, { ...t07, massKg: undefined }], 1000, 'not known yet'],
  ] as const)('the shelf: %s', (_, sizes, ratingKg, state) => {
    const rated = sizes.map((size) => ({ ...size, ratingKg }));
    const check = checkOf('shelf', { shelfRatingKg: ratingKg }, { sizes: rated, of: rated[0]?.key ?? '' });
    expect([check.state, check.decides]).toEqual([state, 'Building owner or structural engineer']);
  });

  test('the shelf says what stands on it together, and how much of its rating is used', () => {
    expect(checkOf('shelf', { shelfRatingKg: 100 }, { sizes: [t05, t07] }).says).toBe(
      'T05 and T07 together weigh 135.00\u00a0kg at worst, with the drain blocked; the shelf is rated for 100.00\u00a0kg, of which 80.00\u00a0kg are used.',
    );
  });

  test('before a job is accepted its sizes may be alternatives: what each weighs and takes alone is said as well', () => {
    const there = { sizes: [t05, { ...t07, count: 2 }], state: 'quoted' } as const;
    const answers = { shelfRatingKg: 100, clearLengthMm: 1000, clearDepthMm: 500, clearHeightMm: 700 };

    expect(checkOf('shelf', answers, there)).toMatchObject({
      state: 'fails',
      says: 'T05 and 2 of T07 together weigh 225.00\u00a0kg at worst, with the drain blocked (alone T05 45.00\u00a0kg, 2 of T07 180.00\u00a0kg); the shelf is rated for 100.00\u00a0kg, of which 80.00\u00a0kg are used.',
    });
    expect(checkOf('clearSize', answers, there).says).toBe(
      'Outside it does not fit: T05 and 2 of T07 in a row 2434\u00a0mm (alone T05 610\u00a0mm, 2 of T07 1824\u00a0mm), clear 1000\u00a0mm.',
    );
  });

  test('the builds of one size all come, so nothing is said of one alone', () => {
    const answers = { shelfRatingKg: 100 };
    expect(checkOf('shelf', answers, { sizes: [{ ...t07, count: 2 }], state: 'enquiry' }).says).not.toContain('alone');
    expect(checkOf('shelf', answers, { sizes: [t05, t07], state: 'deposit in' }).says).not.toContain('alone');
  });

  test('of many sizes the lightest and the heaviest are said', () => {
    const sizes = ['A', 'B', 'C', 'D', 'E', 'F', 'T07'].map((key) => ({
      ...(key === 'C' ? t05 : t07),
      key,
      called: key,
    }));
    expect(checkOf('shelf', { shelfRatingKg: 100 }, { sizes, state: 'surveyed' }).says).toContain(
      '(each alone 45.00\u00a0kg to 90.00\u00a0kg)',
    );
  });

  test.each(['yes', 'not asked'] as const)(
    'people who are at risk, answered %s, are minded in the words of the cards',
    (answer) => {
      const survey = { ...unasked, underFives: answer, weakImmunity: answer };
      const limits = (['underFives', 'weakImmunity'] as const).map((use) => checkOf(use, survey));
      expect(limits.map(({ says }) => says)).toEqual(peopleNear({ survey }).map(({ says }) => says));
      expect(limits.map(({ decides }) => decides)).toEqual(peopleNear({ survey }).map(({ decides }) => decides));
    },
  );

  test.each([
    ['no hours of it', { sunHours: 0 }, { ...t07, sunM2: 0 }, 'holds'],
    ['some hours on glass that nobody measured', { sunHours: 2 }, t07, 'not known yet'],
    ['warm only where the guesses are at their worst', { sunAreaM2: 0.1 }, { ...t07, sunM2: 0.1 }, 'may not hold'],
    ['too warm', { sunAreaM2: 0.3 }, { ...t07, sunM2: 0.3, hottestC: { likely: 29, worst: 32 } }, 'fails'],
    ['cool all the same', { sunAreaM2: 0.1 }, { ...t07, sunM2: 0.1, ceilingC: 33 }, 'holds'],
    ['a hottest day that waits', { sunAreaM2: 0.1 }, { ...t07, sunM2: 0.1, hottestC: undefined }, 'not known yet'],
  ] as const)('the sun: %s', (_, answers, size, state) => {
    expect(checkOf('sun', answers, { sizes: [size] }).state).toBe(state);
  });
});

describe('what a free text decides', () => {
  const records = libraryJob({
    sizes: [
      { tank: 'T05', count: 1 },
      { tank: 'T07', count: 1 },
    ],
  });
  const told = (texts: Readonly<Partial<Record<'audience' | 'animals' | 'site' | 'access' | 'note', string>>>) => {
    const job = { ...jobOf(records, 'J02'), ...texts };
    const worked = derive(withRecords(records, 'job', [job]), DEMO_DAY).job('J02');
    return worked?.keys.map((key) => worked.place(key));
  };

  test.each([
    'Preschool group, small children',
    'Patients, some small children with a parent',
    'Reception class, children from 4',
    'General public, families',
    'Staff, no under-fives',
    'Pupils of 14 to 18 years',
  ])('"%s" says nothing about children under five until they are asked for', (audience) => {
    const states = told({ audience })
      ?.flat()
      .filter(({ use }) => use === 'underFives');
    expect(states?.map(({ state }) => state)).toEqual(['not known yet', 'not known yet']);
  });

  test('nothing: whatever is written, the limits of the place are the same', () => {
    const before = told({});
    const text = fc.string({ maxLength: 60 });
    fc.assert(
      fc.property(fc.record({ audience: text, animals: text, site: text, access: text, note: text }), (texts) => {
        expect(told(texts)).toEqual(before);
      }),
      { numRuns: 20 },
    );
  });

  test('every job of the workshop to which nobody went has all six not known yet', () => {
    const derived = derive(demoRecords(), DEMO_DAY);
    for (const id of derived.records.job.keys()) {
      const worked = derived.job(id);
      const states = worked?.keys.flatMap((key) => worked.place(key).map(({ state }) => state)) ?? [];
      expect(new Set(states)).toEqual(new Set(['not known yet']));
    }
  });
});
