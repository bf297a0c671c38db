import { derive, type DerivedJob } from '#shared-calc/derive/derived.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { done } from '#tests/shared-calc/acts/do-act.ts';
import { issued, libraryJob } from './demo-jobs.ts';

/** J02, quoted as Q-0001A and accepted. */
export function soldJob(records: Records = issued(libraryJob(), 'A').records): Records {
  return done(records, 'moveJob', { job: 'J02', state: 'accepted' }).records;
}

export function worked(records: Records, id = 'J02'): DerivedJob {
  const job = derive(records, DEMO_DAY).job(id);
  if (!job) throw new Error(`no job ${id}`);
  return job;
}

export function lineOf(records: Records, name: string): Line {
  const line = records.line.get(`H1.${name}`);
  if (!line) throw new Error(`no line ${name}`);
  return line;
}

/** A line of H1 written in the house, as by hand. */
export function houseWritten(records: Records, name: string, text: string): Records {
  return done(records, 'writeLine', { line: lineOf(records, name).id, text }).records;
}

/** Everything that a job is worked to. */
export function allOf(records: Records, id = 'J02') {
  const { bench, keys, needs, sums, checks, plan } = worked(records, id);
  const { lines } = bench.input();
  const dates = plan();
  return {
    figures: keys.map((key) => lines.map(({ name }) => [name, bench.box(key, name).value])),
    needs: needs(),
    sums: sums(),
    checks: keys.map((key) => checks(key).map(({ line, ...check }) => ({ ...check, line: line.name }))),
    dates: dates.ok ? [dates.value.plan, [...dates.value.minutes], dates.value.care] : dates,
  };
}
