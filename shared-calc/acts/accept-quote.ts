import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { countDifferences, quoteDifferences } from '#shared-calc/jobs/quote-differences.ts';
import type { FrozenWritten, QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import { applyChange, emptyChange, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { IssuedQuote, Job, LocalValue, Records, Size } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import type { ActFault } from './act-fault.ts';

export interface Acceptance {
  /** Left out: the latest revision. */
  readonly quote?: string | undefined;
  /** Puts the boxes of the job back to what the quote says. */
  readonly asIssued?: boolean | undefined;
}

/** The quote that a client says yes to; none if the job has none. */
export function quoteToAccept(
  records: Records,
  job: string,
  named: string | undefined,
): Result<IssuedQuote | undefined, ActFault> {
  if (named === undefined) return ok(latestQuote(records, job));
  const quote = records.issuedQuote.get(named.toUpperCase()) ?? records.issuedQuote.get(named);
  if (quote?.job === job) return ok(quote);
  const own = [...records.issuedQuote.values()].flatMap((each) => (each.job === job ? [each.id] : []));
  const near = nearestName(named, own);
  return failed({ kind: 'no-quote-of-job', quote: named, job, quotes: own, ...(near !== undefined && { near }) });
}

/**
 * What makes a job stand on a quote: its boxes as issued where that is asked. Refused while something written in the job
 * is not in the quote.
 */
export function acceptedQuote(
  derived: Derived,
  { id }: Job,
  quote: IssuedQuote,
  asIssued: boolean,
): Result<Change, ActFault> {
  const { records, today } = derived;
  const body = bodyOf(quote);
  if (!body) return failed({ kind: 'quote-unreadable', quote: quote.id });
  const sold = soldAs(records, id, quote.id, today);
  const back = asIssued ? boxesBack(applyChange(records, sold), id, body) : emptyChange('');
  const next = applyChange(applyChange(records, sold), back);
  const worked = derive(next, today).job(id);
  const differences = worked?.sold ? quoteDifferences(worked.sheet, worked.sold.body) : [];
  if (!asIssued && differences.length > 0) {
    const words = countDifferences(differences);
    return failed({ kind: 'differs-from-quote', job: id, quote: quote.id, words });
  }
  return ok(diffRecords(`${id} sold as ${quote.id}`, records, next));
}

function soldAs(records: Records, id: string, quote: string, on: string): Change {
  const job = records.job.get(id);
  const sold = job ? [{ ...job, soldAs: quote, acceptedOn: on }] : [];
  return diffRecords('', records, { ...records, job: putRecords(records.job, sold) });
}

/** Sizes, cells and one-off lines of a job as a quote has them; a size that was measured stays. */
function boxesBack(records: Records, job: string, body: QuoteBody): Change {
  const known = new Set(body.columns.map(({ size }) => size));
  const measured = new Set([...records.actual.values()].map(({ size }) => size));
  const extra = sizesOf(records, job).filter(({ id }) => !known.has(id) && !measured.has(id));
  const own = (values: Iterable<{ readonly id: string; readonly job: string }>) =>
    [...values].flatMap((value) => (value.job === job ? [value.id] : []));
  const locals = [
    ...localsOf(job, undefined, body.whole),
    ...body.columns.flatMap(({ size, locals: written }) => localsOf(job, size, written)),
  ];
  return diffRecords('', records, {
    ...records,
    size: putRecords(
      records.size,
      sizesBack(records, job, body),
      extra.map(({ id }) => id),
    ),
    localValue: putRecords(records.localValue, withIds(records, locals), own(records.localValue.values())),
    quoteLine: putRecords(records.quoteLine, body.oneOffs, own(records.quoteLine.values())),
  });
}

function sizesBack({ size: sizes }: Records, job: string, { columns }: QuoteBody): readonly Size[] {
  return columns.map(({ size: id, tank, label, count }, at) => {
    const now = sizes.get(id);
    return { ...now, id, job, tank: tank.id, order: now?.order ?? at + 1, label, count };
  });
}

function localsOf(
  job: string,
  size: string | undefined,
  written: readonly FrozenWritten[],
): readonly Omit<LocalValue, 'id'>[] {
  return written.map((each) => ({ job, ...(size !== undefined && { size }), ...each }));
}

/** A value that is there keeps its id. */
function withIds({ localValue }: Records, values: readonly Omit<LocalValue, 'id'>[]): readonly LocalValue[] {
  const known = new Map([...localValue.values()].map((value) => [placeOf(value), value.id]));
  return values.map((value) => ({
    id: known.get(placeOf(value)) ?? `${value.size ?? value.job}.${value.line}`,
    ...value,
  }));
}

function placeOf({ job, size = '', line }: Omit<LocalValue, 'id'>): string {
  return [job, size, line].join('\n');
}
