import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line, Records, Supplier, Tank } from '#shared-calc/records/records.ts';
import { isLeafNeed } from './leaf-lines.ts';
import type { GoodsStep } from './prep-steps.ts';

/** How one supplier delivers: working days from the order, and the weekdays of delivery, none for any open day. */
export interface Delivery {
  readonly leadDays: number;
  readonly weekdays: readonly number[];
}

export type PlannedGoods = Readonly<Record<GoodsStep, readonly Delivery[]>>;
type GoodsRecords = Pick<Records, 'material' | 'supplier'>;

/** A need line with an amount in a column. */
export interface NeedOfColumn {
  readonly line: Line;
  readonly column: ColumnInput;
}

export function isTankNeed(line: Line): boolean {
  return line.group === 'tank';
}

interface Supplied {
  readonly step: GoodsStep;
  readonly supplier: string | undefined;
  readonly delivery: Delivery;
}

/** The deliveries of each step, each distinct one once, from the needs of an order. */
export function plannedGoods(needs: readonly NeedOfColumn[], records: GoodsRecords): PlannedGoods {
  const supplied = needs.flatMap((need) => suppliedBy(need, records) ?? []);
  const tankMakers = new Set(supplied.filter(({ step }) => step === 'tank').map(({ supplier }) => supplier));
  const of = (step: GoodsStep) => supplied.filter((each) => each.step === step);
  return {
    tank: deliveriesOf(of('tank')),
    plants: deliveriesOf(of('plants')),
    media: deliveriesOf(of('media')),
    panes: deliveriesOf(of('panes')),
    lamps: deliveriesOf(withoutTankMakers(of('lamps'), tankMakers)),
    hardscape: deliveriesOf(of('hardscape')),
  };
}

/** Materials bought from the tank's supplier arrive with the tank, unless nothing else of the step is bought elsewhere. */
function withoutTankMakers(goods: readonly Supplied[], makers: ReadonlySet<string | undefined>): readonly Supplied[] {
  const others = goods.filter(({ supplier }) => !makers.has(supplier));
  return others.length > 0 ? others : goods;
}

/** The step of a prep plan by which a quote group's goods are in. */
export const stepOfGroup: Readonly<Record<string, GoodsStep>> = {
  tank: 'tank',
  media: 'media',
  hardscape: 'hardscape',
  cover: 'panes',
  lamps: 'lamps',
  mist: 'lamps',
  plants: 'plants',
};

/** Leaves come from the year's stock, and own goods from the back room: neither is ordered for the job. */
function suppliedBy({ line, column }: NeedOfColumn, records: GoodsRecords): Supplied | undefined {
  const step = stepOfGroup[line.group ?? ''];
  if (!step || isLeafNeed(line)) return undefined;
  if (line.material === 'TANK') return tankOf(step, column.tank, records);
  const material = records.material.get(line.material ?? '');
  if (!material || material.sale === 'own') return undefined;
  const supplier = records.supplier.get(material.supplier ?? '');
  return { step, supplier: supplier?.id, delivery: deliveryOf(supplier, material.leadDays) };
}

function tankOf(step: GoodsStep, tank: Tank, records: GoodsRecords): Supplied {
  const supplier = records.supplier.get(tank.supplier ?? '');
  return { step, supplier: supplier?.id, delivery: deliveryOf(supplier, supplier?.tankLeadDays) };
}

/** Goods without a supplier arrive at once, on any open day. */
function deliveryOf(supplier: Supplier | undefined, own: number | undefined): Delivery {
  return { leadDays: own ?? supplier?.leadDays ?? 0, weekdays: supplier?.deliveryWeekdays ?? [] };
}

function deliveriesOf(goods: readonly Supplied[]): readonly Delivery[] {
  const apart = goods.map(({ delivery }) => [`${delivery.leadDays} ${delivery.weekdays.join()}`, delivery] as const);
  return [...new Map(apart).values()];
}
