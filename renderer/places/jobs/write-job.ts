import { moveAndTake } from '#shared-calc/acts/job-acts.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Short } from '#shared-calc/jobs/build-job.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { goodsLabel, unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';

export interface Moved {
  readonly change: Change;
  /** What the Store had not for the build; nothing where it gave everything. */
  readonly short: string;
}

/** Moves a job; one that is built takes its materials out of the Store with it. */
export function moveTo(
  derived: Derived,
  input: { readonly job: string; readonly state: string },
): Result<Moved, string> {
  const moved = moveAndTake(derived, input);
  if (!moved.ok) return failed(sayJobFault(moved.fault));
  const { change, short, notTaken } = moved.value;
  const says = notTaken ? `Nothing taken from the Store. ${sayJobFault(notTaken)}` : sayShort(short, derived.records);
  return ok({ change, short: says });
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
