import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { careByArea, type AreaVisit } from '#shared-calc/prepare/size-care.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';

interface RoundsParts {
  readonly jobs: readonly JobPlan[];
  readonly today: Day;
}

/** Visits to tanks that stand with clients, those of one area and week together. */
export function AreaRounds({ jobs, today }: RoundsParts) {
  const areas = careByArea(
    jobs.map(({ job, plan }) => ({ job, care: plan.care })),
    today,
  );
  if (areas.length === 0) return null;
  return (
    <section class="area-rounds">
      <h2>Visits by area</h2>
      {areas.map(({ area, trips }) => (
        <table key={area} class="told acts">
          <caption>{area === '' ? 'Area not written down' : area}</caption>
          <thead>
            <tr>
              <th scope="col">Week of</th>
              <th scope="col">One round</th>
              <th scope="col">By telephone</th>
            </tr>
          </thead>
          <tbody>
            {trips.map(({ week, visits, calls }) => (
              <tr key={week}>
                <th scope="row">{paperDay(week)}</th>
                <td>{visits.map(visitWords).join('; ')}</td>
                <td>{calls.map(visitWords).join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}

function visitWords({ job, title, act, date }: AreaVisit): string {
  return `${job} ${title}, ${(careWords[act] ?? act).toLowerCase()}, ${paperWeekday(date)}`;
}
