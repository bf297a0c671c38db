import { stock, type LedgerRecords } from '#shared-calc/buy/ledger.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { PlanStore } from './planned-goods.ts';

/** The Store as an order without a job sees it: nothing is ordered for it, and it may have what is free. */
export function freeStore(records: LedgerRecords, on: Day): PlanStore {
  return jobStore(records, '', on);
}

/** The Store as a job sees it: what is kept for it is in; what is free may be had of what comes from stock. */
export function jobStore(records: LedgerRecords, job: string, on: Day): PlanStore {
  return {
    factOf: () => undefined,
    gives: (material) => {
      const { free, kept } = stock(records, material, { asked: on });
      return free + (kept.get(job) ?? 0);
    },
  };
}
