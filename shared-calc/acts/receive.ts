import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { orderedJobs, type ExpectedOrder } from '#shared-calc/derive/expected-goods.ts';
import { spendChoices } from '#shared-calc/jobs/pack-choices.ts';
import { receiveOrder } from '#shared-calc/jobs/receive-order.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';

export interface Received {
  readonly order: ExpectedOrder;
  /** How many of each pack came in, in the order of its packs. */
  readonly counts: readonly number[];
  readonly on: Day;
  /** Calendar days that plants are kept apart. */
  readonly quarantineDays: number;
}

/** Puts a received order into the Store. Plants go into quarantine; packs chosen by hand are cleared. */
export function receive(records: Records, { order, counts, on, quarantineDays }: Received): Change {
  const packs = order.packs.flatMap(({ material, amount, isPlant }, at) => {
    const count = counts[at] ?? 0;
    if (count <= 0) return [];
    return [{ material, amount, count, ...(isPlant && { quarantineUntil: addDays(on, quarantineDays) }) }];
  });
  const came = receiveOrder(records, packs, order.name);
  const materials = packs.map(({ material }) => material);
  return squashChanges(came.label, [came, spendChoices(records, orderedJobs(records), materials)]);
}
