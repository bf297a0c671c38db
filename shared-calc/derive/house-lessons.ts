import type { Job } from '#shared-calc/records/records.ts';
import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { sheetInput } from '#shared-calc/jobs/worked-job.ts';
import { lessonEffect, type LessonEffect } from '#shared-calc/prepare/lesson-effect.ts';
import { LAST_JOBS, teachHouse, type Lesson } from '#shared-calc/prepare/teach-house.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Derived } from './derived.ts';
import { PLANTS_LOST, plannedOfJob, type Planned } from './job-took.ts';

export interface HouseLesson extends Lesson {
  readonly label: string;
  /** On the reference size; left out if nothing is proposed, or if it cannot be worked out. */
  readonly effect?: LessonEffect;
}

interface Taught {
  readonly recipe: string;
  /** The tank that the effect is shown for. */
  readonly reference: string;
}

/**
 * What the last jobs of one recipe show about its lines, for what a job took is not told apart by recipe; with the effect on a reference size. Does not change the house.
 */
export function houseLessons(derived: Derived, { recipe, reference }: Taught): readonly HouseLesson[] {
  const { records, prices, rules } = derived;
  const lines = derived.lines(recipe);
  const plans = plannedBy(derived);
  const isOfOne = (job: Job) => [...recipesOf(records, job)].every((each) => each === recipe);
  const jobs = new Set([...records.job.values()].filter(isOfOne).map(({ id }) => id));
  const lessons = teachHouse({
    lines,
    actuals: [...records.actual.values()].filter(({ job }) => jobs.has(job)),
    plannedOf: ({ job, line, size }) => (size === undefined ? plans(job)?.get(line) : undefined),
  });
  const pricing = { prices, rules, basis: 'used', oneOffs: [] } as const;
  const tank = records.tank.get(reference);
  const columns = tank ? [{ size: '', key: tank.id, tank, label: '', count: 1, locals: new Map() }] : [];
  const bench = onceBench(sheetInput({ columns, whole: new Map() }, lines, prices));
  return lessons.map((lesson): HouseLesson => {
    const line = lines.find(({ name }) => name === lesson.line);
    const effect =
      lesson.proposed === undefined || !tank ? undefined : lessonEffect(bench, tank.id, { lesson, pricing });
    return { ...lesson, label: line ? lineLabel(line) : lesson.line, ...(effect?.ok && { effect: effect.value }) };
  });
}

function plannedBy(derived: Derived): (job: string) => Planned | undefined {
  const plans = new Map<string, Planned | undefined>();
  return (id) => {
    if (!plans.has(id)) {
      const job = derived.job(id);
      plans.set(id, job && plannedOfJob(job));
    }
    return plans.get(id);
  };
}

/** What the last jobs show about plants that fail. */
export interface PlantLesson {
  readonly jobs: readonly { readonly job: string; readonly share: number }[];
  readonly median: number;
  /** Left out: not given yet. */
  readonly old?: number | undefined;
  /** Left out until five jobs are measured, or if it would change nothing. */
  readonly proposed?: number;
}

/** The median share of plants lost in the last five jobs, with the house's own share. */
export function plantLesson(derived: Derived): PlantLesson | undefined {
  const { records, workshop } = derived;
  const plans = plannedBy(derived);
  const jobs = [...records.actual.values()]
    .filter(({ line }) => line === PLANTS_LOST)
    .toSorted((one, other) => (one.on > other.on ? -1 : Number(one.on < other.on)))
    .flatMap(({ job, value }) => {
      const plants = plans(job)?.get('plants') ?? 0;
      const builds = [...records.size.values()]
        .filter((size) => size.job === job)
        .reduce((sum, { count }) => sum + count, 0);
      return plants > 0 && builds > 0 ? [{ job, share: value / (plants * builds) }] : [];
    })
    .slice(0, LAST_JOBS);
  const shares = jobs.map(({ share }) => share).toSorted((one, other) => one - other);
  const middle = shares[Math.floor((shares.length - 1) / 2)];
  if (middle === undefined) return undefined;
  const median = Math.min(
    1,
    Math.round(((middle + (shares[Math.ceil((shares.length - 1) / 2)] ?? middle)) / 2) * 1000) / 1000,
  );
  const old = workshop.plantLossShare;
  return { jobs, median, old, ...(jobs.length === LAST_JOBS && median !== old && { proposed: median }) };
}
