import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { isLeafNeed } from '#shared-calc/prepare/leaf-lines.ts';
import { planFacts, type PlanFacts, type PlanTerms } from '#shared-calc/prepare/plan-facts.ts';
import { stepOfGroup, type PlannedGoods, type PlanStore } from '#shared-calc/prepare/planned-goods.ts';
import { prepPlan, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { GoodsStep } from '#shared-calc/prepare/prep-steps.ts';
import { lazy } from '#shared-calc/records/memo.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** The bench of an order, with its wanted days. */
export interface UsedOrder {
  readonly bench: Bench;
  readonly keys: readonly string[];
  readonly on: Day;
  readonly calendar: WorkCalendar;
  readonly handover?: Day | undefined;
  readonly deposit?: Day | undefined;
}

type UseRecords = PlanTerms['records'];
type Goods = GoodsStep | 'others';

/** Nothing has come yet, and leaves are there. */
const unread: PlanStore = { factOf: () => undefined, gives: () => Infinity };

/**
 * The day on which an order uses each material: the panes' day, the gluing for wood and cork, the build for plants. It is
 * the wanted one; where goods of that kind ordered today would come too late for it, the day that they would make. It
 * reads no stock, because what can be used of that rests on it. Without a plan it is the day asked.
 */
export function useDays(order: UsedOrder, records: UseRecords): (material: string) => Day {
  const facts = lazy(() => planFacts(order.bench, order.keys, { records, store: unread, on: order.on }));
  const days = new Map<Goods, Day>();
  const dayOf = (goods: Goods): Day => {
    const worked = facts();
    const day = days.get(goods) ?? (worked.ok ? dayWith(worked.value, goods, order) : order.on);
    days.set(goods, day);
    return day;
  };
  const goods = lazy(() => goodsByMaterial(order.bench));
  return (material) => {
    const [first = order.on, ...others] = [...(goods().get(material) ?? ['others'])].map(dayOf);
    return others.reduce((soonest, day) => (day < soonest ? day : soonest), first);
  };
}

/** The goods that the need lines of a bench ask for, by material and tank. */
function goodsByMaterial(bench: Bench): ReadonlyMap<string, ReadonlySet<Goods>> {
  const goods = new Map<string, Set<Goods>>();
  const put = (material: string, of: Goods) => goods.set(material, (goods.get(material) ?? new Set()).add(of));
  for (const { key, tank } of bench.input().columns) {
    for (const line of bench.lines(key).filter(({ role }) => role === 'need')) {
      if (line.material !== undefined) put(line.material === 'TANK' ? tank.id : line.material, goodsOf(line));
    }
  }
  return goods;
}

function goodsOf(line: Line): Goods {
  return isLeafNeed(line) ? 'leaves' : (stepOfGroup[line.group ?? ''] ?? 'others');
}

const none: PlannedGoods = { tank: [], plants: [], media: [], panes: [], lamps: [], hardscape: [], leaves: [] };

/** By the plan of an order that has nothing but these goods to wait for. */
function dayWith(facts: PlanFacts, goods: Goods, order: UsedOrder): Day {
  const { on, deposit = on, calendar, handover } = order;
  const start = deposit > on ? deposit : on;
  const { springtailDays: _, tub: _tub, ...rest } = facts;
  const alone: PlanFacts = {
    ...rest,
    leaves: goods === 'leaves',
    clientTank: false,
    goods: goods === 'others' ? none : { ...none, [goods]: facts.goods[goods] },
  };
  const plan = prepPlan(alone, { on: start, calendar, ...(handover !== undefined && { handover }) });
  const day = plan.ok ? dayIn(plan.value, goods, { facts, calendar }) : wantedBuild(facts, order);
  return day > on ? day : on;
}

function wantedBuild({ settleIn }: PlanFacts, { on, handover, calendar }: UsedOrder): Day {
  return handover === undefined ? on : previousOpen(addDays(handover, -settleIn), calendar);
}

interface DayTerms {
  readonly facts: PlanFacts;
  readonly calendar: WorkCalendar;
}

function dayIn({ build, steps }: PrepPlan, goods: Goods, { facts, calendar }: DayTerms): Day {
  if (goods === 'hardscape') return facts.panel ? previousOpen(addDays(build, -facts.panelCure), calendar) : build;
  if (goods === 'plants') return build;
  return steps.find(({ step }) => step === goods)?.date ?? build;
}
