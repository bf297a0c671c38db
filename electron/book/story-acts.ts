import { z } from 'zod';
import { actTable } from '#shared-calc/acts/all-acts.ts';
import { issueAnyway, readReason, reasonFields } from '#shared-calc/acts/reason.ts';
import { againstIssue } from '#shared-calc/derive/against-move.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { readyToIssue } from '#shared-calc/jobs/ready-to-issue.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { issueQuote, latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { isOpenOrder, orderStanding } from '#shared-calc/buy/order-standing.ts';
import { applyChange, emptyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { hashBody } from './issued.ts';

export interface StoryFault {
  readonly kind: string;
}

/** What a story does beside the acts: what depends on what came before is found, not written down. */
type StoryAct = (derived: Derived, input: unknown) => Result<Change, StoryFault>;

const OfJob = z.strictObject({ job: z.string(), ...reasonFields });

/** Issues the next quote of a job, or the next revision of the one it has. */
function issue(derived: Derived, input: unknown): Result<Change, StoryFault> {
  const { job: id, ...given } = OfJob.parse(input);
  const { records, today: issuedOn, display } = derived;
  const job = derived.job(id);
  if (!job) return failed({ kind: 'no-job' });
  const reason = readReason(records, given);
  if (!reason.ok) return reason;
  const sums = readyToIssue(job.known(), derived.workshop);
  if (!sums.ok) return sums;
  const body = freezeQuote(records, job, sums.value, { ...nextQuote(records, id), issuedOn });
  const against = againstIssue(job, display);
  return ok(issueAnyway(records, issueQuote(records, body, hashBody), { body, reason: reason.value, against }));
}

/** The letters A to Z are enough for a story. */
function nextQuote({ issuedQuote }: Records, job: string): Pick<IssuedQuote, 'number' | 'revision'> {
  const before = latestQuote({ issuedQuote }, job);
  if (before) return { number: before.number, revision: String.fromCharCode(before.revision.charCodeAt(0) + 1) };
  const numbers = new Set([...issuedQuote.values()].map(({ number }) => number));
  return { number: `Q-${String(numbers.size + 1).padStart(4, '0')}`, revision: 'A' };
}

/** Records the deposit that the latest quote of a job asks for. */
function payDeposit(derived: Derived, input: unknown): Result<Change, StoryFault> {
  const { job, ...reason } = OfJob.parse(input);
  const quote = latestQuote(derived.records, job);
  const body = quote && readQuoteBody(quote.body);
  if (!body) return failed({ kind: 'no-quote' });
  return actTable.recordDeposit.run(derived, { job, coins: body.sums.depositCoins, ...reason });
}

const TakeIn = z.strictObject({
  job: z.string(),
  suppliers: z.array(z.string()),
  part: z.boolean().default(false).describe('Only what is due by then; its first line where nothing is.'),
});

/** Takes in what suppliers still owe a job, whatever the numbers of its orders are. */
function takeIn(derived: Derived, input: unknown): Result<Change, StoryFault> {
  const { job, suppliers, part } = TakeIn.parse(input);
  const { records, today } = derived;
  const orders = [...records.order.values()].filter(
    (order) =>
      suppliers.includes(order.supplier) &&
      isOpenOrder(orderStanding(records, order, today)) &&
      order.lines.some((line) => line.for.some((each) => each.job === job)),
  );
  if (orders.length === 0) return failed({ kind: 'nothing-to-come' });
  let now = derived;
  const changes: Change[] = [];
  for (const { id: order, lines } of orders) {
    const due = lines.filter((line) => line.due <= today);
    const came = (due.length > 0 ? due : lines.slice(0, 1)).map(({ n, count }) => ({ n, count }));
    const change = actTable.receiveOrder.run(now, { order, note: '', ...(part && { lines: came }) });
    if (!change.ok) return change;
    now = now.update(applyChange(now.records, change.value));
    changes.push(change.value);
  }
  return ok(squashChanges(`${job}: goods in`, changes));
}

const Reach = z.strictObject({ job: z.string(), state: z.string(), ...reasonFields });

/** Moves a job on to a state, unless what happened has brought it there. */
function reach(derived: Derived, input: unknown): Result<Change, StoryFault> {
  const asked = Reach.parse(input);
  const isThere = derived.records.job.get(asked.job)?.state === asked.state;
  return isThere ? ok(emptyChange('')) : actTable.moveJob.run(derived, asked);
}

export const storyActs: ReadonlyMap<string, StoryAct> = new Map([
  ['issue', issue],
  ['payDeposit', payDeposit],
  ['reach', reach],
  ['takeIn', takeIn],
]);
