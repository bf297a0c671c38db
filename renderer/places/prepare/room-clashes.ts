import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';

/** Tanks of one job, and their time in the workshop: from the day they arrive until the handover. */
export interface StandingTanks {
  readonly job: string;
  readonly tanks: number;
  readonly from: Day;
  /** The last day they are here. */
  readonly to: Day;
}

export interface RoomClash {
  readonly from: Day;
  readonly to: Day;
  /** The most tanks that are here at once in that time. */
  readonly tanks: number;
  readonly jobs: readonly string[];
}

export function standingTanks(
  job: string,
  tanks: number,
  { steps, build, handover }: Pick<PrepPlan, 'steps' | 'build' | 'handover'>,
): StandingTanks {
  const from = steps.find(({ step }) => step === 'tank')?.date ?? build;
  return { job, tanks, from, to: addDays(handover, -1) };
}

/** Stretches of days with more tanks in the workshop than it has room for. */
export function roomClashes(standing: readonly StandingTanks[], places: number): readonly RoomClash[] {
  const clashes: RoomClash[] = [];
  for (const { from, to } of stretches(standing)) {
    const here = standing.filter((each) => each.from <= from && to <= each.to);
    const tanks = here.reduce((sum, each) => sum + each.tanks, 0);
    if (tanks <= places) continue;
    const jobs = here.map(({ job }) => job);
    const before = clashes.at(-1);
    if (before && addDays(before.to, 1) === from) {
      clashes[clashes.length - 1] = {
        from: before.from,
        to,
        tanks: Math.max(before.tanks, tanks),
        jobs: [...new Set([...before.jobs, ...jobs])],
      };
    } else clashes.push({ from, to, tanks, jobs });
  }
  return clashes;
}

/** The days between one arrival or departure and the next: the same tanks are here throughout. */
function stretches(standing: readonly StandingTanks[]): readonly { readonly from: Day; readonly to: Day }[] {
  const edges = [...new Set(standing.flatMap(({ from, to }) => [from, addDays(to, 1)]))].toSorted();
  return edges.slice(0, -1).map((from, at) => ({ from, to: addDays(edges[at + 1] ?? from, -1) }));
}
