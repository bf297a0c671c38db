import { CautionList } from '#renderer/kit/caution-list.tsx';
import { TimeLine, type TimeRow } from '#renderer/curves/time-line.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Sign } from '#renderer/frame/sign.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import { soonestRounds } from '#shared-calc/prepare/size-care.ts';
import { noteOf } from '#shared-calc/papers/prep-paper.ts';
import { planCautions, prepRows, type PrepRow } from '#shared-calc/papers/prep-card.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import { OpenSteps } from './open-steps.tsx';
import { OpenAJob } from './open-a-job.tsx';
import type { PartView } from './part-view.ts';
import css from './prepare.module.css';
import look from '#renderer/kit/part-page.module.css';
import { MutedLine } from '#renderer/kit/muted.tsx';

/** The open job's dates: what is urgent, each act with its day, the critical chain, and the first year of care. */
export function DatesPart(view: PartView) {
  const { context, job } = view;
  if (!job) return <OpenAJob context={context} part="dates" />;
  const worked = context.job(job.id);
  const plan = worked?.plan();
  if (!worked || !plan) return null;
  if (!plan.ok) return <EmptyNote>{sayNoPlan(worked, plan.fault)}</EmptyNote>;
  const rows = prepRows(plan.value.plan, context.display);
  const says = sayPlan(plan.value.plan, { what: job.title === '' ? 'the tank' : job.title, days: context.display });
  return (
    <>
      <section class={css['pressing']} aria-label="What is pressing">
        {says.map((sentence, at) => (
          <p key={sentence} class={at === 0 && plan.value.plan.late > 0 ? css['late'] : undefined}>
            {at === 0 && plan.value.plan.late > 0 && <Sign name="watch" />} {sentence}
          </p>
        ))}
        <MutedLine>
          {dated(job.handover, job.depositOn)} <a href={writeRoute('jobs', job.id)}>Its card</a>
        </MutedLine>
      </section>
      <OpenSteps {...view} job={job} />
      <div class={look['twoColumns']}>
        <ActsTable rows={rows} context={context} />
        <Care plan={plan.value} days={context.display} />
        <CautionList cautions={planCautions(plan.value.plan)} display={context.display} />
      </div>
      <TimeLine
        dateOrder={context.display.dateOrder}
        title={`From ${paperWeekday(rows[0]?.date ?? context.today, context.display)} to the handover`}
        under="Hollow rings are the last day to order, filled ones the day it is in or done; the heavy line decides"
        label={`Time line of ${job.title}: ${says.join(' ')}`}
        rows={stepRows(plan.value.plan)}
        today={context.today}
        calendar={context.calendar}
        table={{
          headings: ['day', 'act', 'state'],
          rows: rows.map((row) => [paperWeekday(row.date, context.display), row.act, noteOf(row)]),
        }}
      />
    </>
  );
}

function dated(handover: string | undefined, deposit: string | undefined): string {
  const wanted =
    handover === undefined ? 'No handover is wanted yet: the earliest is planned' : 'Backward from the handover wanted';
  return `${wanted}, ${deposit === undefined ? 'as if the deposit came in today.' : 'forward from the deposit.'}`;
}

interface ActsParts {
  readonly rows: readonly PrepRow[];
  readonly context: Pick<Derived, 'today' | 'display'>;
}

function ActsTable({ rows, context: { today, display } }: ActsParts) {
  return (
    <Table
      class={look['acts']}
      caption="What to do by when"
      rows={rows}
      keyOf={({ step, is }) => `${step} ${is}`}
      mark={({ state, date }) => (state === 'done' || state === 'in' || date < today ? 'past' : undefined)}
      columns={[
        { head: 'Day', cell: ({ date }) => paperWeekday(date, display) },
        { head: 'Act', names: true, cell: ({ act }) => act },
        { head: 'State', cell: (row) => (row.decides ? <b>{noteOf(row)}</b> : noteOf(row)) },
      ]}
    />
  );
}

function Care({ plan: { plan, care, lamps }, days }: { readonly plan: JobPlan; readonly days: SaidDays }) {
  const rows = [
    ...plan.care.map(({ act, date }) => ({ day: paperWeekday(date, days), act: careWords[act] ?? act })),
    ...soonestRounds(care).map(({ act, says, first, once }) => ({
      day: once ? paperWeekday(first, days) : `from ${paperWeekday(first, days)}`,
      act: `${act}, ${says}`,
    })),
    ...(lamps ? [{ day: `from ${paperWeekday(lamps.from, days)}`, act: 'lamps are due' }] : []),
  ];
  return (
    <Table
      class={look['acts']}
      caption="The first year of care"
      rows={rows}
      keyOf={(_, at) => at}
      columns={[
        { head: 'Day', cell: ({ day }) => day },
        { head: 'Act', names: true, cell: ({ act }) => act },
      ]}
    />
  );
}

const names: Readonly<Record<PrepRow['step'], string>> = {
  tank: 'Tank',
  panel: 'Background',
  hardscape: 'Wood and cork',
  plants: 'Plants',
  springtails: 'Springtails',
  media: 'Media',
  panes: 'Panes',
  lamps: 'Lamps, misting',
  leaves: 'Leaves',
  build: 'Build',
  handover: 'Handover',
};

function stepRows(plan: PrepPlan): readonly TimeRow[] {
  const { steps, build, handover, decides } = plan;
  const waiting = steps.filter(({ step }) => step !== 'build');
  return [
    ...waiting.map(({ step, date, orderBy }): TimeRow => ({
      key: step,
      name: names[step],
      marks: [...(orderBy === undefined ? [] : [{ date: orderBy, look: 'order' as const }]), { date, look: 'done' }],
      wait: { from: orderBy ?? date, to: build },
      decides: decides.first === step,
    })),
    { key: 'build', name: names.build, marks: [{ date: build, look: 'done', words: 'build' }] },
    {
      key: 'handover',
      name: names.handover,
      marks: [{ date: handover, look: 'done', words: 'handover' }],
      wait: { from: build, to: handover },
    },
  ];
}
