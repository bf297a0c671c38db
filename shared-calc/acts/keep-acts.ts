import { z } from 'zod';
import { NOTHING, stock } from '#shared-calc/buy/ledger.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { keepStock as keptFor, releaseStock } from '#shared-calc/jobs/keep-stock.ts';
import { applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { usesOf } from './build-job.ts';
import { Day } from './inputs.ts';

const Keep = z.strictObject({
  job: z.string(),
  of: z.string().describe('A material, a tank, a plant or a one-off line.'),
  amount: z.number().min(-1e9).max(1e9).describe('In the unit of the goods; below 0 gives back.'),
  on: Day.optional().describe('Left out: today.'),
});

export const keepStock = act<z.infer<typeof Keep>>({
  name: 'keepStock',
  says: 'Keeps an amount in the Store for a job, so that no other job is given it; below 0 gives some back.',
  input: Keep,
  run: ({ records, today, job: jobOf }, { job, of: goods, amount, on = today }) => {
    const fault = dayFault(on);
    return fault ? failed(fault) : keptFor(records, { job, goods, amount, on, use: jobOf(job)?.useOn(goods) });
  },
});

const OfJob = z.strictObject({ job: z.string() });

export const release = act<z.infer<typeof OfJob>>({
  name: 'release',
  says: 'Gives back all that is kept in the Store for a job.',
  input: OfJob,
  run: ({ records, today }, { job: id }) => {
    const job = findJob(records, id);
    return job.ok ? ok(releaseStock(records, id, today)) : job;
  },
});

export const keepNeeded = act<z.infer<typeof OfJob>>({
  name: 'keepNeeded',
  says: 'Keeps for a job as much of everything it needs as the Store has free.',
  input: OfJob,
  run: (derived, { job }) => neededKept(derived, job),
});

function neededKept(derived: Derived, job: string): Result<Change, ActFault> {
  const { records, today: on } = derived;
  const uses = usesOf(derived, job);
  if (!uses.ok) return uses;
  let now = records;
  const changes: Change[] = [];
  for (const [goods, needed] of uses.value) {
    const use = derived.job(job)?.useOn(goods) ?? on;
    const { free, kept } = stock(now, goods, { asked: on, use });
    const amount = Math.min(free, needed - (kept.get(job) ?? 0));
    if (amount <= NOTHING) continue;
    const keep = keptFor(now, { job, goods, amount, on, use });
    if (!keep.ok) return keep;
    now = applyChange(now, keep.value);
    changes.push(keep.value);
  }
  if (changes.length === 0) return failed({ kind: 'nothing-free', job });
  return ok(squashChanges(`kept for ${job}: what the Store has of its needs`, changes));
}
