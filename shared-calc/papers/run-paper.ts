import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { runCautions } from '#shared-calc/prepare/order-cautions.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok } from '#shared-calc/result.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { cautionsBlock, heading, paragraph, type PaperBlock } from './document.ts';
import { goodsAmount } from './goods-said.ts';
import { packList } from './needs-csv.ts';
import { isPart, partData, sayPart } from './quote-part.ts';
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
              .filter(({ supplier, lacks }) => supplier === bill.supplier && !lacks)
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
        ...lackBlocks(run, display),
        paragraph(sumsWords(run, money, workshop.currency)),
        cautionsBlock(runCautions([input.bench], run)),
      ],
    },
    csv: runCsv(run, workshop),
  });
};

/** Sums that are not whole cannot be compared. */
function sumsWords(run: ShoppingRun, money: (coins: number) => string, currency: string): string {
  const together = money(run.landedTogetherCoins);
  if (isPart(run)) return `Landed together at least ${together} ${currency}; ${sayPart(run)}.`;
  const guessed = run.guesses.length > 0 ? ` ${sayPart(run)}.` : '';
  return `Landed together ${together}, alone ${money(run.landedAloneCoins)} ${currency}.${guessed}`;
}

/** What is to be bought and has no price: it is on no order and in no sum. */
function lackBlocks(run: ShoppingRun, display: Display): readonly PaperBlock[] {
  const rows = run.materials
    .filter(({ lacks }) => lacks)
    .map((need) => [
      need.label,
      goodsAmount(need.used, need.unit, display),
      goodsAmount(need.toBuy, need.unit, display),
    ]);
  if (rows.length === 0) return [];
  return [
    heading('No price yet, in no sum'),
    { is: 'table', head: ['material', 'needed', 'to buy'], rows, right: [1, 2] },
  ];
}

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
          packs: need.lacks ? null : need.packs.map(({ amount, count }) => ({ size: amount, count })),
          cost: need.lacks ? null : money(need.costCoins),
          leftOver: need.lacks ? null : need.leftOver,
        })),
    })),
    together: money(run.togetherCoins),
    alone: money(run.aloneCoins),
    landedTogether: money(run.landedTogetherCoins),
    landedAlone: money(run.landedAloneCoins),
    ...partData(run),
  };
}
