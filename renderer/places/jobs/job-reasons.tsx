import { MutedLine } from '#renderer/kit/muted.tsx';
import { reasonsOf, sayReason } from '#shared-calc/papers/reasons-said.ts';
import { readUnits } from '#shared-calc/quantity/figure-words.ts';
import type { JobPart } from './job-part.ts';

/** What was done although something stood against it: why, who decided, and what it was. */
export function JobReasons({ job, context }: JobPart) {
  const { records, display } = context;
  const reasons = reasonsOf(records, job.id);
  if (reasons.length === 0) return null;
  return (
    <section>
      <h3>Done all the same</h3>
      <ul>
        {reasons.map((done) => (
          <li key={done.id}>
            {sayReason(done, context)}
            {done.against.map(({ what, why }) => (
              <MutedLine key={why}>
                Against it, {what}: {readUnits(why, display)}
              </MutedLine>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
