import { classPriceOf } from '#shared-calc/buy/class-price.ts';
import { goodsCoins, lastDue, type OrderLine } from '#shared-calc/buy/order-standing.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { Order, Records, Workshop } from '#shared-calc/records/records.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { saidPacks } from './goods-said.ts';
import type { OrderDay } from './order-days.ts';

/** An order to one supplier as it is printed. Money is a decimal text. */
export interface SupplierOrder {
  /** Empty while it is not placed. */
  readonly order: string;
  readonly supplier: string;
  readonly name: string;
  readonly on: Day;
  /** `J01, J02`; empty for the store. */
  readonly jobs: string;
  readonly rows: readonly OrderRow[];
  readonly goods: string;
  readonly carriage: string;
  readonly landed: string;
  /** By how much the order is below the supplier's minimum; empty if it is not. */
  readonly shortOfMinimum: string;
  /** What its plants come to at the price of their class, as quoted; empty without plants by name. */
  readonly plantsByClass: string;
  /** The day on which the last of it is due. */
  readonly arrivesOn: Day;
  /** The last day to send it while it is not placed, and for whose handover; none if no job sets a day. */
  readonly orderBy?: OrderDay;
  readonly note: string;
}

export interface OrderRow {
  readonly material: string;
  readonly label: string;
  /** Packs, `1 × 45 L`, or the pieces to cut. */
  readonly what: string;
  readonly cost: string;
  /** Of a plant: what a quote counts for it, the price of its class. */
  readonly classCost?: string;
}

/** An order of the book, or one that is not placed yet. */
export type PrintedOrder = Pick<Order, 'supplier' | 'on' | 'lines' | 'carriageCoins' | 'note'> & {
  readonly id?: string;
};

type OrderRecords = RecipeTables & Pick<Records, 'workshop' | 'supplier' | 'plant' | 'pack' | 'packPrice'>;

/** An order as it was placed: nothing of it is worked anew. */
export function supplierOrder(order: PrintedOrder, records: OrderRecords, orderBy?: OrderDay): SupplierOrder {
  const workshop = workshopOf(records);
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  const { id = '', supplier, on, lines, carriageCoins, note } = order;
  const goods = goodsCoins(lines);
  const { name = supplier, minimumCoins = 0 } = records.supplier.get(supplier) ?? {};
  const byClass = classPriceOf(records, order);
  return {
    order: id,
    supplier,
    name,
    on,
    jobs: jobsOf(lines).join(', '),
    rows: sameGoods(lines).map(([line, coins]) => {
      const ofClass = classPriceOf(records, { lines: [line], on });
      return {
        material: line.of,
        label: line.label,
        what: sayLine(line, workshop),
        cost: money(coins),
        ...(ofClass !== undefined && { classCost: money(ofClass) }),
      };
    }),
    goods: money(goods),
    carriage: money(carriageCoins),
    landed: money(goods + carriageCoins),
    shortOfMinimum: minimumCoins > goods ? money(minimumCoins - goods) : '',
    plantsByClass: byClass === undefined ? '' : money(byClass),
    arrivesOn: lastDue(lines),
    ...(orderBy && { orderBy }),
    note,
  };
}

/** Lines with their coins; pieces that differ by a coin of rounding alone are one line. */
function sameGoods(lines: readonly OrderLine[]): readonly (readonly [line: OrderLine, coins: number])[] {
  const keyOf = ({ n, of, cut, for: parts }: OrderLine) =>
    cut ? JSON.stringify([of, cut, parts.map(({ job }) => job)]) : String(n);
  return [...Map.groupBy(lines, keyOf).values()].flatMap((same) => {
    const [first] = same;
    if (!first) return [];
    const count = same.reduce((sum, line) => sum + line.count, 0);
    return [[{ ...first, count }, goodsCoins(same)] as const];
  });
}

/** The jobs that an order is for, in order of their codes. */
export function jobsOf(lines: readonly Pick<OrderLine, 'for'>[]): readonly string[] {
  return [...new Set(lines.flatMap((line) => line.for.map(({ job }) => job)))].toSorted();
}

/** `2 × 45 L`, or `1 of 597 × 418 mm, 4 mm glass (J02)`. */
export function sayLine(
  { count, amount, unit, cut, for: jobs }: OrderLine,
  workshop: Pick<Workshop, 'decimalComma'>,
): string {
  if (!cut) return saidPacks(count, { amount, unit }, workshop);
  const whose = jobs.length === 0 ? '' : ` (${jobs.map(({ job }) => job).join(', ')})`;
  return `${count} of ${cut.lengthMm} × ${cut.depthMm} mm, ${cut.glassMm} mm glass${whose}`;
}
