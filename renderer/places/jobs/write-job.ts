import { updateRecord } from '#renderer/books/put-record.ts';
import { buildJob, type Short } from '#shared-calc/jobs/build-job.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { isBefore, moveJob } from '#shared-calc/jobs/move-job.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { recordKinds, type Job, type Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { goodsWords } from '#renderer/print/goods-words.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { unitOfGoods } from '#shared-calc/papers/unit-of-goods.ts';
import { goodsLabel } from '#renderer/places/store/store-rows.ts';
import { told } from './money-hands.ts';

/** What is told of a job in the builder's own words, and its dates. */
export type JobWords = Partial<
  Pick<
    Job,
    | 'title'
    | 'client'
    | 'contact'
    | 'site'
    | 'access'
    | 'narrowestMm'
    | 'audience'
    | 'animals'
    | 'area'
    | 'note'
    | 'enquiredOn'
    | 'handover'
    | 'basis'
  >
>;

/** Rewrites what is told of a job; `undefined` takes a date or a figure away. */
export function writeJob(
  records: Records,
  id: string,
  words: { readonly [K in keyof JobWords]: JobWords[K] | undefined },
): Result<Change, string> {
  const job = findJob(records, id);
  if (!job.ok) return failed(sayJobFault(job.fault));
  if (words.title?.trim() === '') return failed('A job needs a title.');
  const to = recordKinds.job.safeParse(withoutUndefined({ ...job.value, ...words }));
  if (!to.success) return failed(`This cannot be kept: ${to.error.issues[0]?.message ?? 'it is no such record'}.`);
  const label = `${id}: ${Object.keys(words)
    .map((key) => fieldNames[key] ?? key)
    .join(', ')}`;
  return updateRecord(label, 'job', { from: job.value, to: to.data });
}

function withoutUndefined(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

const fieldNames: Readonly<Record<string, string>> = {
  enquiredOn: 'day of the enquiry',
  basis: 'costing basis',
  site: 'place',
  access: 'way in',
  narrowestMm: 'narrowest on the way in',
};

export interface Moved {
  readonly change: Change;
  /** What the Store had not for the build; nothing where it gave everything. */
  readonly short: string;
}

/** Moves a job; one that is built takes its materials out of the Store with it. */
export function moveTo(
  records: Records,
  { job: id, state, today }: { readonly job: string; readonly state: string; readonly today: Day },
): Result<Moved, string> {
  const job = records.job.get(id);
  if (state === 'built' && job && job.state !== 'closed' && isBefore(job.state, 'built')) {
    const built = buildJob(records, id, today);
    return built.ok
      ? ok({ change: built.value.change, short: sayShort(built.value.short, records) })
      : failed(sayJobFault(built.fault));
  }
  const moved = told(moveJob(records, id, state));
  return moved.ok ? ok({ change: moved.value, short: '' }) : moved;
}

/** More would not be read in the quiet line. */
const MOST_TOLD = 3;

function sayShort(short: readonly Short[], records: Records): string {
  if (short.length === 0) return '';
  const display = displayOf(workshopOf(records));
  const each = short.map(({ material, amount }) => {
    const unit = unitOfGoods(material, records) ?? 'each';
    return `${goodsWords(amount, unit, display)} of ${goodsLabel(material, records)}`;
  });
  const more = each.length > MOST_TOLD ? ` and ${each.length - MOST_TOLD} more` : '';
  return `The Store had not all of it: ${each.slice(0, MOST_TOLD).join(', ')}${more} came from elsewhere.`;
}
