import { addDays, daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import { isFlies } from './culture-demands.ts';
import type { CultureKind, Tub } from '#shared-calc/records/records.ts';

/** An existing tub today. */
export interface StandingTub {
  readonly tub: Tub;
  /** Its first harvest. */
  readonly readyOn: Day;
  /** The next day on which it can be harvested, today or later; none for flies that are used up. */
  readonly nextOn: Day | undefined;
  /** `growing`, `ready`, `used up`. */
  readonly is: 'growing' | 'ready' | 'used up';
}

/** The stage of a tub between its start and its harvests. */
export function standingTub(tub: Tub, kind: CultureKind, today: Day): StandingTub {
  const readyOn = addDays(tub.startedOn, kind.firstHarvestDays);
  if (today < readyOn) return { tub, readyOn, nextOn: readyOn, is: 'growing' };
  if (isFlies(kind)) {
    const over = addDays(readyOn, kind.productiveDays ?? 0);
    return { tub, readyOn, nextOn: today <= over ? today : undefined, is: today <= over ? 'ready' : 'used up' };
  }
  const since = daysBetween(readyOn, today);
  const harvests = Math.ceil(since / kind.harvestEveryDays);
  return { tub, readyOn, nextOn: addDays(readyOn, harvests * kind.harvestEveryDays), is: 'ready' };
}

/** Existing tubs that are ready by a day and reserved for no other job. */
export function tubsInTime(
  standing: readonly StandingTub[],
  date: Day,
  jobs: readonly string[],
): readonly StandingTub[] {
  return standing.filter(({ tub, readyOn, is }) => {
    const free = tub.claimedBy === undefined || jobs.includes(tub.claimedBy);
    return free && is !== 'used up' && readyOn <= date;
  });
}
