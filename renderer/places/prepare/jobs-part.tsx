import { SettledField, Fields } from '#renderer/kit/field.tsx';
import type { TimeClash, TimeRow } from '#renderer/curves/time-line.tsx';
import { TimeLine } from '#renderer/curves/time-line.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import { daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { sayDay, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import { timeLine, type Clash, type TimeLineEntry } from '#shared-calc/prepare/time-line.ts';
import { sayNoPlan } from '#shared-calc/words/say-plan-fault.ts';
import { stepWords } from '#shared-calc/papers/step-words.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import { isHandedOver, isUnderWay, plannedJobs } from '#shared-calc/derive/planned-jobs.ts';
import type { PrepareState } from './prepare-state.ts';
import type { PartView } from './part-view.ts';
import { writePrepare } from '#renderer/frame/prepare-route.ts';
import { Caution } from '#renderer/kit/caution.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag, FlagRows } from '#renderer/kit/flag.tsx';
import { roomClashes, standingTanks, type RoomClash } from './room-clashes.ts';
import { AreaRounds } from './area-rounds.tsx';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** All jobs under way on one time line, with the days that need more people or more room than there is. */
export function JobsPart({ state, context }: PartView) {
  const { records, today } = context;
  const { planned, without } = plannedJobs(context, isUnderWay);
  const calendar = calendarOf(records);
  const line = timeLine(planned.map(asPlanned), { calendar, hoursADay: state.hoursADay.value });
  const room = roomClashes(
    planned.map(({ job, tanks, plan }) => standingTanks(job.id, tanks, plan)),
    state.places.value,
  );
  return (
    <>
      <Limits state={state} />
      {planned.length === 0 ? (
        <EmptyNote>No job is under way: one is from its deposit to its handover.</EmptyNote>
      ) : (
        <>
          <Clashes
            people={line.clashes}
            room={room}
            hours={state.hoursADay.value}
            places={state.places.value}
            days={context.display}
          />
          <TimeLine
            dateOrder={context.display.dateOrder}
            title={planned.length === 1 ? 'One job is under way' : `${planned.length} jobs are under way`}
            under="Hollow rings are the last day to order, filled ones the build and the handover; red is more than one builder or the room has"
            label={`Time line of ${planned.map(({ job }) => jobName(job)).join(', ')}`}
            rows={planned.map(jobRow)}
            clashes={drawnClashes(line.clashes, room)}
            today={today}
            calendar={calendar}
            table={{
              headings: ['day', 'job', 'act', 'minutes', 'closed'],
              rows: line.entries.map((entry) => entryRow(entry, context.display)),
            }}
          />
        </>
      )}
      {without.map(({ job: worked, fault }) => (
        <Caution key={worked.job.id}>
          <a href={writePrepare(worked.job.id, 'dates')}>{jobName(worked.job)}</a>: {sayNoPlan(worked, fault)}
        </Caution>
      ))}
      <AreaRounds jobs={plannedJobs(context, isHandedOver).planned} context={context} />
    </>
  );
}

function asPlanned({ job, plan, minutes }: JobPlan) {
  return { job: job.id, title: job.title, plan, minutes };
}

function entryRow({ date, job, title, step, minutes, closed }: TimeLineEntry, days: SaidDays): readonly string[] {
  return [
    paperWeekday(date, days),
    `${job} ${title}`,
    stepWords[step].done,
    minutes > 0 ? String(Math.round(minutes)) : '',
    closed ? 'closed' : '',
  ];
}

/** One row a job: its first order, the last goods in, build and handover. */
function jobRow({ job, plan: { steps, build, handover } }: JobPlan): TimeRow {
  const orders = steps.flatMap(({ orderBy }) => orderBy ?? []);
  const first = [...orders, ...steps.map(({ date }) => date)].toSorted()[0] ?? build;
  return {
    key: job.id,
    name: jobName(job).slice(0, 28),
    marks: [
      ...[...new Set(orders)].map((date) => ({ date, look: 'order' as const })),
      { date: build, look: 'done', words: 'build' },
      { date: handover, look: 'done', words: 'handover' },
    ],
    wait: { from: first, to: handover },
  };
}

function drawnClashes(people: readonly Clash[], room: readonly RoomClash[]): readonly TimeClash[] {
  return [...stretchesOf(people), ...room].map(({ from, to, ...of }) => ({
    from,
    to,
    words: 'tanks' in of ? 'room' : 'people',
  }));
}

/** At most a weekend between two of them. */
const NEAR_DAYS = 3;

/** Days on which people clash. Days near one another form one stretch, because their labels would overlap. */
function stretchesOf(people: readonly Clash[]): readonly { readonly from: Day; readonly to: Day }[] {
  const stretches: { from: Day; to: Day }[] = [];
  for (const { date } of people) {
    const before = stretches.at(-1);
    if (before && daysBetween(before.to, date) <= NEAR_DAYS) before.to = date;
    else stretches.push({ from: date, to: date });
  }
  return stretches;
}

interface ClashParts {
  readonly days: SaidDays;
  readonly people: readonly Clash[];
  readonly room: readonly RoomClash[];
  readonly hours: number;
  readonly places: number;
}

function Clashes({ people, room, hours, places, days }: ClashParts) {
  if (people.length + room.length === 0)
    return <p>No day asks for more than one builder or {places} places for tanks.</p>;
  return (
    <FlagRows label="Clashes">
      {people.map(({ date, minutes, entries }) => (
        <li key={date}>
          <Flag state="watch" sign="watch">
            people
          </Flag>
          <span>
            {sayDay(date, days)}: {hoursWords(minutes)} of work, over the {hours} h of one builder.{' '}
            {entries.map(({ job, step }) => `${job} ${stepWords[step].done.toLowerCase()}`).join('; ')}.
          </span>
        </li>
      ))}
      {room.map(({ from, to, tanks, jobs }) => (
        <li key={`${from} room`}>
          <Flag state="watch" sign="watch">
            room
          </Flag>
          <span>
            {from === to ? sayDay(from, days) : `From ${paperDay(from, days)} to ${paperDay(to, days)}`}: {tanks} tanks
            stand here at once, {places} {places === 1 ? 'place' : 'places'}. {jobs.join(', ')}.
          </span>
        </li>
      ))}
    </FlagRows>
  );
}

function hoursWords(minutes: number): string {
  return `${Math.round(minutes / 6) / 10} h`;
}

function Limits({ state }: { readonly state: PrepareState }) {
  const settle = (what: 'hoursADay' | 'places', name: string, most: number) => (text: string) => {
    const read = said(
      readMeasure(text, {
        name,
        stored: what === 'hoursADay' ? 'h' : 'each',
        whole: true,
        low: 1,
        high: most,
      }),
    );
    if (!read.ok) return read.fault;
    state.keep(what, read.value ?? 1);
    return undefined;
  };
  return (
    <Fields look="short">
      <SettledField
        label="Hours of one builder a day"
        unit="h"
        figure
        text={String(state.hoursADay.value)}
        settle={settle('hoursADay', 'Hours a day', 24)}
      />
      <SettledField
        label="Places for tanks in the workshop"
        figure
        text={String(state.places.value)}
        settle={settle('places', 'Places for tanks', 999)}
      />
    </Fields>
  );
}
