import { classPriceOf, ownPriceOf } from '#shared-calc/buy/class-price.ts';
import type { LineStanding, OrderStanding } from '#shared-calc/buy/order-standing.ts';
import type { NoSupplier } from '#shared-calc/buy/no-supplier.ts';
import { jobsOf } from '#shared-calc/papers/supplier-orders.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Records } from '#shared-calc/records/records.ts';

type Money = (coins: number) => string;

/** An order as `--json` gives it: with its state, and what came of each line. */
export function orderJson(standing: OrderStanding, records: Records, money: Money): Record<string, unknown> {
  const { order, state, lines, goodsCoins, paidCoins, openCoins, due, lateDays } = standing;
  const byClass = classPriceOf(records, order);
  return {
    order: order.id,
    supplier: order.supplier,
    name: records.supplier.get(order.supplier)?.name ?? order.supplier,
    on: order.on,
    state,
    jobs: jobsOf(order.lines),
    lines: lines.map((line) => lineJson(line, money)),
    goods: money(goodsCoins),
    carriage: money(order.carriageCoins),
    landed: money(goodsCoins + order.carriageCoins),
    paid: money(paidCoins),
    toCome: money(openCoins),
    due,
    late: lateDays,
    closedOn: order.closedOn ?? null,
    note: order.note,
    ...(byClass !== undefined && {
      classPrice: money(byClass),
      over: money(ownPriceOf(records, order) - byClass),
    }),
  };
}

function lineJson({ line, came, open, paidCoins, cameOn }: LineStanding, money: Money): Record<string, unknown> {
  const { n, of, label, amount, unit, count, askedCoins, due, cut, for: jobs } = line;
  return {
    n,
    of,
    label,
    amount: cleanNoise(amount),
    unit,
    count,
    asked: money(askedCoins),
    due,
    ...(cut && { cut }),
    for: jobs.map(({ job, amount: part }) => ({ job, amount: cleanNoise(part) })),
    in: cleanNoise(came),
    open: cleanNoise(open),
    paid: money(paidCoins),
    cameOn: cameOn ?? null,
  };
}

export function noSupplierJson(left: readonly NoSupplier[], money: Money): readonly Record<string, unknown>[] {
  return left.map(({ material, label, unit, buy, coins }) => ({
    material,
    label,
    buy: cleanNoise(buy),
    unit,
    coins: money(coins),
  }));
}

export function moneyOf(coinDecimals: number): Money {
  return (coins) => coinsText(coins, coinDecimals);
}
