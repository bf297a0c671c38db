import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { orderSums, type OrderFault, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Lesson } from './teach-house.ts';

export interface LessonEffect {
  /** The line's figure in its unit, before and after; left out if it has none. */
  readonly before?: number;
  readonly after?: number;
  /** The change of the cost and of the price before tax, in coins. */
  readonly addsCostCoins: number;
  readonly addsPriceCoins: number;
}

/** The effect of a lesson on a reference size, if the house accepted it; does not change the house. */
export function lessonEffect(
  bench: Bench,
  column: string,
  { lesson, pricing }: { readonly lesson: Lesson; readonly pricing: Pricing },
): Result<LessonEffect, OrderFault> {
  const start = bench.input();
  const taught = onceBench({
    ...start,
    columns: start.columns.filter((each) => each.key === column),
    lines: start.lines.map((line) =>
      line.name === lesson.line ? { ...line, text: lesson.proposed ?? line.text } : line,
    ),
  });
  const then = orderSums(taught, [column], pricing);
  const [before, after] = [bench, taught].map((each) => figureOf(each, column, lesson));
  const now = orderSums(bench, [column], pricing);
  if (!now.ok) return now;
  if (!then.ok) return then;
  return ok({
    ...(before !== undefined && { before }),
    ...(after !== undefined && { after }),
    addsCostCoins: then.value.quote.costCoins - now.value.quote.costCoins,
    addsPriceCoins: then.value.quote.netCoins - now.value.quote.netCoins,
  });
}

function figureOf(bench: Bench, column: string, { line, unit }: Lesson): number | undefined {
  const { value } = bench.box(column, line);
  return typeof value === 'number' ? fromBase(value, unitOf(unit)) : undefined;
}
