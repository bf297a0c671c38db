import type { KnownSums, OrderFault, OrderSums } from '#shared-calc/bench/order-sums.ts';
import type { Missing } from '#shared-calc/buy/missing.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** Everything that a quote lacks before it can be issued: what is not known, and what is only a guess. */
export function lacksToIssue({ missing, guesses }: KnownSums): readonly Missing[] {
  return [...missing, ...guesses.map(({ of, label }) => ({ what: 'price', of, label: `${label} (a guess)` }) as const)];
}

/** The sums of a quote that can be issued, or everything that it lacks. */
export function readyToIssue(sums: Result<KnownSums, OrderFault>): Result<OrderSums, OrderFault> {
  if (!sums.ok) return sums;
  const missing = lacksToIssue(sums.value);
  return missing.length > 0 ? failed({ kind: 'figures-missing', missing }) : ok(sums.value);
}
