import { cautionInUnits } from '#shared-calc/cautions/caution-in-units.ts';
import { saveText } from '#renderer/store/save-text.ts';
import { fileName } from '#renderer/print/file-name.ts';
import { calendarFile, type CalendarEntry } from '#shared-calc/papers/calendar-file.ts';
import { soonestRounds } from '#shared-calc/prepare/size-care.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import { planEntries } from '#shared-calc/papers/plan-calendar.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import { isHandedOver, isUnderWay, plannedJobs } from '#shared-calc/derive/planned-jobs.ts';
import type { PartView } from './part-view.ts';

/** The open job's dates as a calendar file. */
export function saveJobPlan({ state, context, job }: Pick<PartView, 'state' | 'context' | 'job'>): void {
  if (!job) return;
  const worked = context.job(job.id);
  const plan = worked?.plan();
  if (!worked || !plan) return;
  if (plan.ok) save({ state, context }, `${job.id} ${job.title}`.trim(), entriesOf(plan.value, context.workshop.name));
  else state.api.refuse(sayNoPlan(worked, plan.fault));
}

/** The dates of all jobs that are under way or with a client. */
export function saveAllPlans({ state, context }: Pick<PartView, 'state' | 'context'>): void {
  const passes = (job: JobPlan['job']) => isUnderWay(job) || isHandedOver(job);
  const { planned } = plannedJobs(context, passes);
  const entries = planned.flatMap((plan) => entriesOf(plan, context.workshop.name));
  if (planned.length > 0) save({ state, context }, 'All jobs', entries);
  else state.api.refuse('No job is under way or handed over: there is no date to save.');
}

function entriesOf({ job, plan, care, lamps }: JobPlan, place: string): readonly CalendarEntry[] {
  const dated = {
    job: job.id,
    title: job.title,
    plan,
    rounds: soonestRounds(care),
    ...(lamps && { lampsFrom: lamps.from }),
  };
  return planEntries(dated, place);
}

function save(
  { state, context }: Pick<PartView, 'state' | 'context'>,
  name: string,
  entries: readonly CalendarEntry[],
): void {
  const said = entries.map(({ cautions = [], ...entry }) => ({
    ...entry,
    cautions: cautions.map((caution) => cautionInUnits(caution, context.display)),
  }));
  const file = fileName(`${name} prep plan`, 'ics');
  const text = calendarFile({
    name: `${name}, ${context.workshop.name}`,
    stamp: new Date().toISOString(),
    entries: said,
  });
  saveText(document, file, text, 'text/calendar;charset=utf-8');
  state.api.say(`${entries.length} dates are saved as ${file}.`);
}
