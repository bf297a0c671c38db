import type { BoxCheck } from '#shared-calc/bench/bench-types.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { wholeSums, type KnownSums, type OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { Result } from '#shared-calc/result.ts';

/** What one size came to before an edit. */
export interface ColumnBefore {
  readonly boxes: ReadonlyMap<string, BoxBefore>;
  /** Its price, if it was known; in coins. */
  readonly gross: number | undefined;
}

export interface BoxBefore {
  readonly text: string;
  readonly value: number | string | boolean | undefined;
  readonly check: BoxCheck['state'] | undefined;
}

export function columnBefore(bench: Bench, column: string, gross: number | undefined): ColumnBefore {
  const boxes = bench.lines(column).map(({ name }) => {
    const { text, value, check } = bench.box(column, name);
    return [name, { text, value, check: check?.state }] as const;
  });
  return { boxes: new Map(boxes), gross };
}

/** A price, if everything that it needs is known, in coins. */
export function wholeGross(known: Result<KnownSums, OrderFault>): number | undefined {
  const sums = wholeSums(known);
  return sums.ok ? sums.value.quote.grossCoins : undefined;
}
