import { SettledField, Fields } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { JobMoney } from './job-money.tsx';
import type { JobPart } from './job-part.ts';
import { JobState } from './job-state.tsx';
import { JobSurvey } from './job-survey.tsx';
import { NarrowestEntry } from './narrowest-entry.tsx';
import { PlaceChecks } from './place-checks.tsx';
import { JobSizes } from './job-sizes.tsx';
import type { JobFields } from '#shared-calc/acts/job-acts.ts';
import css from './jobs.module.css';

/** Everything about one job, from the enquiry to its last visit. */
export function JobCard(part: JobPart) {
  const { job } = part;
  return (
    <article class={css['jobCard']} aria-label={`Job ${job.id}`}>
      <header>
        <h2>
          {job.id} {job.title}
        </h2>
        <p class="links">
          <a href={writeRoute('bench', job.id)}>Its size bench</a>
          <a href={writeRoute('quotes')}>Its quote</a>
          <a href={writeRoute('prepare', job.id, 'dates')}>Its prep plan</a>
          <a href={writeRoute('jobs', job.id, 'needs')}>Needs list, printed</a>
          <a href={writeRoute('jobs', job.id, 'pick-list')}>Pick list, printed</a>
        </p>
      </header>
      <JobState {...part} />
      <JobPeople {...part} />
      <JobSizes {...part} />
      <JobMoney {...part} />
      <JobSurvey {...part} />
      <PlaceChecks {...part} />
      <section>
        <h3>Notes</h3>
        <Words {...part} field="note" label="What else there is to know" lines longest={10_000} />
      </section>
    </article>
  );
}

function JobPeople(part: JobPart) {
  return (
    <section>
      <h3>Client and place</h3>
      <Fields look="wide">
        <Words {...part} field="title" label="Title" />
        <Words {...part} field="client" label="Client" />
        <Words {...part} field="contact" label="Who to speak to" />
        <Words {...part} field="area" label="Area, for the visits" />
        <Words {...part} field="animals" label="Animals wanted" />
        <Words
          {...part}
          field="audience"
          label="Who is near it"
          hint="Small children or a public room: plants known as poisonous are left out."
        />
        <Words {...part} field="site" label="Place" lines />
        <Words {...part} field="access" label="Way in: doors, stairs, lift" lines />
        <NarrowestEntry {...part} />
      </Fields>
    </section>
  );
}

type WordsField = Exclude<keyof JobFields, 'basis' | 'handover' | 'enquiredOn' | 'narrowestMm'>;

interface WordsParts extends JobPart {
  readonly field: WordsField;
  readonly label: string;
  readonly hint?: string;
  readonly lines?: boolean;
  readonly longest?: number;
}

function Words({ job, api, field, ...shown }: WordsParts) {
  const settle = (text: string) => api.doAct('writeJob', { job: job.id, fields: { [field]: text.trim() } });
  const { label, hint, lines, longest } = shown;
  return (
    <SettledField
      label={label}
      text={job[field]}
      settle={settle}
      {...(hint !== undefined && { hint })}
      {...(lines !== undefined && { lines })}
      {...(longest !== undefined && { longest })}
    />
  );
}
