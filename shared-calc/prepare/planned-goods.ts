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
  /** Of a material or a tank, all that is needed of it, in its unit. */
  readonly factOf: (goods: string, amount: number) => GoodsFact | undefined;
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
  const asked = askedOf(needs, records);
  const terms: Terms = { records, factOf: (id) => factOf(store, id, asked.get(id)) };
  const supplied = needs.flatMap((need) => suppliedBy(need, terms) ?? []);
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
    leaves: partsOf(shortLeaves(needs, { ...terms, asked, store })),
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

interface Terms {
  readonly records: GoodsRecords;
  readonly factOf: (goods: string) => GoodsFact | undefined;
}

/** All that is needed of each of the goods, in its unit; of what is for the whole job the most of its columns. */
type Asked = ReadonlyMap<string, number | undefined>;

function askedOf(needs: readonly NeedOfColumn[], { material }: GoodsRecords): Asked {
  const asked = new Map<string, number | undefined>();
  for (const [line, same] of Map.groupBy(needs, (need) => need.line)) {
    for (const [id, ofGoods] of Map.groupBy(same, goodsOf)) {
      const unit = unitOf(material.get(id)?.unit ?? line.unit);
      const amounts = ofGoods.map(
        ({ column, amount }) => fromBase(amount ?? NaN, unit) * (line.perJob ? 1 : column.count),
      );
      const sum = line.perJob ? Math.max(...amounts) : amounts.reduce((all, each) => all + each, 0);
      asked.set(id, (asked.get(id) ?? 0) + sum);
    }
  }
  return asked;
}

function goodsOf({ line, column }: NeedOfColumn): string {
  return line.material === 'TANK' ? column.tank.id : (line.material ?? '');
}

/** What is not known yet is still to be ordered. */
function factOf(store: PlanStore, id: string, amount = NaN): GoodsFact | undefined {
  return Number.isNaN(amount) ? undefined : store.factOf(id, amount);
}

/** Leaves come from the year's stock, and own goods from the back room: neither is ordered for the job. */
function suppliedBy({ line, column }: NeedOfColumn, terms: Terms): Supplied | undefined {
  const step = stepOfGroup[line.group ?? ''];
  if (!step || isLeafNeed(line)) return undefined;
  return line.material === 'TANK' ? tankOf(step, column.tank, terms) : suppliedOf(step, line.material ?? '', terms);
}

function suppliedOf(step: GoodsStep, id: string, { records, factOf: of }: Terms): Supplied | undefined {
  const material = records.material.get(id);
  if (!material || material.sale === 'own') return undefined;
  const supplier = records.supplier.get(material.supplier ?? '');
  const { season } = material;
  const delivery = { ...deliveryOf(supplier, material.leadDays), ...(season && { season }) };
  return { step, supplier: supplier?.id, part: { ...delivery, ...of(id) } };
}

function tankOf(step: GoodsStep, tank: Tank, { records, factOf: of }: Terms): Supplied {
  const supplier = records.supplier.get(tank.supplier ?? '');
  const part = { ...deliveryOf(supplier, supplier?.tankLeadDays), ...of(tank.id) };
  return { step, supplier: supplier?.id, part };
}

/** Leaves that the Store is short of, and those that are on their way. */
function shortLeaves(
  needs: readonly NeedOfColumn[],
  { asked, store, ...terms }: Terms & { readonly asked: Asked; readonly store: PlanStore },
): readonly Supplied[] {
  const leaves = new Set(needs.filter(({ line }) => isLeafNeed(line)).map(goodsOf));
  return [...leaves].flatMap((id) => {
    const isShort = (asked.get(id) ?? 0) - store.gives(id) > NOTHING;
    return isShort ? (suppliedOf('leaves', id, terms) ?? []) : [];
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
