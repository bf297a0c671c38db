import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import type { CultureKind, Line, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { animalsFor } from './culture-demands.ts';
import { isLeafNeed } from './leaf-lines.ts';
import {
  stepOfGroup,
  isTankNeed,
  plannedGoods,
  type NeedOfColumn,
  type PlannedGoods,
  type PlanStore,
} from './planned-goods.ts';
import type { PlanFault } from './plan-fault.ts';
import type { StepsDone } from './prep-steps.ts';
import { tubFact, type TubFact } from './tub-fact.ts';

/** The input of a prep plan. Waits are whole calendar days, leads working days. */
export interface PlanFacts {
  readonly settleIn: number;
  readonly panelCure: number;
  readonly plantQuarantine: number;
  /** From starting a tub to its first harvest; left out if no springtails are needed. */
  readonly springtailDays?: number;
  readonly panel: boolean;
  readonly leaves: boolean;
  /** A tank of the order is supplied by the client. */
  readonly clientTank: boolean;
  readonly goods: PlannedGoods;
  /** When a tank of the client's came. */
  readonly clientTankIn?: Day;
  /** The tub that gives its springtails. */
  readonly tub?: TubFact;
  readonly done?: StepsDone;
}

export interface PlanTerms {
  readonly records: PlanRecords;
  readonly store: PlanStore;
  /** Today. */
  readonly on: Day;
  /** The job that the columns are of. */
  readonly job?: string;
}

type PlanRecords = Pick<Records, 'material' | 'supplier' | 'cultureKind' | 'tub' | 'move'>;

/** The culture for springtail seed, unless another is chosen. */
export const SPRINGTAIL_KIND = 'C1';
const SPRINGTAIL_SEED = 'SP';

/**
 * The input of an order's prep plan: the needs of some columns and their suppliers, and the waits, the longest of the
 * columns. A need whose cell has no figure yet counts as needed.
 */
export function planFacts(
  bench: Bench,
  columns: readonly string[],
  { records, store, on, job }: PlanTerms,
): Result<PlanFacts, PlanFault> {
  const order = { bench, columns: bench.input().columns.filter((column) => columns.includes(column.key)) };
  const needs = neededOf(order);
  const goods = plannedGoods(needs, records, store);
  const panel = order.columns.some((column) => isAboveZero(amountFor(order, column, 'panelArea')));
  const springtails = needs.some(({ line }) => line.material === SPRINGTAIL_SEED);
  const culture = records.cultureKind.get(SPRINGTAIL_KIND);
  if (springtails && !culture) return failed({ kind: 'no-culture', culture: SPRINGTAIL_KIND });
  const planted = new Set(needs.filter(({ line }) => isPlants(line)).map(({ column }) => column));
  const waits = waitsOf(order, {
    panelCure: (column) => isAboveZero(amountFor(order, column, 'panelArea')),
    plantQuarantine: (column) => goods.plants.length > 0 && planted.has(column),
    settleIn: () => true,
  });
  if (!waits.ok) return waits;
  return ok({
    ...waits.value,
    ...(springtails &&
      culture && {
        springtailDays: culture.firstHarvestDays,
        ...tubOf(
          tubFact({ records, on, kind: culture, animals: seedOf(order, culture), ...(job !== undefined && { job }) }),
        ),
      }),
    panel,
    leaves: needs.some(({ line }) => isLeafNeed(line)),
    clientTank: order.columns.some(
      ({ key }) => !needs.some((need) => need.column.key === key && isTankNeed(need.line)),
    ),
    goods,
  });
}

function isPlants({ group = '' }: Line): boolean {
  return stepOfGroup[group] === 'plants';
}

function tubOf(tub: TubFact | undefined): Pick<PlanFacts, 'tub'> {
  return tub ? { tub } : {};
}

function seedOf({ bench, columns }: PlannedOrder, kind: CultureKind): number | undefined {
  const animals = animalsFor(
    bench,
    columns.map(({ key }) => key),
    kind,
  );
  return animals.ok ? animals.value : undefined;
}

interface PlannedOrder {
  readonly bench: Bench;
  readonly columns: readonly ColumnInput[];
}

function neededOf(order: PlannedOrder): readonly NeedOfColumn[] {
  return order.columns.flatMap((column) =>
    order.bench
      .lines(column.key)
      .filter((line) => line.role === 'need')
      .map((line) => ({ line, column, amount: amountIn(order, column, line) }))
      .filter(({ amount }) => isAboveZero(amount)),
  );
}

/** `undefined` if the cell has no figure yet. */
function amountIn({ bench }: PlannedOrder, column: ColumnInput, { name }: Line): number | undefined {
  const { value } = bench.box(column.key, name);
  return typeof value === 'number' ? value : undefined;
}

/** The amount by use; 0 if the recipe has no line for it. */
function amountFor(order: PlannedOrder, column: ColumnInput, use: UseName): number | undefined {
  const line = lineFor(order.bench.lines(column.key), use);
  return line ? amountIn(order, column, line) : 0;
}

function isAboveZero(value: number | undefined): boolean {
  return value === undefined || value > 1e-9;
}

const MOST_DAYS = 36_500;

type Waits = Readonly<Record<'settleIn' | 'panelCure' | 'plantQuarantine', number>>;

/** Whole days, rounded up, the longest of the columns that need the wait; 0 where none does. */
function waitsOf(
  { bench, columns }: PlannedOrder,
  asked: Readonly<Record<keyof Waits, (column: ColumnInput) => boolean>>,
): Result<Waits, PlanFault> {
  const wait = (use: keyof Waits) => waitOf({ bench, columns: columns.filter(asked[use]) }, use);
  const [settleIn, panelCure, plantQuarantine] = [wait('settleIn'), wait('panelCure'), wait('plantQuarantine')];
  if (!settleIn.ok) return settleIn;
  if (!panelCure.ok) return panelCure;
  if (!plantQuarantine.ok) return plantQuarantine;
  return ok({ settleIn: settleIn.value, panelCure: panelCure.value, plantQuarantine: plantQuarantine.value });
}

function waitOf({ bench, columns }: PlannedOrder, use: keyof Waits): Result<number, PlanFault> {
  let longest = 0;
  for (const { key } of columns) {
    const line = lineFor(bench.lines(key), use);
    if (!line) return failed({ kind: 'not-given', use });
    const box = bench.box(key, line.name);
    if (typeof box.value !== 'number') return failed({ kind: 'no-amount-yet', box });
    const days = countUp(fromBase(box.value, unitOf('d')));
    if (days < 0) return failed({ kind: 'below-zero', line: line.name, days });
    if (days > MOST_DAYS) return failed({ kind: 'too-long', line: line.name, days });
    longest = Math.max(longest, days);
  }
  return ok(longest);
}
