import { stockOnHand } from '#shared-calc/buy/stock.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { PlanStore } from './planned-goods.ts';

/** The Store as an order without a job sees it: nothing is ordered for it, and it may have what is free. */
export function freeStore({ stockEntry }: Pick<Records, 'stockEntry'>, on: Day): PlanStore {
  const stock = stockOnHand(stockEntry.values(), { on });
  return { factOf: () => undefined, gives: (material) => stock.get(material) ?? 0 };
}

/** The Store as a job sees it: what is kept for it is in; what is free may be had of what comes from stock. */
export function jobStore({ stockEntry }: Pick<Records, 'stockEntry'>, job: string, on: Day): PlanStore {
  const stock = stockOnHand(stockEntry.values(), { on, jobs: [job] });
  return { factOf: () => undefined, gives: (material) => stock.get(material) ?? 0 };
}
