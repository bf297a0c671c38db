import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { culturesToKeep, type CultureDemand, type CulturePlan } from '#shared-calc/trade/cultures/cultures-to-keep.ts';
import { flyStarts } from '#shared-calc/trade/cultures/fly-starts.ts';
import { flyTubs } from '#shared-calc/trade/cultures/fly-tubs.ts';
import { foundersNeeded } from '#shared-calc/trade/cultures/founders-needed.ts';
import type { Answer } from '#shared-calc/trade/trade-function.ts';
import { byDay } from './culture-demands.ts';
import { sayDay } from './say-day.ts';

/** One spare tub for every five, at least one. */
const SPARE_SHARE = 0.2;
/** Share of fly tubs that fail. */
const FLY_LOSS = 0.1;
/** A new line of two sexes: 99 % sure to have both, half of them male, 80 % of them surviving. */
const SURE = 0.99;
const MALES = 0.5;
const LIVING_ON = 0.8;

export interface FlyWish {
  readonly kind: CultureKind;
  readonly aWeek: number;
}

export interface CultureWish {
  readonly kind: CultureKind;
  readonly demands: readonly CultureDemand[];
  readonly flies?: FlyWish;
  /** Today. */
  readonly on: Day;
}

/** A demand whose tub should have been started before today. */
export interface LateCulture {
  readonly date: Day;
  /** The first harvest of a tub started today. */
  readonly readyOn: Day;
}

export interface CultureBoard extends CulturePlan {
  readonly kind: CultureKind;
  /** At most one for each day, by date. */
  readonly demands: readonly CultureDemand[];
  /** Animals to start a tub with. */
  readonly founders: number;
  /** Tubs of flies to set up each week, and tubs on the shelf at once; 0 if no flies are wanted. */
  readonly flyStarts: number;
  readonly flyTubs: number;
  readonly late: readonly LateCulture[];
}

/**
 * Tubs to keep, with spares, for dated builds. Each demand is served from the tub that is ready first, or from one more
 * tub; a demand over one tub's yield takes several. The rest of a harvest is not kept.
 */
export function cultureBoard({ kind, demands, flies, on }: CultureWish): Result<CultureBoard, string> {
  const days = byDay(demands);
  const plan = culturesToKeep(days, {
    yield: kind.yield,
    refillDays: kind.harvestEveryDays,
    matureDays: kind.firstHarvestDays,
    spareShare: SPARE_SHARE,
  });
  if ('refused' in plan) return failed(plan.refused);
  const founders = foundersOf(kind);
  if (!founders.ok) return founders;
  const fly = flyShelf(flies);
  if (!fly.ok) return fly;
  const late = lateCultures(plan, kind, on);
  return ok({ ...plan, kind, demands: days, founders: founders.value, ...fly.value, late });
}

/**
 * A split of an existing tub for a females-only kind; a new line for two sexes, never fewer than the book's own count.
 */
export function foundersOf(kind: CultureKind): Result<number, string> {
  if (kind.breeding === 'females only') return ok(kind.founders);
  const least = answered(foundersNeeded.compute([SURE, MALES, LIVING_ON]));
  return least.ok ? ok(Math.max(least.value, kind.foundersNewLine)) : least;
}

function flyShelf(flies: FlyWish | undefined): Result<Pick<CultureBoard, 'flyStarts' | 'flyTubs'>, string> {
  if (!flies) return ok({ flyStarts: 0, flyTubs: 0 });
  const { kind, aWeek } = flies;
  const starts = answered(flyStarts.compute([aWeek, kind.yield, FLY_LOSS]));
  if (!starts.ok) return starts;
  const tubs = answered(flyTubs.compute([starts.value, kind.firstHarvestDays, kind.productiveDays ?? 0]));
  return tubs.ok ? ok({ flyStarts: starts.value, flyTubs: tubs.value }) : tubs;
}

function answered(answer: Answer): Result<number, string> {
  return typeof answer === 'number' ? ok(answer) : failed(answer.refused);
}

/** Demands whose first harvest needs a tub started before today. */
function lateCultures(plan: CulturePlan, kind: CultureKind, on: Day): readonly LateCulture[] {
  const readyOn = addDays(on, kind.firstHarvestDays);
  const dates = plan.tubStarts.filter((start) => start < on).map((start) => addDays(start, kind.firstHarvestDays));
  return [...new Set(dates)].map((date) => ({ date, readyOn }));
}

/** Demands that no tub started today can serve; only an existing tub is in time. */
export function sayLateCultures({ kind, late }: CultureBoard): readonly string[] {
  return late.map(
    ({ date, readyOn }) =>
      `${kind.label} for ${sayDay(date)}: a tub started today is ready on ${sayDay(readyOn)}; only one that stands already is in time.`,
  );
}
