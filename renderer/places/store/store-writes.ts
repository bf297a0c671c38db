import { addRecords, removeRecords, updateRecord } from '#renderer/books/put-record.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { jobUses } from '#shared-calc/jobs/job-uses.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { reserveStock } from '#shared-calc/jobs/reserve-stock.ts';
import { amountOf, NOTHING, remainder, storePieces } from '#shared-calc/jobs/store-pieces.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { added, applyChange, squashChanges, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Job, Records, StockEntry } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';

/** Puts an entry into the Store. */
export function putIn(records: Records, entry: Omit<StockEntry, 'id'>): Change {
  const id = freeId(`K-${entry.material}`, records.stockEntry);
  return addRecords(`${sayAmount(records, entry)} into the Store`, [added('stockEntry', { ...entry, id })]);
}

/** Rewrites an entry of the Store; `undefined` takes a day or a job away. */
export function writeEntry(
  from: StockEntry,
  fields: Partial<{ readonly [K in keyof StockEntry]: StockEntry[K] | undefined }>,
): Result<Change, string> {
  const to: Record<string, unknown> = { ...from, ...fields };
  for (const key of Object.keys(to)) if (to[key] === undefined) delete to[key];
  return updateRecord(`${from.material} in the Store`, 'stockEntry', { from, to: to as StockEntry });
}

export function takeOut(entry: StockEntry): Change {
  return removeRecords(`${entry.material} out of the Store`, [added('stockEntry', entry)]);
}

export interface Use {
  readonly material: string;
  /** In the material's unit. */
  readonly amount: number;
  readonly on: Day;
  /** What is kept for this job is taken first. */
  readonly job?: string;
}

/** Takes an amount out of the Store, opened bags first; refused where there is not so much to give. */
export function takeSome(records: Records, use: Use): Result<Change, string> {
  const pieces = storePieces(records.stockEntry.values(), use);
  const free = amountOf(pieces);
  if (use.amount - free > NOTHING) {
    const unit = unitOfGoods(use.material, records) ?? 'each';
    return failed(
      `The Store has ${sayAmount(records, { ...use, amount: free })} to give, not ${sayAmount(records, use)}. What is kept for others stays: ${unit === 'each' ? 'count again' : 'measure again'}, or give back what is kept.`,
    );
  }
  const left = pieces.flatMap((piece) => {
    const rest = remainder(piece);
    return rest ? [{ ...rest, sealed: false }] : [];
  });
  const gone = pieces.map(({ entry }) => entry.id).filter((id) => !left.some((rest) => rest.id === id));
  const label = `${sayAmount(records, use)} used${use.job === undefined ? '' : ` for ${use.job}`}`;
  return ok(diffRecords(label, records, { ...records, stockEntry: putRecords(records.stockEntry, left, gone) }));
}

/** Keeps for a job as much of everything it needs as the Store has free. */
export function keepNeeded(records: Records, job: Job, on: Day): Result<Change, string> {
  const uses = jobUses(records, job, on);
  if (!uses.ok) return failed(sayJobFault(uses.fault));
  let now = records;
  const changes: Change[] = [];
  for (const [material, needed] of uses.value) {
    const kept = [...now.stockEntry.values()].filter(
      (entry) => entry.material === material && entry.reservedFor === job.id,
    );
    const lacking = needed - kept.reduce((sum, { amount }) => sum + amount, 0);
    const amount = amountOf(storePieces(now.stockEntry.values(), { material, amount: Math.max(0, lacking), on }));
    if (amount <= NOTHING) continue;
    const keep = reserveStock(now, { job: job.id, material, amount, on });
    if (!keep.ok) return failed(sayJobFault(keep.fault));
    now = applyChange(now, keep.value);
    changes.push(keep.value);
  }
  if (changes.length === 0) return failed(`The Store has nothing free that ${job.id} still needs.`);
  return ok(squashChanges(`kept for ${job.id}: what the Store has of its needs`, changes));
}

/** `16.84 L of M01` */
function sayAmount(records: Records, { material, amount }: Pick<StockEntry, 'material' | 'amount'>): string {
  const unit = unitOfGoods(material, records) ?? 'each';
  return `${goodsWords(amount, unit, displayOf(workshopOf(records)))} of ${material}`;
}
