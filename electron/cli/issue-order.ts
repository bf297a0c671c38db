import type { Book } from '#electron/book/book.ts';
import { hashBody } from '#electron/book/issued.ts';
import type { QuoteNumber } from '#electron/book/quote-numbers.ts';
import { sayEditFault } from '#electron/book/say-book-fault.ts';
import { issueAnyway, readReason, type Reason } from '#shared-calc/acts/reason.ts';
import { againstIssue, type Against } from '#shared-calc/derive/against-move.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import type { KnownSums } from '#shared-calc/bench/order-sums.ts';
import type { Missing } from '#shared-calc/buy/missing.ts';
import { listMissing } from '#shared-calc/buy/say-missing.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { lacksToIssue } from '#shared-calc/jobs/ready-to-issue.ts';
import { issueQuote, quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import type { JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import { writeOver } from '#shared-calc/jobs/write-over.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import type { Order } from './order-options.ts';
import { today } from '#electron/service/today.ts';
import type { WorkedOrder } from './work-order.ts';

/** Why a quote is not issued; `missing` where figures are. */
export interface IssueFault {
  readonly says: string;
  readonly missing?: readonly Missing[];
}

interface IssueTerms {
  readonly sums: KnownSums;
  readonly against: readonly Against[];
  readonly reason: Reason;
}

/** What stands against issuing the quote of an order; one over sizes alone has no place. */
export function againstOrder({ derived, order, bench, place }: WorkedOrder): readonly Against[] {
  const keys = order.columns.map(({ key }) => key);
  return againstIssue({ bench, keys, ...(order.jobId !== undefined && { place }) }, derived.display);
}

/** Issues the quote of an order: for a job, the next revision of its number; for any other, a new number. */
export function issueOrder(
  book: Book,
  worked: WorkedOrder,
  { sums, against, reason: asked }: IssueTerms,
): Result<QuoteNumber, IssueFault> {
  const missing = lacksToIssue(sums, worked.workshop);
  if (missing.length > 0) return failed({ says: listMissing(missing), missing });
  const written = issueWhole(book, worked, { sums, against, reason: asked });
  return written.ok ? written : failed({ says: written.fault });
}

function issueWhole(
  book: Book,
  worked: WorkedOrder,
  { sums, against, reason: asked }: IssueTerms,
): Result<QuoteNumber, string> {
  const records = book.records();
  const reason = readReason(records, asked);
  if (!reason.ok) return failed(sayActFault(reason.fault));
  const { order, bench, pricing, house } = worked;
  if (order.columns.length === 0) return failed(`${order.jobId} has no size yet: take one first.`);
  const sheet = orderSheet(worked);
  if (!sheet.ok) return sheet;
  const number = book.nextQuote(order.jobId === undefined ? undefined : quoteNumberOf(records, order.jobId));
  const issue = { number: number.number, revision: number.revision, issuedOn: today() };
  const body = freezeQuote(records, { sheet: sheet.value, lines: order.lines, bench, pricing, house }, sums, issue);
  const change = issueAnyway(records, issueQuote(records, body, hashBody), { body, reason: reason.value, against });
  const issued = book.apply(change, book.revision());
  return issued.ok ? ok(number) : failed(sayEditFault(issued.fault));
}

/** The order with the overrides on the command line, which count as the client's. */
export function orderSheet({ derived, order }: WorkedOrder): Result<JobSheet, string> {
  const sheet = writeOver(plainSheet(order, derived), order.written, {
    lines: order.lines,
    by: 'client',
    // The order has figures as the book stores them.
    decimalComma: false,
  });
  return sheet.ok ? sheet : failed(sayJobFault(sheet.fault));
}

/** The order as its sizes or its job define it, before the overrides on the command line. */
function plainSheet(order: Order, { job: jobOf }: Derived): JobSheet {
  const sheet = jobOf(order.jobId ?? '')?.sheet;
  if (sheet) {
    const keys = new Set(order.columns.map(({ key }) => key));
    return { ...sheet, columns: sheet.columns.filter(({ key }) => keys.has(key)) };
  }
  const columns = order.columns.map((column) => ({ ...column, size: column.key, locals: new Map() }));
  return { recipe: order.recipe, columns, whole: new Map(), oneOffs: [] };
}
