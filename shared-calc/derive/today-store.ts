import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { isInSeason, nextInSeason, type Season } from '#shared-calc/calendar/season.ts';
import { nextOpen } from '#shared-calc/calendar/work-calendar.ts';
import { goodsInLedger, NOTHING, stock } from '#shared-calc/buy/ledger.ts';
import { underLeast } from '#shared-calc/buy/least-levels.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { sayDay, saySeasonDays } from '#shared-calc/prepare/say-day.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import type { Job, Material, Records } from '#shared-calc/records/records.ts';
import { capital } from '#shared-calc/rule/capital.ts';
import type { Derived } from './derived.ts';
import { isUnderWay } from './planned-jobs.ts';
import { builder, type TodayDraft } from './today-item.ts';

/** Days before the best-before day from which goods are named. */
const SOON_DAYS = 14;

/** What the Store itself asks for today: levels, goods near their day, prices that are too old to buy at. */
export function storeItems(derived: Derived): readonly TodayDraft[] {
  return [...leastItems(derived), ...bestBeforeItems(derived), ...oldPriceItems(derived)];
}

function ofToday(today: Day): Pick<TodayDraft, 'day' | 'anyDay' | 'who' | 'tick'> {
  return { day: today, anyDay: true, who: builder, tick: { is: 'go' } };
}

function leastItems({ records, today, display }: Derived): readonly TodayDraft[] {
  return underLeast(records, today).map(({ material: { id, label, unit, least = 0 }, free, buy }) => ({
    ...ofToday(today),
    key: `${id} least`,
    what: `buy ${amountText(buy, unit, display)} of ${label}`,
    why: `${amountText(free, unit, display)} free, under the least of ${amountText(least, unit, display)}`,
  }));
}

function bestBeforeItems({ records, today, display }: Derived): readonly TodayDraft[] {
  return goodsInLedger(records).flatMap((of) => {
    const material = records.material.get(of);
    if (!material) return [];
    return stock(records, of, { asked: today }).lots.flatMap(({ lot, amount }): readonly TodayDraft[] => {
      const { bestBefore } = lot.came;
      if (bestBefore === undefined || amount < NOTHING || bestBefore > addDays(today, SOON_DAYS)) return [];
      const isPast = bestBefore < today;
      return [
        {
          ...ofToday(today),
          key: `${lot.id} best before`,
          what: `${isPast ? 'throw out or count' : 'use'} ${amountText(amount, material.unit, display)} of ${material.label}`,
          why: `Best before ${sayDay(bestBefore, display)}`,
        },
      ];
    });
  });
}

/** Materials whose price is too old, while a paid job that is not bought for yet needs them. */
function oldPriceItems(derived: Derived): readonly TodayDraft[] {
  const { records, prices, today } = derived;
  return [...openNeeds(derived, (state) => isBefore(state, 'ordered')).keys()].flatMap((id): readonly TodayDraft[] => {
    const material = records.material.get(id);
    if (!material || !(prices.goods.get(id)?.packs ?? []).some(({ old }) => old)) return [];
    return [
      {
        ...ofToday(today),
        key: `${id} price`,
        what: `ask the price of ${material.label}`,
        why: 'Its price is too old, and a job needs it',
      },
    ];
  });
}

interface OpenNeed {
  readonly amount: number;
  /** The first deposit of the jobs that need it. */
  readonly since: Day;
}

/** What paid jobs in these states need, by material, in its unit. */
function openNeeds(derived: Derived, passes: (state: Job['state']) => boolean): ReadonlyMap<string, OpenNeed> {
  const needs = new Map<string, OpenNeed>();
  for (const job of derived.records.job.values())
    if (isUnderWay(job) && passes(job.state)) addNeeds(needs, job, derived);
  return needs;
}

function addNeeds(needs: Map<string, OpenNeed>, { id, depositOn }: Job, { job, today }: Derived): void {
  const uses = job(id)?.uses();
  const on = depositOn ?? today;
  for (const [material, amount] of uses?.ok ? uses.value : []) {
    const { amount: before, since } = needs.get(material) ?? { amount: 0, since: on };
    needs.set(material, { amount: before + amount, since: since < on ? since : on });
  }
}

/** Goods of a season: on its first open day, what jobs and the least level ask for over what there is. */
export function seasonItems(derived: Derived): readonly TodayDraft[] {
  const seasonal = [...derived.records.material.values()].filter(({ season }) => season !== undefined);
  if (seasonal.length === 0) return [];
  const needs = openNeeds(derived, (state) => isBefore(state, 'built'));
  const none: OpenNeed = { amount: 0, since: derived.today };
  return seasonal.flatMap((material) => seasonItem(material, needs.get(material.id) ?? none, derived) ?? []);
}

function seasonItem(
  { id, label, unit, season, least = 0, upTo = least }: Material,
  { amount, since }: OpenNeed,
  { records, today, calendar, display }: Derived,
): TodayDraft | undefined {
  if (!season) return undefined;
  const opens = seasonStart(season, today);
  const { onHand, onOrder } = stock(records, id, { asked: today });
  const there = onHand + onOrder;
  const buy = Math.max(amount, upTo) - there;
  if (buy < NOTHING || isOrderedSince(opens, id, records)) return undefined;
  return {
    key: `${id} season ${opens}`,
    // A level is short from the first day on, a job from its deposit.
    day: nextOpen(upTo > there || since < opens ? opens : since, calendar),
    what: `buy the year's ${label}: ${amountText(buy, unit, display)}`,
    who: builder,
    why: capital(saySeasonDays(season, display)),
    tick: { is: 'go' },
  };
}

/** The first day of the season that is on, or of the next one. */
function seasonStart(season: Season, today: Day): Day {
  if (!isInSeason(today, season)) return nextInSeason(today, season);
  const thisYear = `${today.slice(0, 4)}-${season.from}`;
  return thisYear <= today ? thisYear : `${Number(today.slice(0, 4)) - 1}-${season.from}`;
}

function isOrderedSince(day: Day, material: string, { order }: Pick<Records, 'order'>): boolean {
  return [...order.values()].some(({ on, lines }) => on >= day && lines.some(({ of }) => of === material));
}

function amountText(amount: number, unit: string, display: Display): string {
  const decimals = amount >= 100 || Number.isInteger(amount) ? 0 : 2;
  return `${writeNumber(amount, decimals, display)} ${unit}`;
}
