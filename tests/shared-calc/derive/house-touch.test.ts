import { describe, expect, test } from 'vitest';
import { derive } from '#shared-calc/derive/derived.ts';
import { houseTouches } from '#shared-calc/derive/house-touch.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { issued, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { houseWritten, soldJob } from '#tests/shared-calc/jobs/sold-jobs.ts';

const touched = (records: Records, on = DEMO_DAY) =>
  houseTouches(derive(records, on)).map(({ job, quote, changes, sums }) => [
    job.id,
    quote,
    changes.map(({ id }) => id),
    sums.ok && sums.value.cost.to - sums.value.cost.from,
    sums.ok && sums.value.net.to - sums.value.net.from,
  ]);

describe('an open quote that the house has moved on from', () => {
  const quoted = issued(libraryJob(), 'A').records;
  const thinner = houseWritten(quoted, 'litter', '20 mm');

  test('is told with what the change does to it: 1.86 at cost, 3.10 before tax', () => {
    expect(touched(thinner)).toEqual([['J02', 'Q-0001A', ['HC-0001'], -186, -310]]);
  });

  test('counts on its own prices, whatever they are now', () => {
    const leaves = [...thinner.packPrice.values()].filter(({ pack }) => pack.startsWith('M15'));
    const dear = withRecords(
      thinner,
      'packPrice',
      leaves.map((price) => ({ ...price, priceCoins: price.priceCoins * 3 })),
    );
    expect(touched(dear)).toEqual(touched(thinner));
  });

  test('is none past its last day, once it is accepted, or where it has the change already', () => {
    expect(touched(thinner, '2027-03-30')).toEqual([]);
    expect(touched(soldJob(thinner))).toEqual([]);
    expect(touched(issued(thinner, 'B').records)).toEqual([]);
  });
});
