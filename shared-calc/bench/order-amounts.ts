import type { BuildAmount } from '#shared-calc/buy/all-builds.ts';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import type { WorkAmount } from '#shared-calc/price/work-hours.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Box } from './bench-types.ts';
import { namedLines } from './column-lines.ts';
import type { Bench } from './open-bench.ts';

/** Why the needs of an order are not all known: the first cell without a value. */
export interface NoAmount {
  readonly kind: 'no-amount-yet';
  readonly box: Box;
}

/** What is known of some lines, and the cells without a value. */
export interface KnownAmounts<T> {
  readonly amounts: readonly T[];
  readonly without: readonly Box[];
}

/** The amounts of all need lines of some columns; a fault while one of them has none. */
export function needAmounts(
  bench: Bench,
  columns: readonly string[],
  prices: PriceBook,
): Result<readonly NeedAmount[], NoAmount> {
  return allOf(knownNeeds(bench, columns, prices));
}

/** Minutes of all work lines of some columns; a fault while one of them has none. */
export function workAmounts(bench: Bench, columns: readonly string[]): Result<readonly WorkAmount[], NoAmount> {
  return allOf(knownWork(bench, columns));
}

function allOf<T>({ amounts, without: [box] }: KnownAmounts<T>): Result<readonly T[], NoAmount> {
  return box ? failed({ kind: 'no-amount-yet', box }) : ok(amounts);
}

/** The amounts of the need lines of some columns, each for one build, in the material's unit of sale. */
export function knownNeeds(bench: Bench, columns: readonly string[], prices: PriceBook): KnownAmounts<NeedAmount> {
  return collect(bench, { role: 'need', columns }, (line, base, column) => {
    const tank = bench.input().columns.find((each) => each.key === column.column)?.tank.id ?? '';
    const material = line.material === 'TANK' ? tank : (line.material ?? '');
    const { unit = line.unit } = prices.goods.get(material) ?? {};
    const group = line.group ?? '';
    const inBooks = prices.goods.has(material);
    return { ...column, amount: fromBase(base, unitOf(unit)), material, group, ...(!inBooks && { unit }) };
  });
}

/** Minutes of the work lines of some columns, each for one build: the mean over its repeats. */
export function knownWork(bench: Bench, columns: readonly string[]): KnownAmounts<WorkAmount> {
  const builds = buildsOfLike(bench, columns);
  return collect(bench, { role: 'work', columns }, ({ who }, base, column) => {
    const learning = lineFor(bench.lines(column.column), 'learning');
    const share = learning && bench.box(column.column, learning.name).value;
    const repeats =
      typeof share === 'number' && !column.perJob
        ? meanOfRepeats(builds.get(column.like ?? column.column) ?? 0, share)
        : 1;
    return { ...column, amount: fromBase(base, unitOf('min')) * repeats, ...(who !== undefined && { who }) };
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
): KnownAmounts<T> {
  const amounts: T[] = [];
  const without: Box[] = [];
  const columns = withLike(bench, asked.columns);
  for (const { name } of bench.input().lines) {
    for (const { key, count, like } of columns) {
      const line = namedLines(bench.lines(key)).get(name);
      if (line?.role !== asked.role) continue;
      const box = bench.box(key, name);
      const build = { line: name, perJob: line.perJob, column: key, count, ...(like !== key && { like }) };
      if (typeof box.value === 'number') amounts.push(amountOf(line, box.value, build));
      else without.push(box);
    }
  }
  return { amounts, without };
}

/** How many builds each column makes together with those like it, by the first of them. */
function buildsOfLike(bench: Bench, keys: readonly string[]): ReadonlyMap<string, number> {
  const builds = new Map<string, number>();
  for (const { key, count, like = key } of withLike(bench, keys)) builds.set(like, (builds.get(like) ?? 0) + count);
  return builds;
}

/** Each of some columns with the first one that has the same tank, the same lines and the same local texts. */
function withLike(
  bench: Bench,
  keys: readonly string[],
): readonly (Pick<ColumnInput, 'key' | 'count'> & Pick<BuildAmount, 'like'>)[] {
  const lists: (readonly Line[])[] = [];
  const firsts = new Map<string, string>();
  const columns = bench.input().columns.filter(({ key }) => keys.includes(key));
  return columns.map(({ key, count, tank, locals }) => {
    const lines = bench.lines(key);
    if (!lists.includes(lines)) lists.push(lines);
    const texts = [...locals].map(([line, text]) => `${line}=${text}`).toSorted();
    const same = JSON.stringify([tank, lists.indexOf(lines), texts]);
    const like = firsts.get(same) ?? key;
    firsts.set(same, like);
    return { key, count, like };
  });
}
