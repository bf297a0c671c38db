import { withOwnLines } from '#shared-calc/bench/column-lines.ts';
import { oldPricesIn } from '#shared-calc/buy/price-book.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { benchPlace, type PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { PlacedSize } from '#shared-calc/jobs/placed-size.ts';
import { placeThen } from '#shared-calc/papers/quote-findings.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { memo } from '#shared-calc/records/memo.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { textsOf, type WrittenByLine } from '#shared-calc/jobs/job-sheet.ts';
import { frozenHouses, readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { byId } from '#shared-calc/records/by-id.ts';
import { ratesOf } from '#shared-calc/jobs/frozen-rates.ts';
import { partsOf } from '#shared-calc/jobs/rework-quote.ts';
import { benchColumns, type BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { IssuedQuote, Line, Recipe } from '#shared-calc/records/records.ts';

/** Everything a bench is made from. Parts that did not change keep their identity. */
export interface BenchSource {
  readonly title: string;
  /** The usual one; a size may have another. */
  readonly recipe: Recipe;
  readonly recipes: readonly Recipe[];
  /** Of all sizes. */
  readonly lines: readonly Line[];
  readonly columns: readonly BenchColumn[];
  /** Cells overridden for the whole job. */
  readonly whole: WrittenByLine;
  readonly job: ReadonlyMap<string, string>;
  readonly pricing: Pricing;
  readonly isOldPrice: (material: string) => boolean;
  /** The limits of the place for each size of a bench, from what all sizes come to there. */
  readonly placeOn: (
    bench: Bench,
    display: Display,
    sizes: () => readonly PlacedSize[],
  ) => (column: string) => readonly PlaceCheck[];
  /** The number of the quote it was issued in, `Q-0027 A`; then nothing can be written. */
  readonly issued?: string;
}

/** Follows one job through the book; returns the same source while nothing of the job changed. */
export function jobSource(): (derived: Derived, job: string) => BenchSource | undefined {
  const source = memo<BenchSource | undefined>();
  const listed = memo<readonly Recipe[]>();
  return (derived, id) => {
    const job = derived.job(id);
    const recipeTable = derived.records.recipe;
    const recipe = recipeTable.get(job?.job.recipe ?? '');
    return source([job, recipe, recipeTable], () => {
      if (!job || !recipe) return undefined;
      const { sheet, pricing } = job;
      const { isOldPrice, lines, job: texts } = job.bench.input();
      const columns = benchColumns(sheet, job.lines);
      const placeOn: BenchSource['placeOn'] = (bench, display, sizes) => benchPlace(bench, job.job, display, sizes);
      const { title } = job.job;
      const recipes = listed([recipeTable], () => [...recipeTable.values()]);
      return { title, recipe, recipes, lines, columns, whole: sheet.whole, job: texts, pricing, isOldPrice, placeOn };
    });
  };
}

/** The bench of an issued quote, as it was issued; `undefined` if its body cannot be read. */
export function quoteSource(quote: IssuedQuote): BenchSource | undefined {
  const body = readQuoteBody(quote.body);
  if (!body) return undefined;
  const parts = partsOf(body);
  const { whole, goods, basis, oneOffs } = parts;
  const prices = { on: body.pricesOn, goods, suppliers: byId(body.suppliers) };
  const rules = quoteRules(body.workshop, ratesOf(body));
  const issued = `${quote.number} ${quote.revision}`;
  const place = new Map(body.columns.map((column) => [column.key, placeThen(column, body)]));
  return {
    title: body.job?.title ?? issued,
    recipe: body.recipe,
    recipes: frozenHouses(body).map(({ recipe }) => recipe),
    ...withOwnLines(parts.lines, benchColumns(parts, parts.lines)),
    whole,
    job: textsOf(whole),
    pricing: { prices, rules, basis, oneOffs },
    isOldPrice: oldPricesIn(prices),
    placeOn: () => (column) => place.get(column) ?? [],
    issued,
  };
}
