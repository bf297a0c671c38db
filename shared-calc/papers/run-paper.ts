import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { boughtIn, shoppingRun, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { paneCuts } from '#shared-calc/jobs/pane-cuts.ts';
import { datedJob } from './dated-job.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { eachOnce } from '#shared-calc/cautions/all-cautions.ts';
import { needsCautions, runCautions } from '#shared-calc/prepare/order-cautions.ts';
import {
  cautionsBlock,
  heading,
  paragraph,
  sheet as sheetBlock,
  type PaperBlock,
  type PaperDocument,
} from './document.ts';
import { goodsAmount } from './goods-said.ts';
import { packList } from './needs-csv.ts';
import { ordersCsv } from './order-csv.ts';
import type { PlannedJob } from './order-days.ts';
import { displayFor, titleOf, type MakePaper, type PaperFault, type PaperInput } from './paper-input.ts';
import { paperDay, paperMoney, paperWeekday } from './paper-words.ts';
import { runCsv } from './run-csv.ts';
import { supplierOrders, type SupplierOrder } from './supplier-orders.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { plantsOf } from './needs-paper.ts';

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

/** The order to each supplier, ready to send. */
export const orderPaper: MakePaper = (input) => {
  const run = runOf(input);
  if (!run.ok) return run;
  const { records, bench, sheet, wish } = input;
  const panes = paneCuts(bench).map((cut) => ({ ...cut, column: `${sheet.job?.id ?? ''} ${cut.column}`.trim() }));
  const ordered = {
    run: run.value,
    on: wish.on,
    calendar: wish.calendar,
    panes,
    plants: plantsOf(input),
    planned: plannedOf(input),
  };
  const orders = supplierOrders(ordered, records);
  const workshop = workshopOf(records);
  const display = displayFor(input);
  return ok({
    data: orders,
    document: {
      title: `Orders, ${titleOf(input)}`,
      blocks: [
        ...orders.flatMap((order) => {
          const { title, blocks } = orderDocument(order, { on: wish.on, jobs: sheet.job?.id ?? '', display });
          return [{ is: 'sheet', text: title } as const, ...blocks];
        }),
        ...comingIn([bench], boughtIn(run.value)),
      ],
    },
    csv: ordersCsv(orders, workshop),
  });
};

/** A sheet that stays here: what to mind when what is ordered comes in. */
export function comingIn(benches: readonly Bench[], goods: readonly string[]): readonly PaperBlock[] {
  const cautions = eachOnce(benches.flatMap((bench) => needsCautions(bench, goods)));
  return cautions.length === 0 ? [] : [sheetBlock('For us: when these goods come in'), cautionsBlock(cautions)];
}

export interface OrderTerms {
  readonly on: string;
  /** `J01, J02`; empty for an order of sizes. */
  readonly jobs: string;
  readonly display: Display;
}

/** An order to one supplier, ready to send. */
export function orderDocument(order: SupplierOrder, { on, jobs, display }: OrderTerms): PaperDocument {
  const day = (date: string | undefined) => (date === undefined ? '' : paperWeekday(date));
  const money = (text: string) => (text === '' ? '' : paperMoney(text, display));
  const main = `Landed, ${display.currency}`;
  return {
    title: `Order to ${order.name}`,
    blocks: [
      {
        is: 'facts',
        rows: [
          ['Date', paperDay(on)],
          ['For our jobs', jobs],
          ['Expected', day(order.arrivesOn)],
          ['Order by', day(order.orderBy?.day)],
        ],
      },
      {
        is: 'table',
        head: ['material', 'please send', `cost, ${display.currency}`],
        rows: order.rows.flatMap(({ label, what, cost }) =>
          (what.length > 0 ? what : ['']).map((send, at) => (at === 0 ? [label, send, money(cost)] : ['', send, ''])),
        ),
        right: [2],
      },
      {
        is: 'facts',
        look: 'sums',
        main,
        rows: [
          ['Goods', money(order.goods)],
          ['Carriage', money(order.carriage)],
          [main, money(order.landed)],
          ['Short of your least order', money(order.shortOfMinimum)],
        ],
      },
    ],
  };
}

/** A job uses the Store first; an order of sizes is bought in full, compared with buying each size alone. */
function runOf({ derived, sheet, bench, pricing }: PaperInput): Result<ShoppingRun, PaperFault> {
  if (sheet.job) {
    const run = derived.run({ jobs: [sheet.job.id] });
    return run.ok ? ok(run.value.run) : failed({ kind: 'job', fault: run.fault });
  }
  const parts = [];
  for (const key of keysOf(sheet)) {
    const needs = needAmounts(bench, [key], pricing.prices);
    if (!needs.ok) return failed({ kind: 'order', fault: needs.fault });
    parts.push({ id: key, job: 'order', needs: needs.value });
  }
  const run = shoppingRun(parts, { prices: pricing.prices, stock: new Map(), materials: undefined });
  return run.ok ? run : failed({ kind: 'order', fault: run.fault });
}

/** Only a wanted handover sets a day. */
function plannedOf(input: PaperInput): readonly PlannedJob[] {
  if (input.wish.handover === undefined) return [];
  const dated = datedJob(input);
  return dated.ok ? [{ job: input.sheet.job?.id ?? '', plan: dated.value.plan }] : [];
}
