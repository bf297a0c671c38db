import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import type { HouseAnswer } from '#shared-calc/fields/house-change.ts';
import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { isSoldState, takesChanges } from '#shared-calc/jobs/house-changes.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { lineEdits, type LineEdit } from '#shared-calc/jobs/line-edits.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import { lazy } from '#shared-calc/records/memo.ts';
import type { HouseChange, Job, Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { derive, type Derived } from './derived.ts';
import { jobEffect, type JobEffect } from './job-effect.ts';

/** A change of the house that a sold job may take. */
export interface HouseOffer {
  readonly job: Job;
  readonly change: HouseChange;
  /** What taking it changes in the job. */
  readonly effect: () => Result<JobEffect, OrderFault>;
}

/** The changes that wait for an answer of a job, or of all sold jobs. */
export function houseOffers(derived: Derived, only?: string): readonly HouseOffer[] {
  const { records } = derived;
  return [...records.job.values()].flatMap((job) => {
    if (job.soldAs === undefined || !takesChanges(job) || (only !== undefined && job.id !== only)) return [];
    const offered = derived.job(job.id)?.sold?.offered ?? [];
    return offered.map((change) => ({ job, change, effect: lazy(() => effectOfTaking(derived, job.id, change)) }));
  });
}

/** What taking a change changes in a job that has not taken it. */
export function effectOfTaking(derived: Derived, job: string, change: HouseChange): Result<JobEffect, OrderFault> {
  const { records, today } = derived;
  const taken = withAnswer(change, { job, answer: 'take', on: today, by: '' });
  const before = derived.job(job);
  const after = derive({ ...records, houseChange: putRecords(records.houseChange, [taken]) }, today).job(job);
  if (!before || !after) throw new Error(`no job ${job}`);
  return jobEffect(before, after);
}

/** A change with the answer of a job, in place of one that it gave before. */
export function withAnswer(change: HouseChange, answer: HouseAnswer): HouseChange {
  return { ...change, answers: [...change.answers.filter(({ job }) => job !== answer.job), answer] };
}

/** What a change of the house is for a job of it. */
export type WillBe = 'follow' | 'be offered' | 'nothing';

export interface TouchedJob {
  readonly job: Job;
  readonly will: WillBe;
  /** On a job that follows, or as if a sold one took it; left out where it is nothing to the job. */
  readonly effect?: Result<JobEffect, OrderFault>;
}

type LineChange = Pick<HouseChange, 'before' | 'after'>;

/** The jobs that are not closed and are built by a recipe, or one that inherits from it, and what changes are to them. */
export function jobsTouched(derived: Derived, recipe: string, changes: readonly LineChange[]): readonly TouchedJob[] {
  const { records } = derived;
  const put = changes.flatMap(({ after }) => after ?? []);
  const gone = changes.flatMap(({ before, after }) => (before && !after ? before.id : []));
  return touchedBy(derived, withLines(records, recipe, { put, gone }), [recipe]);
}

/** The jobs that another state of the recipes touches, and what it is to them; all jobs of those named are among them. */
export function touchedBy(derived: Derived, after: Records, named: readonly string[] = []): readonly TouchedJob[] {
  const { records, today } = derived;
  const edits = lineEdits(records, after);
  const recipes = new Set([...named, ...edits.map(({ recipe }) => recipe)]);
  const jobs = [...records.job.values()].filter(
    (job) => job.state !== 'closed' && [...recipesOf(records, job)].some((recipe) => recipes.has(recipe)),
  );
  const then = derive(asIfTaken(after, edits, { jobs, today }), today);
  return jobs.map((job) => {
    const will = willBe(job, derived);
    const [now, next] = [derived.job(job.id), then.job(job.id)];
    return { job, will, ...(will !== 'nothing' && now && next && { effect: jobEffect(now, next) }) };
  });
}

/** A job that is sold without anything frozen follows its house. */
function willBe(job: Job, derived: Derived): WillBe {
  if (derived.job(job.id)?.sold) return takesChanges(job) ? 'be offered' : 'nothing';
  return isSoldState(job.state) && !takesChanges(job) ? 'nothing' : 'follow';
}

interface Taken {
  readonly jobs: readonly Job[];
  readonly today: string;
}

/** A book as if every sold job had taken these edits. */
function asIfTaken(records: Records, edits: readonly LineEdit[], { jobs, today }: Taken): Records {
  const answers = jobs.map(({ id: job }) => ({ job, answer: 'take' as const, on: today, by: '' }));
  const taken = edits.map((edit, at): HouseChange => {
    return { id: `${AS_IF}${at}`, on: today, ...edit, note: '', inForceOn: today, answers };
  });
  return { ...records, houseChange: putRecords(records.houseChange, taken) };
}

/** Behind every id of the log, so that it is taken last. */
const AS_IF = '~as if ';
