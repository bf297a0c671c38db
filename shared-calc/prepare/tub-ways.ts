import type { CultureKind } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { daysToCount } from '#shared-calc/trade/cultures/days-to-count.ts';
import { foundersNeeded } from '#shared-calc/trade/cultures/founders-needed.ts';
import type { Answer } from '#shared-calc/trade/trade-function.ts';

/** A split of a standing tub, or a new line. */
export const tubWays = ['split', 'new'] as const;
export type TubWay = (typeof tubWays)[number];

/** A new line of two sexes: 99 % sure to have both, half of them male, 80 % of them surviving. */
const SURE = 0.99;
export const MALE_SHARE = 0.5;
export const SURVIVE_SHARE = 0.8;

/** Animals to start a tub with; a new line of two sexes is never so small that a sex may be missing. */
export function foundersFor(kind: CultureKind, way: TubWay): Result<number, string> {
  if (way === 'split') return ok(kind.founders);
  if (kind.breeding === 'females only') return ok(kind.foundersNewLine);
  const least = answered(foundersNeeded.compute([SURE, MALE_SHARE, SURVIVE_SHARE]));
  return least.ok ? ok(Math.max(least.value, kind.foundersNewLine)) : least;
}

/** Whole days from a start to the usual first harvest: a new line first grows to what a split starts from. */
export function usualAge(kind: CultureKind, way: TubWay, perDay: number): Result<number, string> {
  const founders = foundersFor(kind, way);
  if (!founders.ok) return founders;
  const grows = answered(daysToCount.compute([founders.value, kind.founders, kind.capacity, perDay]));
  return grows.ok ? ok(countUp(grows.value) + kind.firstHarvestDays) : grows;
}

export function answered(answer: Answer): Result<number, string> {
  return typeof answer === 'number' ? ok(answer) : failed(answer.refused);
}
