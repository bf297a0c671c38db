import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField, SettledField, Fields, FieldBox } from '#renderer/kit/field.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { Button } from '#renderer/kit/button.tsx';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { CultureKind, Job } from '#shared-calc/records/records.ts';
import type { StandingTub } from '#shared-calc/prepare/tub-days.ts';
import css from './cultures.module.css';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { Muted } from '#renderer/kit/muted.tsx';

interface TubsParts {
  readonly standing: readonly StandingTub[];
  readonly kind: CultureKind;
  readonly api: JobApi;
  readonly context: BookContext;
  /** Jobs that may claim a tub. */
  readonly jobs: readonly Job[];
}

/** Every tub of a kind: when it is ready, where it is, which job claims it. */
export function TubList({ standing, kind, api, context, jobs }: TubsParts) {
  return (
    <section>
      <h2>Tubs</h2>
      {standing.length === 0 ? (
        <EmptyNote>No tub of {kind.label.toLowerCase()} stands yet. Keep tubs in two places.</EmptyNote>
      ) : (
        <ul class={css['tubs']} aria-label="Tubs">
          {standing.map((each) => (
            <TubRow key={each.tub.id} standing={each} api={api} context={context} jobs={jobs} />
          ))}
        </ul>
      )}
    </section>
  );
}

type RowParts = Omit<TubsParts, 'standing' | 'kind'> & { readonly standing: StandingTub };

function TubRow({ standing, api, context, jobs }: RowParts) {
  const { tub, readyOn, nextOn, is } = standing;
  const change = (fields: ActInputs['changeTub']['fields']) => api.doAct('changeTub', { tub: tub.id, fields });
  const redate = (text: string) => {
    const day = said(readDay(text, 'Started on', context.today));
    return day.ok ? change({ startedOn: day.value }) : api.refuse(day.fault);
  };
  const claimed =
    jobs.some(({ id }) => id === tub.claimedBy) || tub.claimedBy === undefined
      ? jobs
      : claimants(jobs, tub.claimedBy, context);
  return (
    <li>
      <h3>
        {tub.id} <Muted>{stateWords(is, { readyOn, nextOn })}</Muted>
      </h3>
      <Fields>
        <SettledField label="Started on" text={tub.startedOn} settle={redate} />
        <ChoiceField
          label="Kept for"
          value={tub.claimedBy ?? ''}
          options={[
            { value: '', label: 'whichever comes' },
            ...claimed.map((job) => ({ value: job.id, label: jobName(job) })),
          ]}
          choose={(job) => change({ claimedBy: job === '' ? null : job })}
        />
        <SettledField label="Place" text={tub.place} settle={(place) => change({ place })} />
        <FieldBox label="Beside">
          <Checkbox label="spare" on={tub.spare} turn={(spare) => change({ spare })} />
          <Button look="plain" onClick={() => api.doAct('removeTub', { tub: tub.id })}>
            Take it down
          </Button>
        </FieldBox>
      </Fields>
    </li>
  );
}

/** A finished job still appears if it claims the tub. */
function claimants(jobs: readonly Job[], claimedBy: string, { records }: BookContext): readonly Job[] {
  const own = records.job.get(claimedBy);
  return own ? [...jobs, own] : jobs;
}

function stateWords(is: StandingTub['is'], { readyOn, nextOn }: Pick<StandingTub, 'readyOn' | 'nextOn'>): string {
  if (is === 'growing') return `grows, ready on ${paperDay(readyOn)}`;
  if (is === 'used up' || nextOn === undefined) return 'used up';
  return `ready since ${paperDay(readyOn)}, next harvest on ${paperDay(nextOn)}`;
}
