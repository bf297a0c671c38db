import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { isSoldState } from '#shared-calc/jobs/house-changes.ts';
import { issueQuote, latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { sha256 } from '#shared-calc/jobs/sha256.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import { applyChange, squashChanges, updated, emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { IssuedQuote, Job } from '#shared-calc/records/records.ts';
import { nextNumber } from './next-number.ts';

/**
 * A change with what each job that it moves is sold as: its last quote from *accepted* on, or one that is frozen for it
 * now; nothing once it goes back before that.
 */
export function withSold(derived: Derived, change: Change): Change {
  const moved = change.updated.flatMap((each) =>
    each.kind === 'job' && each.from.state !== each.to.state ? [each.to] : [],
  );
  const jobs = moved.filter((job) => isSoldState(job.state) !== (job.soldAs !== undefined) && job.state !== 'closed');
  if (jobs.length === 0) return change;
  const steps: Change[] = [change];
  let now = derived.update(applyChange(derived.records, change));
  for (const job of jobs) {
    const step = isBefore(job.state, 'accepted') ? rejobbed(job, unsold(job)) : soldNow(now, job);
    now = now.update(applyChange(now.records, step));
    steps.push(step);
  }
  return squashChanges(change.label, steps);
}

function rejobbed(from: Job, to: Job): Change {
  return { ...emptyChange(''), updated: [updated('job', from, to)] };
}

function unsold(job: Job): Job {
  const { soldAs: _, acceptedOn: __, ...rest } = job;
  return rest;
}

function soldNow(derived: Derived, job: Job): Change {
  const sent = latestQuote(derived.records, job.id);
  const frozen = sent && bodyOf(sent) ? undefined : freezeUnsent(derived, job);
  const soldAs = frozen?.quote.id ?? sent?.id;
  if (soldAs === undefined) return emptyChange('');
  const sold = rejobbed(job, { ...job, soldAs, acceptedOn: job.acceptedOn ?? derived.today });
  return frozen ? squashChanges('', [frozen.change, sold]) : sold;
}

/** What was never quoted is frozen as it is accepted; a job of which a price is missing, or a guess, is not. */
function freezeUnsent(
  derived: Derived,
  { id }: Job,
): { readonly quote: IssuedQuote; readonly change: Change } | undefined {
  const { records } = derived;
  const worked = derived.job(id);
  const draft = worked && draftQuote(derived, worked);
  if (!draft?.ok || draft.value.lacks.length > 0) return undefined;
  const numbers = [...records.issuedQuote.values()].map(({ number }) => number);
  const number = `S-${nextNumber('S', numbers, 4)}`;
  const change = issueQuote(records, { ...draft.value.body, number, revision: 'A' }, sha256);
  const quote = change.added.flatMap((each) => (each.kind === 'issuedQuote' ? [each.record] : []))[0];
  return quote && { quote, change };
}
