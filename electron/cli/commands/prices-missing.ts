import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { knownSums } from '#shared-calc/bench/order-sums.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { allOpenPrices, openPrices, openPricesOf, type OpenPrice } from '#shared-calc/derive/open-prices.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal, type Outcome } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder } from '#electron/cli/work-order.ts';
import { today } from '#electron/service/today.ts';

/** The prices that some sizes, some jobs or the whole workshop wait for, or guess. */
export const missingCommand: Command = {
  name: 'prices missing',
  usage:
    'prices missing [--job J01 | --jobs J01,J02 | --sizes T03,T07x2] [--on DATE]: the prices that they, or the whole workshop, wait for or guess',
  options: { ...orderOptions, ...bookOption, jobs: 'text' },
  misuse: (given) => (isOrder(given) ? orderMisuse(given) : workshopMisuse(given)),
  run: (given) =>
    withBook(given, (book) => {
      const found = isOrder(given) ? ofOrder(given, book.records()) : ofJobs(given, book.records());
      return found.ok ? answer(...found.value) : refusal(...found.fault);
    }),
};

function isOrder(given: Arguments): boolean {
  return given.text('sizes') !== undefined || given.text('job') !== undefined;
}

function workshopMisuse(given: Arguments): string | undefined {
  const [word] = given.words;
  if (word !== undefined) return `What is ${word} for? Jobs are given as --jobs J01,J02.`;
  const other = ['recipe', 'kit'].find((name) => given.text(name) !== undefined);
  return other === undefined ? undefined : `--${other} goes with --sizes or --job.`;
}

type Found = Result<readonly [readonly OpenPrice[], Derived], readonly string[]>;

function ofOrder(given: Arguments, records: Records): Found {
  const worked = workOrder(given, records);
  if (!worked.ok) return worked;
  const { bench, order, pricing, derived } = worked.value;
  const keys = order.columns.map(({ key }) => key);
  const known = knownSums(bench, keys, pricing);
  if (!known.ok) return failed([sayOrderFault(known.fault)]);
  const job = order.jobId === undefined ? {} : { job: order.jobId };
  return ok([openPrices(derived, [{ ...job, needs: known.value.needs.needs }]), derived]);
}

function ofJobs(given: Arguments, records: Records): Found {
  const on = readDay(given, 'on');
  if (!on.ok) return failed([on.fault]);
  const derived = derive(records, on.value ?? today());
  const asked = given.text('jobs');
  if (asked === undefined) return ok([allOpenPrices(derived), derived]);
  const jobs: string[] = [];
  for (const id of asked.split(',').map((each) => each.trim())) {
    const job = findJob(records, id);
    if (!job.ok) return failed([sayJobFault(job.fault)]);
    jobs.push(job.value.id);
  }
  return ok([openPricesOf(derived, jobs), derived]);
}

function answer(prices: readonly OpenPrice[], { workshop, display, records }: Derived): Outcome {
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const supplierOf = ({ supplier }: OpenPrice) => records.supplier.get(supplier ?? '')?.name ?? supplier ?? '';
  return {
    is: 'answer',
    json: { missing: prices.map((each) => priceJson(each, money)) },
    table: () => {
      if (prices.length === 0) return 'No price is missing, and none is a guess.';
      const rows = prices.map((each) => {
        const { material, label, used, unit, pack, price, stakeCoins, jobs } = each;
        return [
          material,
          label,
          used > 0 ? goodsWords(used, unit, display) : '',
          pack ? goodsWords(pack.amount, unit, display) : 'no pack yet',
          supplierOf(each),
          price ? money(price.priceCoins) : '',
          price?.guess ? 'a guess' : price === undefined ? '' : writeDay(price.from, display.dateOrder),
          stakeCoins === undefined ? '' : money(stakeCoins),
          jobs.join(', '),
        ];
      });
      const { currency } = workshop;
      const head = ['', 'material', 'needed', 'pack', 'supplier', `price, ${currency}`, 'from', 'at stake', 'jobs'];
      return textTable(head, rows, [2, 5, 7]);
    },
  };
}

function priceJson(each: OpenPrice, money: (coins: number) => string): Record<string, unknown> {
  const { material, label, used, unit, pack, price, supplier, stakeCoins, jobs } = each;
  return {
    what: 'price',
    of: material,
    label,
    used: cleanNoise(used),
    unit,
    pack: pack ? { amount: cleanNoise(pack.amount), unit } : null,
    supplier: supplier ?? null,
    price: price ? money(price.priceCoins) : null,
    from: price?.from ?? null,
    guess: price?.guess ?? false,
    atStake: stakeCoins === undefined ? null : money(stakeCoins),
    jobs,
  };
}
