import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { issueQuote } from '#shared-calc/jobs/issue-quote.ts';
import { newJob, type NewJob } from '#shared-calc/jobs/new-job.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { workedJob } from '#tests/worked-job.ts';
import { readQuoteBody, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { setValues } from '#shared-calc/jobs/set-values.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Job, LocalValue, Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';

const demo = demoRecords();

/** The demo workshop, its recipe H1 with the soil laid flat, and J02 for the library: one T05. */
export function libraryJob(asked: Partial<NewJob> = {}): Records {
  const records = demo;
  const made = valueOf(
    newJob(records, {
      title: 'Reading room',
      client: 'Brackenlume Library',
      recipe: 'H1',
      sizes: [{ tank: 'T05', count: 1 }],
      writings: [{ line: 'soil_rise', text: '0 mm' }],
      by: 'client',
      on: DEMO_DAY,
      ...asked,
    }),
  );
  return applyChange(records, made.change);
}

export function valueOf<T, F>(result: Result<T, F>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.value;
}

export function faultOf<T, F>(result: Result<T, F>): F | undefined {
  return result.ok ? undefined : result.fault;
}

export function jobOf(records: Records, id: string): Job {
  const job = records.job.get(id);
  if (!job) throw new Error(`no job ${id}`);
  return job;
}

/** The book after an act; a refusal throws. */
export function after<F>(records: Records, act: Result<Change, F>): Records {
  return applyChange(records, valueOf(act));
}

/** The book with cells of J02 overridden: `{ litter: '20 mm', 'T05.kit': 'basic' }`. */
export function written(records: Records, by: LocalValue['by'], texts: Readonly<Record<string, string>>): Records {
  const writings = Object.entries(texts).map(([name, text]) => {
    const [line = '', column] = name.split('.').toReversed();
    return { line, text, ...(column !== undefined && { column }) };
  });
  return after(records, setValues(records, { job: 'J02', writings, by }));
}

/** A book with records of one kind added or replaced. */
export function withRecords<K extends keyof Records>(
  records: Records,
  kind: K,
  more: readonly (Records[K] extends ReadonlyMap<string, infer R> ? R : never)[],
): Records {
  const table = new Map<string, unknown>(records[kind]);
  for (const record of more) table.set((record as { readonly id: string }).id, record);
  return { ...records, [kind]: table };
}

/** The book after the next quote of a job is issued, and the parsed body of that quote. */
export function issued(
  records: Records,
  revision: string,
  { job = 'J02', on = DEMO_DAY }: { readonly job?: string; readonly on?: string } = {},
): { readonly records: Records; readonly body: QuoteBody; readonly change: Change } {
  const open = workedJob(records, jobOf(records, job), on);
  const sums = valueOf(orderSums(open.bench, keysOf(open.sheet), open.pricing));
  const change = issueQuote(
    records,
    freezeQuote(records, open, sums, { number: 'Q-0001', revision, issuedOn: on }),
    () => '0'.repeat(64),
  );
  const next = applyChange(records, change);
  return { records: next, body: bodyOf(next, `Q-0001${revision}`), change };
}

function bodyOf(records: Records, quote: string): QuoteBody {
  const body = readQuoteBody(records.issuedQuote.get(quote)?.body ?? '');
  if (!body) throw new Error(`no body ${quote}`);
  return body;
}
