import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { noSupplier } from '#shared-calc/buy/no-supplier.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import { shoppingRun, type RunPart, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { packChoices } from '#shared-calc/jobs/pack-choices.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { JobsToBuy } from '#shared-calc/derive/jobs-run.ts';
import { packList } from '#shared-calc/papers/needs-csv.ts';
import { sayRunStock } from '#shared-calc/papers/say-run-stock.ts';
import { runCautions } from '#shared-calc/prepare/order-cautions.ts';
import { isPart, partData, sayEachLack, sayPart } from '#shared-calc/papers/quote-part.ts';
import { runCsv } from '#shared-calc/papers/run-csv.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise, closeDecimals, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { sayNoSupplier } from '#shared-calc/words/say-left-out.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { sayBuyFault } from '#shared-calc/buy/buy-fault.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { noSupplierJson } from '#electron/cli/order-json.ts';
import { offersJson, offersTable } from '#electron/cli/offers-answer.ts';
import { orderMisuse } from '#electron/cli/order-options.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { shownAmount } from '#electron/cli/shown-amount.ts';
import { readStockFile } from '#electron/cli/stock-file.ts';
import { amountsJson } from '#electron/cli/amounts-json.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { today } from '#electron/service/today.ts';
import { withBook } from '#electron/cli/with-book.ts';
import { workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';
import { buyOptions, needJson } from './needs.ts';

/** One shopping run over the sizes of an order; packs are rounded once, over all sizes. */
export const runCommand: Command = {
  name: 'run',
  usage:
    'run --sizes T03,T07 or --jobs J01,J02 [--stock FILE.csv] [--materials M01,M04] [--csv]: one shopping run over all; jobs take from the Store first',
  options: { ...buyOptions, jobs: 'text' },
  misuse: (given) => (given.text('jobs') === undefined ? orderMisuse(given) : jobsMisuse(given)),
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      if (given.text('jobs') !== undefined) return runOfJobs(given, records);
      const worked = workOrder(given, records);
      if (!worked.ok) return refusal(...worked.fault);
      const run = runOver(worked.value);
      if (!run.ok) return refusal(run.fault);
      const { bench, workshop, pricing } = worked.value;
      return answer(run.value, { workshop, prices: pricing.prices, cautions: runCautions([bench], run.value) });
    }),
};

function jobsMisuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Jobs are given as --jobs J01,J02.`;
  const other = ['job', 'sizes', 'recipe', 'kit'].find((name) => given.text(name) !== undefined);
  if (other !== undefined) return `Give --jobs or --${other}, not both.`;
  return given.texts('set').length > 0
    ? 'A job is written over with job set; --set goes with --sizes or --job.'
    : undefined;
}

/** The run of whole jobs. Jobs without a deposit are bought with the rest, and a notice names them. */
function runOfJobs(given: Arguments, records: Records): Outcome {
  const workshop = workshopOf(records);
  const toBuy = readJobsToBuy(given, records);
  if (!toBuy.ok) return refusal(toBuy.fault);
  const { prices, ...derived } = derive(records, toBuy.value.on);
  const jobs = derived.run(toBuy.value);
  if (!jobs.ok) return refusal(sayJobFault(jobs.fault));
  const { run, unpaid, benches } = jobs.value;
  const notices = unpaid.map((job) => `${job} has no deposit yet: order nothing that is cut or grown for it.`);
  return answer(run, {
    workshop,
    prices,
    cautions: runCautions(benches, run),
    notices: [...notices, ...byHand(records, toBuy.value.jobs), ...sayRunStock(run, displayOf(workshop))],
  });
}

/** The run is the cheapest one; choices made by hand on the page are listed as notices. */
function byHand(records: Records, jobs: readonly string[]): readonly string[] {
  const materials = [...packChoices(records, jobs).keys()];
  return materials.length === 0 ? [] : [`Packs of ${materials.join(', ')} were chosen by hand; these are the best.`];
}

function readJobsToBuy(given: Arguments, records: Records): Result<JobsToBuy & { readonly on: Day }, string> {
  const on = readDay(given, 'on');
  if (!on.ok) return on;
  const file = given.text('stock');
  const more = file === undefined ? ok(NO_STOCK) : readStockFile(file, records);
  if (!more.ok) return more;
  const materials = listed(given.text('materials'));
  // Nothing named at all: the store alone, for what is under its least level.
  const jobs = given.text('jobs') === '' ? [] : (listed(given.text('jobs')) ?? []);
  if (jobs.includes('')) return failed('--jobs has an empty place; write the jobs as J01,J02.');
  return ok({ jobs, on: on.value ?? today(), more: more.value, ...(materials && { materials }) });
}

function listed(text: string | undefined): readonly string[] | undefined {
  return text?.split(',').map((each) => each.trim());
}

interface RunTerms {
  readonly workshop: Workshop;
  readonly prices: PriceBook;
  readonly cautions: readonly SaidCaution[];
  readonly notices?: readonly string[];
}

function answer(run: ShoppingRun, { workshop, prices, cautions, notices = [] }: RunTerms): Outcome {
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const display = displayOf(workshop);
  const left = noSupplier(run.materials, prices);
  return {
    is: 'answer',
    json: {
      ...runJson(run, money),
      noSupplier: noSupplierJson(left, money),
      cautions: cautions.map(cautionJson),
    },
    notices: [...notices, ...left.map((each) => sayNoSupplier(each, { workshop, display }))],
    table: () => [runTable(run, money, display), ...underFigures([], cautions, display)].join('\n'),
    csv: () => runCsv(run, workshop),
  };
}

function runOver({ bench, order, pricing }: WorkedOrder): Result<ShoppingRun, string> {
  const parts: RunPart[] = [];
  for (const { key } of order.columns) {
    const needs = needAmounts(bench, [key], pricing.prices);
    if (!needs.ok) return failed(sayOrderFault(needs.fault));
    parts.push({ id: key, job: 'order', needs: needs.value });
  }
  const { prices, stock = NO_STOCK, materials } = pricing;
  const run = shoppingRun(parts, { prices, stock, materials });
  return run.ok ? ok(run.value) : failed(sayBuyFault(run.fault));
}

type Money = (coins: number) => string;

/** A shopping run as `--json` gives it. */
function runJson(run: ShoppingRun, money: Money): Record<string, unknown> {
  return {
    materials: run.materials.map((need) => ({
      ...needJson(need, money),
      kept: amountsJson(need.kept),
      keptOver: amountsJson(need.over),
      coming: cleanNoise(need.coming),
      forStore: cleanNoise(need.forStore),
      aloneCost: need.lacks ? null : money(need.aloneCoins),
      offers: offersJson(need, run, money),
    })),
    suppliers: run.suppliers.map(({ name, goodsCoins, carriageCoins, shortOfMinimumCoins, better }) => ({
      supplier: name,
      goods: money(goodsCoins),
      carriage: money(carriageCoins),
      shortOfMinimum: money(shortOfMinimumCoins),
      better: better
        ? {
            material: better.material,
            label: better.label,
            pack: { size: better.pack.amount, unit: better.pack.unit, each: money(better.pack.priceCoins) },
            landedNow: money(better.landedNowCoins),
            landedThen: money(better.landedThenCoins),
          }
        : null,
    })),
    together: money(run.togetherCoins),
    alone: money(run.aloneCoins),
    landedTogether: money(run.landedTogetherCoins),
    landedAlone: money(run.landedAloneCoins),
    proven: run.proven,
    ...partData(run),
  };
}

function runTable(run: ShoppingRun, money: Money, display: Display): string {
  const amount = (each: number, unit: string) => {
    const { figure } = shownAmount(each, unit, display);
    return writeNumber(figure, closeDecimals(figure, 3));
  };
  const materials = run.materials.map((need) => [
    need.material,
    need.label,
    amount(need.used, need.unit),
    shownUnit(need.unit, display),
    packList(need),
    ...(need.lacks ? ['', '', ''] : [money(need.costCoins), money(need.aloneCoins), amount(need.leftOver, need.unit)]),
  ]);
  const suppliers = run.suppliers.map((bill) => [
    bill.name,
    money(bill.goodsCoins),
    money(bill.carriageCoins),
    bill.shortOfMinimumCoins > 0 ? `${money(bill.shortOfMinimumCoins)} short of the least order` : '',
    bill.better
      ? `one ${bill.better.pack.amount} ${bill.better.pack.unit} ${bill.better.label} more: ${money(bill.better.landedThenCoins)} landed instead of ${money(bill.better.landedNowCoins)}`
      : '',
  ]);
  return [
    textTable(['', 'material', 'needed', '', 'packs', 'together', 'alone', 'left'], materials, [2, 5, 6, 7]),
    '',
    textTable(['supplier', 'goods', 'carriage', '', ''], suppliers, [1, 2]),
    ...offersTable(run, money),
    '',
    sumsWords(run, money, display.currency),
    ...sayEachLack(run),
  ].join('\n');
}

/** Sums that are not whole cannot be compared. */
function sumsWords(run: ShoppingRun, money: Money, currency: string): string {
  const [together, landed] = [money(run.togetherCoins), money(run.landedTogetherCoins)];
  if (isPart(run)) return `together at least ${together}, landed at least ${landed} ${currency}; ${sayPart(run)}`;
  const saved = money(run.landedAloneCoins - run.landedTogetherCoins);
  return `together ${together}, alone ${money(run.aloneCoins)}; landed ${landed} against ${money(run.landedAloneCoins)}, saved ${saved} ${currency}`;
}
