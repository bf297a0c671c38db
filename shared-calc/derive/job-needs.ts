import { orderNeeds, type OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import { stockOnHand } from '#shared-calc/buy/stock.ts';
import { pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { orderPlants, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from './derived.ts';

export interface JobNeeds {
  readonly list: NeedsList;
  readonly plants: readonly PlantOrder[];
}

/** The needs list of a job: what the Store can give is taken off, plants are listed by name. */
export function jobNeeds({ records, today: on }: Derived, worked: DerivedJob): Result<JobNeeds, OrderFault> {
  const { job, bench, keys, pricing, planted } = worked;
  const stock = stockOnHand(records.stockEntry.values(), { on, jobs: [job.id] });
  const list = orderNeeds(bench, keys, { ...pricing, stock });
  return list.ok
    ? ok({ list: list.value, plants: orderPlants([planted], pricedPlants(records, pricing.prices)) })
    : list;
}
