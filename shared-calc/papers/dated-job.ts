import { orderDates, type OrderDates } from '#shared-calc/derive/job-plan.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { freeStore, jobStore } from '#shared-calc/prepare/plan-store.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { displayFor, type PaperFault, type PaperInput } from './paper-input.ts';

/** The dates of an order, and what is repeated after its handover. */
export function datedJob(input: PaperInput): Result<OrderDates, PaperFault> {
  const { bench, sheet, records, wish } = input;
  const store = sheet.job ? jobStore(records, sheet.job.id, wish.on) : freeStore(records, wish.on);
  const dates = orderDates(
    { bench, keys: keysOf(sheet), job: sheet.job },
    { records, store, display: displayFor(input), wish },
  );
  return dates.ok ? dates : failed({ kind: 'plan', fault: dates.fault });
}
