import type { OrderFault, OrderSums } from '#shared-calc/bench/order-sums.ts';
import { houseNotGiven, type NotGiven, type WorkshopKey } from '#shared-calc/price/not-given.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';

/** What a quote says beside its price, and the workshop has not given. */
export function termsNotGiven(workshop: Workshop): readonly NotGiven[] {
  const { currency, terms, quoteValidDays, name, letterhead } = workshop;
  const missing: readonly (readonly [key: WorkshopKey, isGiven: boolean])[] = [
    ['name', `${name}${letterhead}`.trim() !== ''],
    ['currency', currency !== ''],
    ['quoteValidDays', quoteValidDays !== undefined],
    ['terms', terms.trim() !== ''],
  ];
  return missing.flatMap(([key, isGiven]) => (isGiven ? [] : houseNotGiven(key)));
}

/** The sums of a quote that can be issued; else everything that is not given, its terms among it. */
export function readyToIssue(sums: Result<OrderSums, OrderFault>, workshop: Workshop): Result<OrderSums, OrderFault> {
  const terms = termsNotGiven(workshop);
  if (terms.length === 0) return sums;
  if (sums.ok) return failed({ kind: 'figures-not-given', missing: terms });
  const { fault } = sums;
  return fault.kind === 'figures-not-given' ? failed({ ...fault, missing: [...fault.missing, ...terms] }) : sums;
}
