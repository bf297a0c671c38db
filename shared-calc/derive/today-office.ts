import { z } from 'zod';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { nextActOf } from '#shared-calc/jobs/next-act.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import { sayDay, type SaidDays } from '#shared-calc/prepare/say-day.ts';
import type { IssuedQuote, Job, Records } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';
import { builder, ofJob, type TodayDraft } from './today-item.ts';

/** Days after which an enquiry is answered, and days before a quote runs out at which its client is asked. */
const ANSWER_DAYS = 3;
const ASK_DAYS = 3;

export function enquiryItems(job: Job, days: SaidDays): readonly TodayDraft[] {
  if (job.state !== 'enquiry' || job.enquiredOn === undefined) return [];
  return [
    {
      ...ofJob(job, 'enquiry'),
      day: addDays(job.enquiredOn, ANSWER_DAYS),
      what: 'answer the enquiry',
      who: builder,
      why: `Enquired on ${sayDay(job.enquiredOn, days)}, and ${ANSWER_DAYS} days`,
      tick: { is: 'go' },
    },
  ];
}

/** The client is asked before the quote runs out, once; after its last day it has run out. */
export function quoteItems(
  job: Job,
  { records: { issuedQuote, done }, today, display }: Pick<Derived, 'records' | 'today' | 'display'>,
): readonly TodayDraft[] {
  const quote = isBefore(job.state, 'accepted') ? latestQuote({ issuedQuote }, job.id) : undefined;
  const validUntil = quote && lastDayOf(quote);
  if (!quote || validUntil === undefined) return [];
  const asked = [...done.values()].some(
    (each) => each.job === job.id && each.step === ASKED && each.on >= quote.issuedOn,
  );
  const ranOut: TodayDraft = {
    ...ofJob(job, `${quote.id} ran out`),
    day: validUntil,
    what: `${quote.id} ran out`,
    who: builder,
    why: `Valid until ${sayDay(validUntil, display)}: revise it, or close the job`,
    tick: { is: 'go' },
  };
  if (asked || today > validUntil) return [ranOut];
  return [
    {
      ...ofJob(job, `${quote.id} asked`),
      day: addDays(validUntil, -ASK_DAYS),
      what: `ask about ${quote.id}`,
      who: builder,
      why: `Issued on ${sayDay(quote.issuedOn, display)}, runs out on ${sayDay(validUntil, display)}`,
      tick: { is: 'did', step: ASKED, ends: true },
    },
  ];
}

/** The step with which a client was asked for an answer. */
const ASKED = 'asked';

const LastDay = z.object({ validUntil: z.string() });
const lastDays = new WeakMap<IssuedQuote, { readonly day: Day | undefined }>();

/** An issued quote never changes, and its body is long: it is read once. Nothing where it has been altered. */
function lastDayOf(quote: IssuedQuote): Day | undefined {
  const known = lastDays.get(quote);
  if (known) return known.day;
  const day = parsedDay(quote.body);
  lastDays.set(quote, { day });
  return day;
}

function parsedDay(body: string): Day | undefined {
  try {
    return LastDay.safeParse(JSON.parse(body)).data?.validUntil;
  } catch {
    return undefined;
  }
}

/** Issuing writes that the client is asked on the last day; the quote's own items say it better. */
function isOfIssue(job: Job, records: Pick<Records, 'issuedQuote'>): boolean {
  const quote = job.state === 'quoted' ? latestQuote(records, job.id) : undefined;
  return quote !== undefined && job.nextAct === nextActOf('quoted') && job.nextOn === lastDayOf(quote);
}

/** The next act with the day that was written for it by hand. */
export function nextActItems(job: Job, records: Pick<Records, 'issuedQuote'>): readonly TodayDraft[] {
  if (job.state === 'closed' || job.nextOn === undefined || job.nextAct === '') return [];
  if (isOfIssue(job, records)) return [];
  return [
    {
      ...ofJob(job, 'next'),
      day: job.nextOn,
      what: job.nextAct,
      who: builder,
      why: 'Written on its card',
      tick: { is: 'go' },
    },
  ];
}
