import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { byDay, addDays, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { careRounds, type CareDate, type CareFigures, type CareRound } from './care-calendar.ts';
import { careActs, siteActs } from '#shared-calc/cautions/acts.ts';
import { eachOnce, type SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import { cautionsFor } from './act-cautions.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { sizeFigures, type SizeFigures } from './size-figures.ts';

/** Times to drain, refill and top up leaves, if the recipe has them, the drainage at its soonest; a size without a nozzle has no can. */
export function careFigures({ number, least, holds }: Pick<SizeFigures, 'number' | 'least' | 'holds'>): CareFigures {
  const drainDays = least('drainDays', 'd');
  const litterDays = number('litterDays', 'd');
  const litterSoonest = least('litterDays', 'd');
  const refillDays = holds('nozzles') ? number('refillDays', 'd') : undefined;
  return {
    ...(drainDays !== undefined && { drainDays }),
    ...(refillDays !== undefined && { refillDays }),
    ...(litterDays !== undefined && { litterDays }),
    ...(litterSoonest !== undefined && { litterSoonest }),
  };
}

/** The repeated acts for each size of a job. */
export interface SizeCare {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly rounds: readonly CareRound[];
  readonly cautions: readonly SaidCaution[];
}

export function sizeCare(bench: Bench, handover: Day, display: Display): readonly SizeCare[] {
  return bench.input().columns.map(({ key, label, tank }) => {
    const figures = sizeFigures(bench, key, display);
    const rounds = careRounds(handover, careFigures(figures));
    return {
      size: key,
      called: calledOf({ key, label }),
      tank: tank.label,
      rounds,
      cautions: eachOnce(
        [siteActs.visit, ...rounds.map(({ act }) => careActs[act]), siteActs.lampsDue].flatMap((act) =>
          cautionsFor(act, figures),
        ),
      ),
    };
  });
}

/** The soonest of each round over all sizes of a job, for its calendar. */
export function soonestRounds(sizes: readonly Pick<SizeCare, 'rounds'>[]): readonly CareRound[] {
  const rounds = new Map<CareRound['act'], CareRound>();
  for (const round of sizes.flatMap((size) => size.rounds)) {
    const before = rounds.get(round.act);
    if (!before || round.everyDays < before.everyDays) rounds.set(round.act, round);
  }
  return [...rounds.values()];
}

export interface CaredJob {
  readonly job: Pick<Job, 'id' | 'title' | 'area' | 'client'>;
  readonly care: readonly CareDate[];
}

export interface AreaVisit extends CareDate {
  readonly job: string;
  readonly title: string;
}

/** Visits in one area and week, made in one trip; calls need no driving and are listed on their own. */
export interface CareTrip {
  /** The Monday of the week. */
  readonly week: Day;
  readonly visits: readonly AreaVisit[];
  readonly calls: readonly AreaVisit[];
}

export interface AreaCare {
  /** Empty if it is not recorded. */
  readonly area: string;
  readonly trips: readonly CareTrip[];
}

/** Visits of all jobs from a day on, grouped by area and week, both in order. */
export function careByArea(jobs: readonly CaredJob[], from: Day): readonly AreaCare[] {
  const visits = jobs.flatMap(({ job, care }) =>
    care
      .filter(({ date }) => date >= from)
      .map((each) => ({ ...each, job: job.id, title: job.title, area: job.area.trim() })),
  );
  return [...Map.groupBy(visits, ({ area }) => area.toLowerCase()).values()]
    .map((inArea) => ({ area: inArea[0]?.area ?? '', trips: tripsOf(inArea) }))
    .toSorted((one, other) => one.area.localeCompare(other.area, 'en'));
}

function tripsOf(visits: readonly AreaVisit[]): readonly CareTrip[] {
  const inOrder = visits.toSorted(byDay(({ date }) => date));
  return [...Map.groupBy(inOrder, ({ date }) => mondayOf(date))].map(([week, inWeek]) => ({
    week,
    visits: inWeek.filter(({ act }) => act !== 'call').map(plain),
    calls: inWeek.filter(({ act }) => act === 'call').map(plain),
  }));
}

function plain({ act, date, job, title }: AreaVisit): AreaVisit {
  return { act, date, job, title };
}

function mondayOf(day: Day): Day {
  return addDays(day, 1 - weekdayOf(day));
}
