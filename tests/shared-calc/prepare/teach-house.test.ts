import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lessonEffect } from '#shared-calc/prepare/lesson-effect.ts';
import { median } from '#shared-calc/prepare/median.ts';
import { teachHouse, type Lesson } from '#shared-calc/prepare/teach-house.ts';
import type { Actual } from '#shared-calc/records/records.ts';
import { demoBench, demoPricing, demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
const lines = [...records.line.values()].filter((line) => line.recipe === 'H1');

function actual(job: number, line: string, value: number, unit: string): Actual {
  const on = `2027-0${job}-15`;
  return { id: `A-${job}-${line}-${value}`, job: `J0${job}`, line, value, unit, on, note: '' };
}

function taught(actuals: readonly Actual[], planned = 96): readonly Lesson[] {
  return teachHouse({ lines, actuals, plannedOf: () => planned });
}

describe('median', () => {
  test.each([
    [[3], 3],
    [[5, 1, 3], 3],
    [[4, 1, 3, 2], 2.5],
    [[], undefined],
  ])('of %j is %s', (figures, middle) => {
    expect(median(figures)).toBe(middle);
  });

  test('half the figures are no higher, half no lower', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), { minLength: 1 }), (figures) => {
        const middle = median(figures) ?? Number.NaN;
        expect(figures.filter((each) => each <= middle).length * 2).toBeGreaterThanOrEqual(figures.length);
        expect(figures.filter((each) => each >= middle).length * 2).toBeGreaterThanOrEqual(figures.length);
      }),
    );
  });
});

describe('teachHouse', () => {
  const settling = [14, 30, 15, 13, 16, 15].map((value, at) => actual(at + 1, 'mix_settle', value, '%'));

  test('a given line is offered the median of the last five jobs, beside the old figure', () => {
    expect(taught(settling)).toEqual([
      {
        line: 'mix_settle',
        unit: '%',
        as: 'figure',
        jobs: [6, 5, 4, 3, 2].map((job) => ({
          job: `J0${job}`,
          on: `2027-0${job}-15`,
          figure: expect.closeTo([30, 15, 13, 16, 15][job - 2] ?? 0, 9) as number,
        })),
        median: 15,
        old: '12 %',
        proposed: '15 %',
      },
    ]);
  });

  test('fewer than five jobs offer nothing yet, and what would change nothing is not offered', () => {
    expect(taught(settling.slice(0, 4))[0]?.proposed).toBeUndefined();
    const same = [1, 2, 3, 4, 5].map((job) => actual(job, 'mix_settle', 12, '%'));
    expect(taught(same)[0]?.proposed).toBeUndefined();
  });

  test('a task is offered times the median of what it took over what was planned', () => {
    const planting = [100, 120, 108, 110, 90].map((value, at) => actual(at + 1, 'plant_work', value, 'min'));
    expect(taught(planting)[0]).toMatchObject({
      as: 'factor',
      median: 108 / 96,
      old: '6 min * plants',
      proposed: '1.13 * (6 min * plants)',
    });
  });

  test('a factor that is there already is multiplied, not nested, and taken off where it comes to 1', () => {
    const again = lines.map((line) =>
      line.name === 'plant_work' ? { ...line, text: '1.25 * (6 min * plants)' } : line,
    );
    const learn = (value: number) =>
      teachHouse({
        lines: again,
        actuals: [1, 2, 3, 4, 5].map((job) => actual(job, 'plant_work', value, 'min')),
        plannedOf: () => 100,
      })[0]?.proposed;
    expect([learn(120), learn(80)]).toEqual(['1.5 * (6 min * plants)', '6 min * plants']);
  });

  const five = (line: string, value: number, unit: string) =>
    [1, 2, 3, 4, 5].map((job) => actual(job, line, value, unit));
  const proposed = (line: string, text: string, value: number) =>
    teachHouse({
      lines: lines.map((each) => (each.name === line ? { ...each, text } : each)),
      actuals: five(line, value, 'each'),
      plannedOf: () => 2,
    })[0]?.proposed;

  test('what is counted stays whole: branches at 1.5 times are rounded, and the next lesson takes the factor on', () => {
    const rule = 'max(1, round(hardscape_rate / 2 * floor_area, 0))';
    expect([
      proposed('branches_need', rule, 3),
      proposed('branches_need', `round(1.5 * (${rule}), 0)`, 4),
      proposed('branches_need', `round(2 * (${rule}), 0)`, 1),
      proposed('isopod_founders', '10 each', 12.4),
    ]).toEqual([`round(1.5 * (${rule}), 0)`, `round(3 * (${rule}), 0)`, rule, '12 each']);
  });

  test('a sum of two parts has no factor of its own', () => {
    expect(proposed('branches_need', '2 * (pods_need) + (tubes_need)', 3)).toBe(
      'round(1.5 * (2 * (pods_need) + (tubes_need)), 0)',
    );
  });

  test('hours are read as minutes, sizes of a job are taken together, and a measure that does not fit is passed over', () => {
    const mixed = [
      actual(1, 'plant_work', 2, 'h'),
      actual(1, 'plant_work', 72, 'min'),
      actual(1, 'plant_work', 3, 'L'),
    ];
    expect(taught(mixed)[0]?.jobs).toEqual([{ job: 'J01', on: '2027-01-15', figure: 1 }]);
  });

  test('the house itself is not changed', () => {
    const before = lines.map((line) => ({ ...line }));
    taught(settling);
    expect(lines).toEqual(before);
  });
});

describe('lessonEffect', () => {
  test('what a lesson does to a reference size: 1.13 times the planting of T07 is a quarter of an hour more', () => {
    const planting = [1, 2, 3, 4, 5].map((job) => actual(job, 'plant_work', 108, 'min'));
    const [lesson] = taught(planting);
    if (!lesson) throw new Error('no lesson');
    const bench = demoBench({ sizes: ['T07'], job: { soil_rise: '0 mm' } }, records);
    const effect = lessonEffect(bench, 'T07', { lesson, pricing: demoPricing(records) });
    // 23 plants: 138 min, 155.94 with the lesson; 17.94 min more is 1 or 2 quarters of 10.75.
    expect(effect).toMatchObject({ ok: true, value: { before: 138, after: expect.closeTo(155.94, 6) as number } });
    expect(effect.ok && [1075, 2150].includes(effect.value.addsCostCoins)).toBe(true);
    expect(bench.box('T07', 'plant_work').text).toBe('6 min * plants');
  });
});
