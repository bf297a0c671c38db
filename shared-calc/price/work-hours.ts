import { pooledBuilds, type BuildAmount } from '#shared-calc/buy/all-builds.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { BUILDER } from './hour-coins.ts';

/** The minutes of a work line in one column, for one build. */
export interface WorkAmount extends BuildAmount {
  /** The rate that they are paid at; the builder's if left out. */
  readonly who?: string;
}

export interface WorkMinutes {
  readonly minutes: number;
  /** Those of them that are paid at another rate than the builder's, by rate. */
  readonly paidAt: ReadonlyMap<string, number>;
}

/** Minutes of a job: every task for all builds of its column; a per-job task once. */
export function minutesOf(work: readonly WorkAmount[]): WorkMinutes {
  let minutes = 0;
  const paidAt = new Map<string, number>();
  for (const { amount, who = BUILDER } of pooledBuilds(work)) {
    minutes += amount;
    if (who !== BUILDER && amount !== 0) paidAt.set(who, (paidAt.get(who) ?? 0) + amount);
  }
  return { minutes, paidAt };
}

/** Hours charged: minutes without binary noise, up to the next quarter of an hour; 614.35 min is 10.25 h. */
export function hoursCharged(minutes: number): number {
  return countUp(minutes / 15) / 4;
}
