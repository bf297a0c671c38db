import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { NoAmount } from '#shared-calc/bench/order-amounts.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import type { CultureDemand } from '#shared-calc/trade/cultures/cultures-to-keep.ts';

export type DemandFault =
  | NoAmount
  /** The recipe has no line for how many of this kind a build uses. */
  | { readonly kind: 'no-seed-line'; readonly culture: string; readonly use: UseName };

/** Flies are planned by the week, not for a build. */
export function isFlies(kind: Pick<CultureKind, 'productiveDays'>): boolean {
  return kind.productiveDays !== undefined;
}

/** The use of the line for how many of a kind one build is started with. */
export function seedUseOf(kind: Pick<CultureKind, 'label'>): 'springtailSeed' | 'isopodFounders' {
  return /isopod/i.test(kind.label) ? 'isopodFounders' : 'springtailSeed';
}

/** Animals of a kind that all builds of some columns are started with, rounded up. */
export function animalsFor(bench: Bench, columns: readonly string[], kind: CultureKind): Result<number, DemandFault> {
  const use = seedUseOf(kind);
  const line = lineFor(bench.input().lines, use);
  if (!line) return failed({ kind: 'no-seed-line', culture: kind.label, use });
  let animals = 0;
  for (const { key, count } of bench.input().columns.filter((column) => columns.includes(column.key))) {
    const box = bench.box(key, line.name);
    if (typeof box.value !== 'number') return failed({ kind: 'no-amount-yet', box });
    animals += countUp(box.value) * count;
  }
  return ok(animals);
}

/** One demand a day, by date: the harvest of a day is shared among its builds. Days without a demand are left out. */
export function byDay(demands: readonly CultureDemand[]): readonly CultureDemand[] {
  const days = new Map<Day, number>();
  for (const { date, animals } of demands) days.set(date, (days.get(date) ?? 0) + animals);
  return [...days]
    .filter(([, animals]) => animals > 0)
    .map(([date, animals]) => ({ date, animals }))
    .toSorted((one, other) => (one.date < other.date ? -1 : 1));
}
