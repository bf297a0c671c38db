import { failingChecks } from '#shared-calc/derive/failing-checks.ts';
import { surveyCautions } from '#shared-calc/jobs/survey-cautions.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import { CautionList } from '#renderer/kit/caution-list.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import type { JobPart } from './job-part.ts';
import css from './jobs.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

/** Checks of the job's sizes that fail or are not known yet, the most serious first. */
export function PlaceChecks({ job, context }: JobPart) {
  const worked = context.job(job.id);
  const failing = worked ? failingChecks(context, worked) : [];
  const cautions = surveyCautions(job.survey);
  if (failing.length === 0 && cautions.length === 0) return null;
  return (
    <section>
      <h3>{failing.length === 0 ? 'To mind there' : 'What does not hold there'}</h3>
      <ul class={css['checks']}>
        {failing.map(({ level, state, says, decides, sizes, missing }) => (
          <li key={`${says} ${sizes.join()}`} data-state={level}>
            <Flag state={level} sign={level}>
              {state === 'fails' ? level : state}
            </Flag>
            <span>
              <b>{sizes.join(', ')}</b>{' '}
              {missing === undefined ? (
                readUnits(says, context.display)
              ) : (
                <a href={writeRoute('bench', job.id, missing, sizes[0] ?? '')}>{readUnits(says, context.display)}</a>
              )}
              {decides !== '' && <Muted> {whoDecides(decides)}.</Muted>}
            </span>
          </li>
        ))}
      </ul>
      <CautionList cautions={cautions} display={context.display} />
    </section>
  );
}
