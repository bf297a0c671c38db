import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { RunMaterial, RunSupplier, ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { nextDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { PlantOrder } from '#shared-calc/jobs/order-plants.ts';
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
  readonly material: string;
  readonly label: string;
  /** Packs, `1 × 45 L`, or the sizes to cut. */
  readonly what: readonly string[];
  readonly cost: string;
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

/** A shopping run as an order to each supplier, plants by name with alternates, panes by their sizes. */
export function supplierOrders(ordered: OrderedRun, records: OrderRecords): readonly SupplierOrder[] {
  const money = (coins: number) => coinsText(coins, workshopOf(records).coinDecimals);
  return ordered.run.suppliers.map((bill) => {
    const needs = ordered.run.materials.filter((need) => need.supplier === bill.supplier && need.costCoins > 0);
    return {
      supplier: bill.supplier,
      name: bill.name,
      rows: needs.map((need) => ({
        material: need.material,
        label: need.label,
        what: [...whatToSend(need, ordered, records)],
        cost: money(need.costCoins),
      })),
      ...sumsOf(bill, money),
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

function* whatToSend(need: RunMaterial, { panes, plants }: OrderedRun, records: OrderRecords): Generator<string> {
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
  const species = plants.find((order) => classMaterials(records, order.class).has(need.material));
  if (species) yield* sayPlants(species);
}

function* sayPlants({ species, alternates, short }: PlantOrder): Generator<string> {
  for (const { plant, count, shade } of species)
    yield `${count} ${plant.name}${shade ? ', to be planted in shade' : ''}`;
  if (short > 0) yield `${short} of a kind still to be chosen`;
  if (alternates.length > 0) yield `or instead: ${alternates.map((plant) => plant.name).join('; ')}`;
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
