import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { orderSums, type OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { byId } from '#shared-calc/records/by-id.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { SheetColumn, WrittenByLine } from './job-sheet.ts';
import { keysOf } from './job-sheet.ts';
import { ratesOf } from './frozen-rates.ts';
import { sheetInput } from './worked-job.ts';
import { frozenHouses, frozenLines, type FrozenColumn, type FrozenWritten, type QuoteBody } from './quote-body.ts';

/** The inputs of a quote from its frozen body, so that some of them can be exchanged. */
export interface QuoteParts extends Pick<
  QuoteBody,
  'lines' | 'basis' | 'oneOffs' | 'workshop' | 'rates' | 'margins' | 'taxClasses' | 'suppliers' | 'pricesOn'
> {
  readonly whole: WrittenByLine;
  readonly columns: readonly SheetColumn[];
  readonly goods: ReadonlyMap<string, Goods>;
}

export function partsOf(body: QuoteBody): QuoteParts {
  return {
    ...body,
    whole: writtenOf(body.whole),
    columns: body.columns.map((column) => columnOf(column, body)),
    goods: new Map(body.goods.map((goods) => [goods.material, goods])),
  };
}

/** Works out a quote from its inputs in the same way as at issue. */
export function reworkQuote(parts: QuoteParts): Result<QuoteSums, OrderFault> {
  const prices = pricesOf(parts);
  const rules = quoteRules(parts.workshop, ratesOf(parts));
  const bench = onceBench(sheetInput(parts, parts.lines, prices));
  const sums = orderSums(bench, keysOf(parts), { prices, rules, basis: parts.basis, oneOffs: parts.oneOffs });
  return sums.ok ? ok(sums.value.quote) : sums;
}

function columnOf(column: FrozenColumn, body: QuoteBody): SheetColumn {
  const { size, key, tank, label, count, locals, given = [], house } = column;
  const texts = new Map(given.map(({ line, ...each }) => [line, each]));
  const recipe = frozenHouses(body)[house ?? 0]?.recipe.id;
  return {
    size,
    key,
    tank,
    label,
    count,
    locals: writtenOf(locals),
    given: texts,
    ...(recipe !== undefined && recipe !== body.recipe.id && { recipe }),
    ...(house !== undefined && { lines: frozenLines(body, column) }),
  };
}

function writtenOf(written: readonly FrozenWritten[]): WrittenByLine {
  return new Map(written.map(({ line, ...box }) => [line, box]));
}

function pricesOf({ pricesOn, goods, suppliers }: QuoteParts): PriceBook {
  return { on: pricesOn, goods, suppliers: byId(suppliers) };
}
