import { Table } from '#renderer/kit/table.tsx';
import { paperDay, paperWeekday } from '#shared-calc/papers/paper-words.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { SaidDays } from '#shared-calc/prepare/say-day.ts';
import { careByArea, type AreaVisit } from '#shared-calc/prepare/size-care.ts';
import { careWords } from '#shared-calc/papers/step-words.ts';
import type { JobPlan } from '#shared-calc/derive/job-plan.ts';
import css from './prepare.module.css';
import look from '#renderer/kit/part-page.module.css';

interface RoundsParts {
  readonly jobs: readonly JobPlan[];
  readonly context: Pick<Derived, 'today' | 'display'>;
}

/** Visits to tanks at clients, grouped by area and week. */
export function AreaRounds({ jobs, context: { today, display } }: RoundsParts) {
  const areas = careByArea(
    jobs.map(({ job, plan }) => ({ job, care: plan.care })),
    today,
  );
  if (areas.length === 0) return null;
  return (
    <section class={css['areaRounds']}>
      <h2>Visits by area</h2>
      {areas.map(({ area, trips }) => (
        <Table
          key={area}
          class={look['acts']}
          caption={area === '' ? 'Area not written down' : area}
          rows={trips}
          keyOf={({ week }) => week}
          columns={[
            { head: 'Week of', names: true, cell: ({ week }) => paperDay(week, display) },
            { head: 'One round', cell: ({ visits }) => visits.map((visit) => visitWords(visit, display)).join('; ') },
            { head: 'By telephone', cell: ({ calls }) => calls.map((call) => visitWords(call, display)).join('; ') },
          ]}
        />
      ))}
    </section>
  );
}

function visitWords({ job, title, act, date }: AreaVisit, days: SaidDays): string {
  return `${job} ${title}, ${(careWords[act] ?? act).toLowerCase()}, ${paperWeekday(date, days)}`;
}
