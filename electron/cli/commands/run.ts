import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { coinsText } from '#shared-calc/buy/coins.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import { shoppingRun, type RunPart, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { packList } from '#shared-calc/papers/needs-csv.ts';
import { runCsv } from '#shared-calc/papers/run-csv.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { sayBuyFault } from '#shared-calc/buy/buy-fault.ts';
import type { Command } from '#electron/cli/command.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { withBook } from '#electron/cli/with-book.ts';
import { workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';
import { buyOptions, needJson } from './needs.ts';

/** One shopping run over the sizes of an order, packs rounded once over all. */
export const runCommand: Command = {
  name: 'run',
  usage: 'run --sizes T03,T07 [--stock FILE.csv] [--materials M01,M04] [--csv]: one shopping run over all',
  options: buyOptions,
  run: (given) =>
    withBook(given, { whenMissing: 'make' }, (book) => {
      const worked = workOrder(given, book.records());
      if (!worked.ok) return refusal(...worked.fault);
      const run = runOver(worked.value);
      if (!run.ok) return refusal(run.fault);
      const { workshop } = worked.value;
      const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
      return {
        is: 'answer',
        json: runJson(run.value, money),
        table: () => runTable(run.value, money, workshop.currency),
        csv: () => runCsv(run.value, workshop),
      };
    }),
};

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
export function runJson(run: ShoppingRun, money: Money): Record<string, unknown> {
  return {
    materials: run.materials.map((need) => ({ ...needJson(need, money), aloneCost: money(need.aloneCoins) })),
    suppliers: run.suppliers.map(({ supplier, name, goodsCoins, carriageCoins, shortOfMinimumCoins, better }) => ({
      supplier,
      name,
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
  };
}

function runTable(run: ShoppingRun, money: Money, currency: string): string {
  const materials = run.materials.map((need) => [
    need.material,
    need.label,
    writeNumber(need.used, 3),
    need.unit,
    packList(need),
    money(need.costCoins),
    money(need.aloneCoins),
    writeNumber(need.leftOver, 3),
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
  const saved = money(run.landedAloneCoins - run.landedTogetherCoins);
  return [
    textTable(['', 'material', 'needed', '', 'packs', 'together', 'alone', 'left'], materials, [2, 5, 6, 7]),
    '',
    textTable(['supplier', 'goods', 'carriage', '', ''], suppliers, [1, 2]),
    '',
    `together ${money(run.togetherCoins)}, alone ${money(run.aloneCoins)}; landed ${money(run.landedTogetherCoins)} against ${money(run.landedAloneCoins)}, saved ${saved} ${currency}`,
  ].join('\n');
}
