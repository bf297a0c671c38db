import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { isLeafNeed } from './leaf-lines.ts';
import { isTankNeed, plannedGoods, type NeedOfColumn, type PlannedGoods } from './planned-goods.ts';
import type { PlanFault } from './plan-fault.ts';

/** What a prep plan is worked from. Waits are whole calendar days, leads working days. */
export interface PlanFacts {
  readonly settleIn: number;
  readonly panelCure: number;
  readonly plantQuarantine: number;
  /** From starting a tub to its first harvest; left out where no springtails are needed. */
  readonly springtailDays?: number;
  readonly panel: boolean;
  readonly leaves: boolean;
  /** A tank of the order comes from the client. */
  readonly clientTank: boolean;
  readonly goods: PlannedGoods;
}

type PlanRecords = Pick<Records, 'material' | 'supplier' | 'cultureKind'>;

/** The culture that springtail seed is grown from unless another is chosen. */
export const SPRINGTAIL_KIND = 'C1';
const SPRINGTAIL_SEED = 'SP';

/**
 * What an order's prep plan is worked from: the needs of some columns and their suppliers, and the waits, the
 * longest of the columns. A need whose box has no figure yet counts as needed.
 */
export function planFacts(
  bench: Bench,
  columns: readonly string[],
  records: PlanRecords,
): Result<PlanFacts, PlanFault> {
  const order = { bench, columns: bench.input().columns.filter((column) => columns.includes(column.key)) };
  const needs = neededOf(order);
  const goods = plannedGoods(needs, records);
  const panel = order.columns.some((column) => isAboveZero(valueIn(order, column, 'panel_area')));
  const springtails = needs.some(({ line }) => line.material === SPRINGTAIL_SEED);
  const culture = records.cultureKind.get(SPRINGTAIL_KIND);
  if (springtails && !culture) return failed({ kind: 'no-culture', culture: SPRINGTAIL_KIND });
  const waits = waitsOf(order, { panel_cure: panel, plant_quarantine: goods.plants.length > 0, settle_in: true });
  if (!waits.ok) return waits;
  return ok({
    settleIn: waits.value.settle_in,
    panelCure: waits.value.panel_cure,
    plantQuarantine: waits.value.plant_quarantine,
    ...(springtails && culture && { springtailDays: culture.firstHarvestDays }),
    panel,
    leaves: needs.some(({ line }) => isLeafNeed(line)),
    clientTank: order.columns.some(
      ({ key }) => !needs.some((need) => need.column.key === key && isTankNeed(need.line)),
    ),
    goods,
  });
}

interface PlannedOrder {
  readonly bench: Bench;
  readonly columns: readonly ColumnInput[];
}

function neededOf(order: PlannedOrder): readonly NeedOfColumn[] {
  const lines = order.bench.input().lines.filter((line) => line.role === 'need');
  return order.columns.flatMap((column) =>
    lines.filter((line) => isAboveZero(valueIn(order, column, line.name))).map((line) => ({ line, column })),
  );
}

/** `undefined` where the box has no figure yet. */
function valueIn({ bench }: PlannedOrder, column: ColumnInput, name: string): number | undefined {
  if (!bench.input().lines.some((line) => line.name === name)) return 0;
  const { value } = bench.box(column.key, name);
  return typeof value === 'number' ? value : undefined;
}

function isAboveZero(value: number | undefined): boolean {
  return value === undefined || value > 1e-9;
}

const MOST_DAYS = 36_500;

type Waits = Readonly<Record<'settle_in' | 'panel_cure' | 'plant_quarantine', number>>;

/** Whole days, rounded up, the longest of the columns; 0 for what the order does not ask for. */
function waitsOf(order: PlannedOrder, asked: Readonly<Record<keyof Waits, boolean>>): Result<Waits, PlanFault> {
  const days = { settle_in: 0, panel_cure: 0, plant_quarantine: 0 };
  for (const name of ['settle_in', 'panel_cure', 'plant_quarantine'] as const) {
    if (!asked[name]) continue;
    for (const column of order.columns) {
      const value = valueIn(order, column, name);
      if (value === undefined) return failed({ kind: 'no-amount-yet', box: order.bench.box(column.key, name) });
      const count = countUp(fromBase(value, unitOf('d')));
      if (count < 0) return failed({ kind: 'below-zero', line: name, days: count });
      if (count > MOST_DAYS) return failed({ kind: 'too-long', line: name, days: count });
      days[name] = Math.max(days[name], count);
    }
  }
  return ok(days);
}
