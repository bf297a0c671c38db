import { pooledBuilds, type BuildAmount } from '#shared-calc/buy/all-builds.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';

/** The minutes of a work line in one column, for one build. */
export type WorkAmount = BuildAmount;

/** Minutes of a job: every task for all builds of its column; a per-job task once. */
export function minutesOf(work: readonly WorkAmount[]): number {
  return pooledBuilds(work).reduce((sum, each) => sum + each.amount, 0);
}

/** Hours charged: minutes without binary noise, up to the next quarter of an hour; 614.35 min is 10.25 h. */
export function hoursCharged(minutes: number): number {
  return countUp(minutes / 15) / 4;
}
