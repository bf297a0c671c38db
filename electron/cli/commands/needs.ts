import { orderNeeds } from '#shared-calc/bench/order-sums.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import { needsCsv, packList } from '#shared-calc/papers/needs-csv.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise, closeDecimals, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { atLeast, partData, sayEachLack } from '#shared-calc/papers/quote-part.ts';
import { needsCautions } from '#shared-calc/prepare/order-cautions.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { shownAmount } from '#electron/cli/shown-amount.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder } from '#electron/cli/work-order.ts';

export const buyOptions = {
  ...orderOptions,
  ...bookOption,
  basis: 'text',
  stock: 'text',
  materials: 'text',
  csv: 'flag',
  bom: 'flag',
} as const;

/** The needs list of an order, all its sizes together. */
export const needsCommand: Command = {
  name: 'needs',
  usage:
    'needs --sizes T03,T07x2 [--basis used|packs] [--stock FILE.csv] [--materials M01,M04] [--csv]: the needs list',
  options: buyOptions,
  misuse: orderMisuse,
  run: (given) =>
    withBook(given, (book) => {
      const worked = workOrder(given, book.records());
      if (!worked.ok) return refusal(...worked.fault);
      const { bench, order, pricing, workshop } = worked.value;
      const needs = orderNeeds(
        bench,
        order.columns.map((column) => column.key),
        pricing,
      );
      if (!needs.ok) return refusal(sayOrderFault(needs.fault));
      const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
      const sum = (coins: number) => atLeast(money(coins), needs.value);
      const { totalCoins, packsTotalCoins, landedCoins } = needs.value;
      return {
        is: 'answer',
        json: {
          needs: needs.value.needs.map((need) => needJson(need, money)),
          total: money(totalCoins),
          packsTotal: money(packsTotalCoins),
          landed: money(landedCoins),
          ...partData(needs.value),
          cautions: needsCautions(bench, pricing.materials).map(cautionJson),
        },
        table: () =>
          [
            needsTable(needs.value.needs, money, displayOf(workshop)),
            '',
            `used cost ${sum(totalCoins)}, packs cost ${sum(packsTotalCoins)}, landed ${sum(landedCoins)} ${workshop.currency}`,
            ...sayEachLack(needs.value),
            ...underFigures([], needsCautions(bench, pricing.materials), displayOf(workshop)),
          ].join('\n'),
        csv: () => needsCsv(needs.value, workshop),
      };
    }),
};

type Money = (coins: number) => string;

/** A need as `--json` gives it. */
export function needJson(need: MaterialNeed, money: Money): Record<string, unknown> {
  return {
    material: need.material,
    label: need.label,
    group: need.group,
    used: cleanNoise(need.used),
    unit: need.unit,
    onHand: cleanNoise(need.onHand),
    ...(need.lacks ? { packs: null, cost: null, packsCost: null, leftOver: null } : boughtJson(need, money)),
  };
}

function boughtJson(need: MaterialNeed, money: Money): Record<string, unknown> {
  return {
    packs: need.packs.map((pack) => ({
      size: pack.amount,
      unit: need.unit,
      count: pack.count,
      each: money(pack.priceCoins),
    })),
    cost: money(need.costCoins),
    packsCost: money(need.packsCoins),
    leftOver: cleanNoise(need.leftOver),
  };
}

function needsTable(needs: readonly MaterialNeed[], money: Money, display: Display): string {
  const rows = needs.map((need) => {
    const { figure, unit } = shownAmount(need.used, need.unit, display);
    const used = writeNumber(figure, Number.isInteger(figure) ? 0 : closeDecimals(figure, 3));
    const costs = need.lacks ? ['', ''] : [money(need.costCoins), money(need.packsCoins)];
    return [need.material, need.label, used, unit, packList(need), ...costs];
  });
  return textTable(['', 'material', 'used', '', 'packs', 'used cost', 'packs cost'], rows, [2, 5, 6]);
}
