import type { Day } from '#shared-calc/calendar/day.ts';
import type { Season } from '#shared-calc/calendar/season.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line, Records, Supplier, Tank } from '#shared-calc/records/records.ts';
import { isLeafNeed } from './leaf-lines.ts';
import type { GoodsStep } from './prep-steps.ts';

/** How one supplier delivers: working days from the order, and the weekdays of delivery, none for any open day. */
export interface Delivery {
  readonly leadDays: number;
  readonly weekdays: readonly number[];
  /** In which they are to be had; left out: all year. */
  readonly season?: Season;
}

/** What has happened of some goods: ordered for a day, come in, and out of quarantine. */
export interface GoodsFact {
  readonly due?: Day;
  readonly in?: Day;
  readonly cleared?: Day;
}

/** Goods that come together, and have come as far. */
export interface GoodsPart extends Delivery, GoodsFact {}

export type PlannedGoods = Readonly<Record<GoodsStep, readonly GoodsPart[]>>;

/** What a plan reads of the Store, for the job that it is of. */
export interface PlanStore {
  /** Of a material or a tank, all that is needed of it. */
  readonly factOf: (goods: string) => GoodsFact | undefined;
  /** What there is of a material that comes from stock. */
  readonly gives: (material: string) => number;
}

type GoodsRecords = Pick<Records, 'material' | 'supplier'>;

/** A need line with an amount in a column. */
export interface NeedOfColumn {
  readonly line: Line;
  readonly column: ColumnInput;
  /** Of one build, in the base unit; none where the cell has no figure yet. */
  readonly amount: number | undefined;
}

export function isTankNeed(line: Line): boolean {
  return line.group === 'tank';
}

interface Supplied {
  readonly step: GoodsStep;
  readonly supplier: string | undefined;
  readonly part: GoodsPart;
}

/** The goods of each step, those alike once, from the needs of an order. */
export function plannedGoods(needs: readonly NeedOfColumn[], records: GoodsRecords, store: PlanStore): PlannedGoods {
  const supplied = needs.flatMap((need) => suppliedBy(need, records, store) ?? []);
  const tanks = supplied.filter(({ step, part }) => step === 'tank' && part.in === undefined && part.due === undefined);
  const tankMakers = new Set(tanks.map(({ supplier }) => supplier));
  const of = (step: GoodsStep) => supplied.filter((each) => each.step === step);
  return {
    tank: partsOf(of('tank')),
    plants: partsOf(of('plants')),
    media: partsOf(of('media')),
    panes: partsOf(of('panes')),
    lamps: partsOf(withoutTankMakers(of('lamps'), tankMakers)),
    hardscape: partsOf(withoutTankMakers(of('hardscape'), tankMakers)),
    leaves: partsOf(shortLeaves(needs, records, store)),
  };
}

/**
 * Sealant and whatever else is bought from the maker of a tank that is still to be ordered arrives with it, unless
 * nothing else of the step is bought elsewhere.
 */
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
function suppliedBy({ line, column }: NeedOfColumn, records: GoodsRecords, store: PlanStore): Supplied | undefined {
  const step = stepOfGroup[line.group ?? ''];
  if (!step || isLeafNeed(line)) return undefined;
  if (line.material === 'TANK') return tankOf(step, column.tank, { records, store });
  return suppliedOf(step, line.material ?? '', { records, store });
}

interface Terms {
  readonly records: GoodsRecords;
  readonly store: PlanStore;
}

function suppliedOf(step: GoodsStep, id: string, { records, store }: Terms): Supplied | undefined {
  const material = records.material.get(id);
  if (!material || material.sale === 'own') return undefined;
  const supplier = records.supplier.get(material.supplier ?? '');
  const { season } = material;
  const delivery = { ...deliveryOf(supplier, material.leadDays), ...(season && { season }) };
  return { step, supplier: supplier?.id, part: { ...delivery, ...store.factOf(id) } };
}

function tankOf(step: GoodsStep, tank: Tank, { records, store }: Terms): Supplied {
  const supplier = records.supplier.get(tank.supplier ?? '');
  const part = { ...deliveryOf(supplier, supplier?.tankLeadDays), ...store.factOf(tank.id) };
  return { step, supplier: supplier?.id, part };
}

/** Leaves that the Store is short of, and those that are on their way. */
function shortLeaves(needs: readonly NeedOfColumn[], records: GoodsRecords, store: PlanStore): readonly Supplied[] {
  const asked = new Map<string, number>();
  for (const { line, column, amount } of needs.filter((need) => isLeafNeed(need.line))) {
    const id = line.material ?? '';
    const { unit = line.unit } = records.material.get(id) ?? {};
    const inUnit = amount === undefined ? 0 : fromBase(amount, unitOf(unit)) * (line.perJob ? 1 : column.count);
    asked.set(id, (asked.get(id) ?? 0) + inUnit);
  }
  return [...asked].flatMap(([id, amount]) => {
    const isThere = amount - store.gives(id) <= NOTHING;
    return isThere ? [] : (suppliedOf('leaves', id, { records, store }) ?? []);
  });
}

/** Binary noise. */
const NOTHING = 1e-9;

/** Goods without a supplier arrive at once, on any open day. */
function deliveryOf(supplier: Supplier | undefined, own: number | undefined): Delivery {
  return { leadDays: own ?? supplier?.leadDays ?? 0, weekdays: supplier?.deliveryWeekdays ?? [] };
}

function partsOf(goods: readonly Supplied[]): readonly GoodsPart[] {
  const apart = goods.map(({ part }) => [JSON.stringify(part), part] as const);
  return [...new Map(apart).values()];
}
