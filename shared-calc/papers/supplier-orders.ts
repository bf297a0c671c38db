import { billOf } from '#shared-calc/buy/carriage.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { RunMaterial, RunSupplier, ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { nextDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { plantLines, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { plantNeedUses } from '#shared-calc/fields/plant.ts';
import type { PaneCut } from '#shared-calc/jobs/pane-cuts.ts';
import type { Material, Plant, Records, Supplier, Tank } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { saidAmount, saidPacks } from './goods-said.ts';
import { orderBy, type OrderDay, type PlannedJob } from './order-days.ts';

/** One supplier's part of a shopping run, ready to send. Money is a decimal text. */
export interface SupplierOrder {
  readonly supplier: string;
  readonly name: string;
  readonly rows: readonly OrderRow[];
  readonly goods: string;
  readonly carriage: string;
  readonly landed: string;
  /** By how much the order is below the supplier's minimum; empty if it is not. */
  readonly shortOfMinimum: string;
  /** The day it is all in, if ordered on the day of the order; none if the supplier never comes on an open day. */
  readonly arrivesOn: Day | undefined;
  /** The last day to send it, and for whose handover; none if no job sets a day. */
  readonly orderBy: OrderDay | undefined;
}

export interface OrderRow {
  /** The code of a material, a tank or, at its own price, a plant. */
  readonly material: string;
  readonly label: string;
  /** Packs, `1 × 45 L`, or the sizes to cut. */
  readonly what: readonly string[];
  readonly cost: string;
  /** Of a plant: what a quote counts for it, the price of its class. */
  readonly classCost?: string;
}

export interface OrderedRun {
  readonly run: ShoppingRun;
  readonly on: Day;
  readonly calendar: WorkCalendar;
  /** With their job: `J01 T07`. */
  readonly panes: readonly PaneCut[];
  /** By the class of their need line. */
  readonly plants: readonly PlantOrder[];
  /** Jobs with a wanted handover; other jobs set no day. */
  readonly planned: readonly PlannedJob[];
}

type OrderRecords = Pick<Records, 'workshop' | 'supplier' | 'material' | 'tank' | 'line'>;

/** A shopping run as an order to each supplier, plants by name at their own prices, panes by their sizes. */
export function supplierOrders(ordered: OrderedRun, records: OrderRecords): readonly SupplierOrder[] {
  const money = (coins: number) => coinsText(coins, workshopOf(records).coinDecimals);
  return ordered.run.suppliers.map((bill) => {
    const needs = ordered.run.materials.filter((need) => need.supplier === bill.supplier && need.costCoins > 0);
    const rows = needs.flatMap((need) => rowsOf(need, ordered, records));
    const goodsCoins = rows.reduce((sum, { coins }) => sum + coins, 0);
    const terms = records.supplier.get(bill.supplier);
    return {
      supplier: bill.supplier,
      name: bill.name,
      rows: rows.map(({ coins, classCoins, ...row }) => ({
        ...row,
        cost: money(coins),
        ...(classCoins !== undefined && { classCost: money(classCoins) }),
      })),
      ...sumsOf(terms ? { ...bill, ...billOf(terms, goodsCoins) } : bill, money),
      arrivesOn: arrival(needs, bill, ordered, records),
      orderBy: orderBy(needs, ordered.planned),
    };
  });
}

function sumsOf(bill: RunSupplier, money: (coins: number) => string) {
  return {
    goods: money(bill.goodsCoins),
    carriage: money(bill.carriageCoins),
    landed: money(bill.goodsCoins + bill.carriageCoins),
    shortOfMinimum: bill.shortOfMinimumCoins > 0 ? money(bill.shortOfMinimumCoins) : '',
  };
}

type CoinRow = Omit<OrderRow, 'cost' | 'classCost'> & { readonly coins: number; readonly classCoins?: number };

function rowsOf(need: RunMaterial, ordered: OrderedRun, records: OrderRecords): readonly CoinRow[] {
  const species = ordered.plants.find((order) => classMaterials(records, order.class).has(need.material));
  if (species && need.sale === 'packs') return plantRows(need, species, records);
  const { material, label, costCoins: coins } = need;
  return [{ material, label, what: [...whatToSend(need, ordered, records)], coins }];
}

/** A row for each species; what no species fits stays a row of its class, at the price of the class. */
function plantRows(need: RunMaterial, order: PlantOrder, records: OrderRecords): readonly CoinRow[] {
  const workshop = workshopOf(records);
  const count = need.packs.reduce((sum, pack) => sum + pack.count * pack.amount, 0);
  const classEachCoins = count > 0 ? need.costCoins / count : 0;
  const lines = plantLines(order, { count, classEachCoins });
  const rows = lines.map(({ plant, count: of, shade, coins, classCoins }) => ({
    material: plant.id,
    label: plant.name,
    what: [`${saidAmount(of, 'each', workshop)}${shade ? ', to be planted in shade' : ''}`],
    coins,
    classCoins,
  }));
  const short = count - lines.reduce((sum, line) => sum + line.count, 0);
  const { material, label } = need;
  const open = { material, label, what: [`${short} of a kind still to be chosen`], coins: short * classEachCoins };
  const all: readonly CoinRow[] = short > 0 ? [...rows, open] : rows;
  const others = order.alternates.map((plant) => plant.name).join('; ');
  if (others === '') return all;
  return all.map((row, at) => (at === all.length - 1 ? { ...row, what: [...row.what, `or instead: ${others}`] } : row));
}

function* whatToSend(need: RunMaterial, { panes }: OrderedRun, records: OrderRecords): Generator<string> {
  if (need.sale === 'cut') {
    yield saidAmount(need.used, need.unit, workshopOf(records));
    if (need.unit !== 'm2') return;
    for (const { column, pieces, lengthMm, depthMm, glassMm } of panes) {
      yield `${pieces} of ${lengthMm} × ${depthMm} mm, ${glassMm} mm glass (${column})`;
    }
    return;
  }
  const { unit } = need;
  for (const { count, amount } of need.packs) yield saidPacks(count, { amount, unit }, workshopOf(records));
}

/** The materials that represent a class of plants at its class price. */
function classMaterials({ line }: OrderRecords, of: Plant['class']): ReadonlySet<string | undefined> {
  const lines = [...line.values()].filter((each) => each.use === plantNeedUses[of]);
  return new Set(lines.map((each) => each.material));
}

function arrival(
  needs: readonly RunMaterial[],
  { supplier: id }: RunSupplier,
  { on, calendar }: OrderedRun,
  records: OrderRecords,
): Day | undefined {
  const supplier = records.supplier.get(id);
  if (!supplier) return undefined;
  const leads = needs.map((need) =>
    leadOf(records.material.get(need.material), records.tank.get(need.material), supplier),
  );
  return nextDeliveryDay(shiftWorkdays(on, Math.max(0, ...leads), calendar), supplier.deliveryWeekdays ?? [], calendar);
}

function leadOf(material: Material | undefined, tank: Tank | undefined, supplier: Supplier): number {
  return material?.leadDays ?? (tank ? supplier.tankLeadDays : undefined) ?? supplier.leadDays;
}
