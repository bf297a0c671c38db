import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { runCautions } from '#shared-calc/prepare/order-cautions.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';
import { cautionsBlock, heading, paragraph, type PaperBlock } from './document.ts';
import { goodsAmount } from './goods-said.ts';
import { packList } from './needs-csv.ts';
import { displayFor, titleOf, type MakePaper } from './paper-input.ts';
import { runCsv } from './run-csv.ts';
import { runOf } from './run-of.ts';

/** Everything to buy for an order, by supplier, compared with buying each size alone. */
export const runPaper: MakePaper = (input) => {
  const worked = runOf(input);
  if (!worked.ok) return worked;
  const run = worked.value;
  const workshop = workshopOf(input.records);
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const display = displayFor(input);
  const [together, alone] = [run.landedTogetherCoins, run.landedAloneCoins].map(money);
  return ok({
    data: runData(run, money),
    document: {
      title: `Shopping run, ${titleOf(input)}`,
      blocks: [
        ...run.suppliers.flatMap((bill): readonly PaperBlock[] => [
          heading(bill.name),
          {
            is: 'table',
            head: ['material', 'needed', 'to buy', 'cost', 'left over'],
            rows: run.materials
              .filter(({ supplier }) => supplier === bill.supplier)
              .map((need) => [
                need.label,
                goodsAmount(need.used, need.unit, display),
                packList(need),
                money(need.costCoins),
                goodsAmount(need.leftOver, need.unit, display),
              ]),
            right: [1, 3, 4],
          },
          paragraph(`Goods ${money(bill.goodsCoins)}, carriage ${money(bill.carriageCoins)} ${workshop.currency}.`),
        ]),
        paragraph(`Landed together ${together}, alone ${alone} ${workshop.currency}.`),
        cautionsBlock(runCautions([input.bench], run)),
      ],
    },
    csv: runCsv(run, workshop),
  });
};

function runData(run: ShoppingRun, money: (coins: number) => string): Record<string, unknown> {
  return {
    suppliers: run.suppliers.map(({ supplier, name, goodsCoins, carriageCoins }) => ({
      supplier,
      name,
      goods: money(goodsCoins),
      carriage: money(carriageCoins),
      materials: run.materials
        .filter((need) => need.supplier === supplier)
        .map((need) => ({
          material: need.material,
          label: need.label,
          used: need.used,
          unit: need.unit,
          packs: need.packs.map(({ amount, count }) => ({ size: amount, count })),
          cost: money(need.costCoins),
          leftOver: need.leftOver,
        })),
    })),
    together: money(run.togetherCoins),
    alone: money(run.aloneCoins),
    landedTogether: money(run.landedTogetherCoins),
    landedAlone: money(run.landedAloneCoins),
  };
}
