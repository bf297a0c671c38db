import { allBuilds, type BuildAmount } from '#shared-calc/buy/all-builds.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';

/** What a work line gives in one column: minutes for one build. */
export type WorkAmount = BuildAmount;

/** Minutes of a job: every task for all builds of its column, what is marked per job once. */
export function minutesOf(work: readonly WorkAmount[]): number {
  return allBuilds(work).reduce((sum, each) => sum + each.amount, 0);
}

/** Hours charged: minutes up to the next quarter of an hour, after noise; 614.35 min is 10.25 h. */
export function hoursCharged(minutes: number): number {
  return countUp(minutes / 15) / 4;
}
