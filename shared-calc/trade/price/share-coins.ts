/**
 * Shares whole coins by weight so that the parts add up to the total: each part rounds down, then the remaining coins
 * go one each to the largest remainders (the earlier part on a tie). Weights are whole and not below zero; if all are
 * zero the coins are shared evenly.
 */
export function shareCoins(coins: number, weights: readonly number[]): readonly number[] {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (all === 0 && weights.length > 0)
    return shareCoins(
      coins,
      weights.map(() => 1),
    );
  const parts = weights.map((weight, at) => cut(coins, weight, all, at));
  const left = coins - parts.reduce((sum, part) => sum + part.whole, 0);
  const lucky = new Set(
    parts
      .toSorted(byRemainder)
      .slice(0, left)
      .map((part) => part.at),
  );
  return parts.map((part) => part.whole + (lucky.has(part.at) ? 1 : 0));
}

interface Part {
  readonly at: number;
  readonly whole: number;
  readonly remainder: bigint;
}

/** In BigInt: coins times weight may exceed what a double holds exactly. */
function cut(coins: number, weight: number, all: number, at: number): Part {
  const over = BigInt(coins) * BigInt(weight);
  return { at, whole: Number(over / BigInt(all)), remainder: over % BigInt(all) };
}

function byRemainder(left: Part, right: Part): number {
  if (left.remainder === right.remainder) return left.at - right.at;
  return left.remainder > right.remainder ? -1 : 1;
}
