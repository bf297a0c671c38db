import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { boxFor } from '#shared-calc/bench/figure-for.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { cautionEntry, cautionsBeside, sayCaution, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { paperActs } from '#shared-calc/cautions/acts.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { OrderSums } from '#shared-calc/bench/order-sums.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { Goods, PriceBook } from '#shared-calc/buy/price-book.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Line, Recipe, Records, Workshop } from '#shared-calc/records/records.ts';
import type { Survey } from '#shared-calc/fields/survey.ts';
import { surveyCautions } from './survey-cautions.ts';
import { plantsReplacedDays } from './plants-replaced.ts';
import { benchPlace } from './place-checks.ts';
import type { JobSheet, SheetColumn, WrittenByLine } from './job-sheet.ts';
import type { WorkingHouse } from './working-house.ts';
import type { WorkedJob } from './worked-job.ts';
import type { FrozenColumn, FrozenWritten, QuoteBody } from './quote-body.ts';

/** The identity of a quote at issue. */
export interface Issue {
  readonly number: string;
  readonly revision: string;
  readonly issuedOn: Day;
}

/** Records everything that a quote was worked out from, and its results. Its terms must be given (ready-to-issue.ts). */
export function freezeQuote(
  records: Records,
  { sheet, bench, lines, pricing, house }: WorkedJob,
  { needs, quote }: OrderSums,
  issue: Issue,
): QuoteBody {
  const { recipe, workshop, rates, changes } = house;
  const houses = housesOf(sheet, lines, house);
  const every = [...new Set([lines, ...houses.map((each) => each.lines)])].flat();
  const place = sheet.job && benchPlace(bench, sheet.job, displayOf(workshop));
  const kits = sheet.columns.map(({ key }) => String(boxFor(bench, key, 'kit')?.value ?? ''));
  return {
    form: 3,
    ...issue,
    pricesOn: pricing.prices.on,
    validUntil: addDays(issue.issuedOn, workshop.quoteValidDays ?? 0),
    ...(sheet.job && { job: sheet.job }),
    basis: pricing.basis,
    recipe,
    lines: [...lines],
    whole: frozenWritten(sheet.whole),
    columns: sheet.columns.map((column) => ({
      ...frozenColumn(column, bench, workshop),
      ...houseOf(column, houses),
      ...(place && { place: [...place(column.key)] }),
    })),
    oneOffs: [...sheet.oneOffs],
    workshop,
    rates: [...rates],
    margins: [...pricing.rules.margins],
    taxClasses: [...pricing.rules.taxClasses],
    ...frozenGoods(records, pricing.prices, every),
    needs: needs.needs.map(frozenNeed),
    sums: frozenSums(quote),
    plantsReplacedDays: plantsReplacedDays(kits, workshop) ?? null,
    cautions: clientCautions(every, sheet.job?.survey).map(({ says, decides }) => ({ says, decides })),
    ...(changes.length > 0 && { changes: [...changes] }),
    ...(houses.length > 0 && { houses: houses.map((each) => ({ ...each, lines: [...each.lines] })) }),
  };
}

interface OtherHouse {
  readonly recipe: Recipe;
  readonly lines: readonly Line[];
}

/** Recipes and lines of sizes that have others than the usual ones, each once. */
function housesOf(sheet: JobSheet, usual: readonly Line[], { recipeOf }: WorkingHouse): readonly OtherHouse[] {
  const others = sheet.columns.filter(({ lines = usual }) => lines !== usual);
  return [...Map.groupBy(others, ({ lines = usual }) => lines)].map(([lines, [column]]) => ({
    recipe: recipeOf(column?.recipe ?? sheet.recipe),
    lines,
  }));
}

function houseOf({ lines }: SheetColumn, houses: readonly OtherHouse[]): Pick<FrozenColumn, 'house'> {
  const at = houses.findIndex((each) => each.lines === lines);
  return at < 0 ? {} : { house: at + 1 };
}

/** What a client reads on a quote: what their survey found, any tank's cautions, those beside the recipe's lines. */
export function clientCautions(lines: readonly Line[], survey?: Survey): readonly SaidCaution[] {
  const beside = new Set(lines.flatMap(({ use, caution }) => (use && !caution ? cautionsBeside(use) : [])));
  return [
    ...(survey ? surveyCautions(survey) : []),
    ...paperActs.quote.cautions.map((id) => sayCaution(id)),
    ...[...beside].filter((id) => cautionEntry(id).onQuote).map((id) => sayCaution(id)),
  ];
}

function frozenWritten(written: WrittenByLine): FrozenWritten[] {
  return [...written].map(([line, box]) => ({ line, ...box }));
}

function frozenColumn(column: SheetColumn, bench: Bench, workshop: Workshop): FrozenColumn {
  const figures: FrozenColumn['figures'] = {};
  for (const line of bench.lines(column.key)) {
    const { value } = bench.box(column.key, line.name);
    if (value !== undefined) figures[line.name] = inUnit(value, line);
  }
  const checks = checksOf(bench, column.key, displayOf(workshop)).map(({ line, badIn, ...check }) => {
    const holds = answerOfState(check.state);
    return { ...check, line: line.name, badIn: [...badIn], ...(holds !== undefined && { holds }) };
  });
  const { size, key, tank, label, count } = column;
  const given = [...(column.given ?? [])].map(([line, each]) => ({ line, ...each }));
  return {
    size,
    key,
    tank,
    label,
    count,
    locals: frozenWritten(column.locals),
    ...(given.length > 0 && { given }),
    figures,
    checks,
  };
}

function inUnit(value: number | string | boolean, line: Line): number | string | boolean {
  return typeof value === 'number' ? cleanNoise(fromBase(value, unitOf(line.unit))) : value;
}

/** A client may still choose any tank and any kit, so their goods are stored with their prices too. */
function frozenGoods(
  records: Records,
  prices: PriceBook,
  lines: readonly Line[],
): Pick<QuoteBody, 'goods' | 'suppliers'> {
  const materials = new Set(lines.map((line) => line.material));
  const goods = [...prices.goods.values()]
    .filter((each) => !each.fault && (materials.has(each.material) || records.tank.has(each.material)))
    .map(frozenOffer);
  const suppliers = [...prices.suppliers.values()].filter(({ id }) => goods.some((each) => each.supplier === id));
  return { goods, suppliers };
}

function frozenOffer(offer: Goods): QuoteBody['goods'][number] {
  const { fault: _, packs, ...goods } = offer;
  return { ...goods, packs: [...packs] };
}

function frozenSums({ people, ...quote }: QuoteSums): QuoteBody['sums'] {
  const named = people && { people: people.map((each) => ({ ...each, hours: cleanNoise(each.hours) })) };
  return { ...quote, lines: [...quote.lines], tax: [...quote.tax], ...named };
}

function frozenNeed(need: MaterialNeed): QuoteBody['needs'][number] {
  const { material, label, group, sale, used, unit, costCoins, packsCoins } = need;
  return { material, label, group, sale, used: cleanNoise(used), unit, costCoins, packsCoins };
}
