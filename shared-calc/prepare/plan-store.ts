import { NOTHING, stock, type GoodsStock, type LedgerRecords } from '#shared-calc/buy/ledger.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { GoodsFact, PlanStore } from './planned-goods.ts';

/** The Store as an order without a job sees it: nothing is ordered for it, and it may have what is free. */
export function freeStore(records: LedgerRecords, on: Day): PlanStore {
  return { factOf: () => undefined, gives: (material) => stock(records, material, { asked: on }).free };
}

/** The Store as a job sees it: what is kept for it is in; what is free may be had of what comes from stock. */
export function jobStore(records: LedgerRecords, job: string, on: Day): PlanStore {
  const ledger = (goods: string) => stock(records, goods, { asked: on });
  return {
    factOf: (goods, amount) => factOf(ledger(goods), job, amount),
    gives: (material) => {
      const { free, kept } = ledger(material);
      return free + (kept.get(job) ?? 0);
    },
  };
}

/** In with the last receipt that is kept for the job, ordered with the last delivery that it waits for. */
function factOf({ lots, lines }: GoodsStock, job: string, amount: number): GoodsFact | undefined {
  const there = lots.filter(({ kept }) => kept.has(job));
  const inStore = sumOf(there, job);
  if (amount - inStore <= NOTHING) {
    const cleared = lastOf(there.flatMap(({ lot }) => lot.came.until ?? []));
    const came = lastOf(there.map(({ lot }) => lot.came.on));
    return came === undefined ? undefined : { in: came, ...(cleared !== undefined && { cleared }) };
  }
  const coming = lines.filter(({ kept }) => kept.has(job));
  const due = lastOf(coming.map(({ line }) => line.due));
  return amount - inStore - sumOf(coming, job) <= NOTHING && due !== undefined ? { due } : undefined;
}

function sumOf(parts: readonly { readonly kept: ReadonlyMap<string, number> }[], job: string): number {
  return parts.reduce((sum, { kept }) => sum + (kept.get(job) ?? 0), 0);
}

function lastOf(days: readonly Day[]): Day | undefined {
  return days.toSorted().at(-1);
}
