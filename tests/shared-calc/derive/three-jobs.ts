import { derive } from '#shared-calc/derive/derived.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

/** The materials of scenario 4. */
const media = ['M01', 'M04', 'M05', 'M06', 'M07', 'M08', 'M09', 'M15'];

/** Three jobs, one each of T03, T07 and T08, soil laid flat, and an empty Store: J02, J03, J04. */
export function threeJobs(): Records {
  let records: Records = { ...demoRecords(), move: new Map() };
  for (const tank of ['T03', 'T07', 'T08']) {
    const made = newJob(records, {
      title: `Job of ${tank}`,
      recipe: 'H1',
      sizes: [{ tank, count: 1 }],
      writings: [{ line: 'soil_rise', text: '0 mm' }],
      by: 'client',
      on: DEMO_DAY,
    });
    records = applyChange(records, valueOf(made).change);
  }
  return records;
}

export function mediaRun(records: Records): ShoppingRun {
  return valueOf(derive(records, DEMO_DAY).run({ jobs: ['J02', 'J03', 'J04'], materials: media })).run;
}

export function pricesOf(records: Records) {
  return priceBook(records, { on: DEMO_DAY, oldPriceDays: 180 });
}
