import { describe, expect, test } from 'vitest';
import { hoursCharged, minutesOf, type WorkAmount } from '#shared-calc/price/work-hours.ts';

describe('minutesOf', () => {
  test('tasks count for every build, survey and quote once for the job', () => {
    const work: readonly WorkAmount[] = [
      task('plant_work', 96, { column: 'T05', count: 2 }),
      task('plant_work', 138, { column: 'T07' }),
      task('survey_work', 45, { column: 'T05', count: 2, perJob: true }),
      task('survey_work', 45, { column: 'T07', perJob: true }),
    ];
    expect(minutesOf(work)).toEqual({ minutes: 2 * 96 + 138 + 45, paidAt: new Map() });
  });

  test("what a line says is somebody else's hour is counted by rate, too; the builder's is not", () => {
    const work: readonly WorkAmount[] = [
      task('plant_work', 96, { count: 2, who: 'R-builder' }),
      task('lamp_work', 45, { count: 2, who: 'R-fitter' }),
      task('culture_work', 50, { perJob: true, who: 'R-grower' }),
    ];
    expect(minutesOf(work)).toEqual({
      minutes: 192 + 90 + 50,
      paidAt: new Map([
        ['R-fitter', 90],
        ['R-grower', 50],
      ]),
    });
  });
});

describe('hoursCharged', () => {
  test.each([
    { minutes: 614.35, hours: 10.25 },
    { minutes: 615, hours: 10.25 },
    { minutes: 615.000_000_000_1, hours: 10.25 },
    { minutes: 616, hours: 10.5 },
    { minutes: 0, hours: 0 },
  ])('$minutes minutes are charged as $hours hours', ({ minutes, hours }) => {
    expect(hoursCharged(minutes)).toBe(hours);
  });
});

function task(line: string, amount: number, more: Partial<WorkAmount>): WorkAmount {
  return { line, amount, column: 'T05', count: 1, perJob: false, ...more };
}
