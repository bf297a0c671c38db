import type { KnownSums, OrderFault, OrderSums } from '#shared-calc/bench/order-sums.ts';
import { guessesAsMissing, type Missing } from '#shared-calc/buy/missing.ts';
import { houseNotGiven, type NotGiven, type WorkshopKey } from '#shared-calc/price/not-given.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

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

/** Everything that a quote lacks before it can be issued: what is not known, what is only a guess, and its terms. */
export function lacksToIssue({ missing, guesses }: KnownSums, workshop: Workshop): readonly Missing[] {
  return [...missing, ...guessesAsMissing(guesses), ...termsNotGiven(workshop)];
}

/** The sums of a quote that can be issued, or everything that it lacks. */
export function readyToIssue(sums: Result<KnownSums, OrderFault>, workshop: Workshop): Result<OrderSums, OrderFault> {
  if (!sums.ok) return sums;
  const missing = lacksToIssue(sums.value, workshop);
  return missing.length > 0 ? failed({ kind: 'figures-not-given', missing }) : ok(sums.value);
}
