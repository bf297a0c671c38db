import { Fields } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { SoldAs } from '#renderer/books/sold-as.tsx';
import { isSoldState } from '#shared-calc/jobs/house-changes.ts';
import { JobEntry } from './job-entry.tsx';
import { JobMoney } from './job-money.tsx';
import type { JobPart } from './job-part.ts';
import { JobReasons } from './job-reasons.tsx';
import { JobState } from './job-state.tsx';
import { JobSurvey } from './job-survey.tsx';
import { PlaceChecks } from './place-checks.tsx';
import { JobSizes } from './job-sizes.tsx';
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
        <p class={css['links']}>
          <a href={writeRoute('bench', job.id)}>Its size bench</a>
          <a href={writeRoute('jobs', job.id, 'survey')}>Its survey</a>
          <a href={writeRoute('quotes')}>Its quote</a>
          <a href={writeRoute('prepare', job.id, 'dates')}>Its prep plan</a>
          <a href={writeRoute('jobs', job.id, 'needs')}>Needs list, printed</a>
          <a href={writeRoute('jobs', job.id, 'pick-list')}>Pick list, printed</a>
        </p>
      </header>
      <JobState {...part} />
      <JobSold {...part} />
      <JobPeople {...part} />
      <JobSizes {...part} />
      <JobMoney {...part} />
      <JobSurvey {...part} />
      <PlaceChecks {...part} />
      <JobReasons {...part} />
      <section>
        <h3>Notes</h3>
        <JobEntry {...part} field="note" />
      </section>
    </article>
  );
}

/** As sold: shown from *accepted* on. */
function JobSold(part: JobPart) {
  if (!isSoldState(part.job.state) && part.job.soldAs === undefined) return null;
  return (
    <section>
      <h3>As sold</h3>
      <SoldAs {...part} />
    </section>
  );
}

const people = ['title', 'client', 'contact', 'area', 'animals', 'audience', 'site', 'access'] as const;

function JobPeople(part: JobPart) {
  return (
    <section>
      <h3>Client and place</h3>
      <Fields look="wide">
        {people.map((field) => (
          <JobEntry key={field} {...part} field={field} />
        ))}
      </Fields>
    </section>
  );
}
