import { failingChecks } from '#shared-calc/derive/failing-checks.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import { Flag } from '#renderer/kit/flag.tsx';
import { whoDecides } from '#shared-calc/words/who-decides.ts';
import type { JobPart } from './job-part.ts';
import css from './jobs.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

/** Checks of the job's sizes that fail or are not known yet, the most serious first. */
export function PlaceChecks({ job, context }: JobPart) {
  const worked = context.job(job.id);
  const failing = worked ? failingChecks(worked) : [];
  if (failing.length === 0) return null;
  return (
    <section>
      <h3>What does not hold there</h3>
      <ul class={css['checks']}>
        {failing.map(({ level, says, decides, sizes }) => (
          <li key={`${says} ${sizes.join()}`} data-state={level}>
            <Flag state={level} sign={level}>
              {level}
            </Flag>
            <span>
              <b>{sizes.join(', ')}</b> {readUnits(says, context.display)}
              {decides !== '' && <Muted> {whoDecides(decides)}.</Muted>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
