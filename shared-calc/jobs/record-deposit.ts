import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { dayFault, type Day } from '#shared-calc/calendar/day.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { isBefore } from './move-job.ts';
import { arrived } from './next-act.ts';
import { putRecords } from './put-records.ts';

export interface Deposit {
  readonly job: string;
  /** Whole coins, above 0. */
  readonly coins: number;
  readonly on: Day;
}

/**
 * Records a deposit with its day. A job in an earlier state moves to *deposit in*, which opens the shopping run for it.
 */
export function recordDeposit(records: Records, { job: id, coins, on }: Deposit): Result<Change, JobFault> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  const workshop = workshopOf(records);
  const text = coinsText(coins, workshop.coinDecimals);
  if (!Number.isInteger(coins) || coins <= 0) return failed({ kind: 'not-an-amount', text });
  const wrong = dayFault(on);
  if (wrong) return failed(wrong);
  const paid = { ...found.value, depositCoins: coins, depositOn: on };
  const job = isBefore(paid.state, 'deposit in') ? arrived(paid, 'deposit in') : paid;
  const label = `${id}: deposit ${text} on ${writeDay(on, workshop.dateOrder)}`;
  return ok(diffRecords(label, records, { ...records, job: putRecords(records.job, [job]) }));
}
