import type { BuildAmount } from '#shared-calc/buy/all-builds.ts';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** Why an order has no sums: the cell without a value. */
export interface NoAmount {
  readonly kind: 'no-amount-yet';
  readonly box: Box;
}

/** The amounts of the need lines of some columns, each for one build, in the material's unit of sale. */
export function needAmounts(
  bench: Bench,
  columns: readonly string[],
  prices: PriceBook,
): Result<readonly NeedAmount[], NoAmount> {
  return collect(bench, { role: 'need', columns }, (line, base, column) => {
    const tank = bench.input().columns.find((each) => each.key === column.column)?.tank.id ?? '';
    const material = line.material === 'TANK' ? tank : (line.material ?? '');
    const unit = prices.goods.get(material)?.unit ?? line.unit;
    return { ...column, amount: fromBase(base, unitOf(unit)), material, group: line.group ?? '' };
  });
}

/** Minutes of the work lines of some columns, each for one build: the mean over its repeats. */
export function workAmounts(bench: Bench, columns: readonly string[]): Result<readonly BuildAmount[], NoAmount> {
  const learning = lineFor(bench.input().lines, 'learning');
  return collect(bench, { role: 'work', columns }, (_line, base, column) => {
    const share = learning && bench.box(column.column, learning.name).value;
    const repeats = typeof share === 'number' && !column.perJob ? meanOfRepeats(column.count, share) : 1;
    return { ...column, amount: fromBase(base, unitOf('min')) * repeats };
  });
}

/** Of the minutes of a first build, by what each doubling of like builds takes of them. */
function meanOfRepeats(count: number, learning: number): number {
  let first = 0;
  for (let nth = 1; nth <= count; nth += 1) first += nth ** Math.log2(learning);
  return count > 0 ? first / count : 1;
}

interface AmountRequest {
  readonly role: Line['role'];
  readonly columns: readonly string[];
}

function collect<T>(
  bench: Bench,
  asked: AmountRequest,
  amountOf: (line: Line, base: number, build: Omit<BuildAmount, 'amount'>) => T,
): Result<readonly T[], NoAmount> {
  const amounts: T[] = [];
  const columns = bench.input().columns.filter((each) => asked.columns.includes(each.key));
  for (const line of bench.input().lines.filter((each) => each.role === asked.role)) {
    for (const { key, count } of columns) {
      const box = bench.box(key, line.name);
      if (typeof box.value !== 'number') return failed({ kind: 'no-amount-yet', box });
      amounts.push(amountOf(line, box.value, { line: line.name, perJob: line.perJob, column: key, count }));
    }
  }
  return ok(amounts);
}
