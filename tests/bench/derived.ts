import { derive } from '#shared-calc/derive/derived.ts';
import { newJob } from '#shared-calc/jobs/new-job.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { after, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { measure, ms, ratio, type Told } from './measure.ts';

/** One shopping run over jobs of three sizes after one edit of one of them, compared with a fresh computation. */
export function benchDerived(): readonly Told[] {
  return [1, 3, 10, 20].map((count) => {
    const jobs = Array.from({ length: count }, (_, at) => `J${String(at + 2).padStart(2, '0')}`);
    const records = manyJobs(count);
    const edited = [10, 20].map((litter) => edit(records, litter));
    const at = (turn: number) => edited[turn % 2] ?? records;
    let derived = derive(at(1), DEMO_DAY);
    derived.run({ jobs });
    const updated = measure({ times: 20 }, (turn) => {
      derived = derived.update(at(turn));
      derived.run({ jobs });
    });
    const fresh = measure({ times: 5, warm: 1 }, (turn) => derive(structuredClone(at(turn)), DEMO_DAY).run({ jobs }));
    return {
      what: `shopping run over ${count} ${count === 1 ? 'job' : 'jobs'} after one edit`,
      took: ms(updated.median),
      floor: `worked afresh ${ms(fresh.median)}`,
      ratio: ratio(updated.median / fresh.median),
      must: '',
    };
  });
}

function manyJobs(count: number): Records {
  let records = demoRecords();
  for (let at = 0; at < count; at += 1) {
    const sizes = ['T03', 'T07', 'T08'].map((tank) => ({ tank, count: 1 }));
    const input = { title: `Job ${at}`, recipe: 'H1', sizes, writings: [], by: 'us', on: DEMO_DAY } as const;
    records = applyChange(records, valueOf(newJob(records, input)).change);
  }
  return records;
}

function edit(records: Records, litter: number): Records {
  const writings = [{ column: 'T07', line: 'litter', text: `${litter} mm` }];
  return after(records, setValues(records, { job: 'J02', writings, by: 'us' }));
}
