import { moveAndTake } from '#shared-calc/acts/move-acts.ts';
import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { Short } from '#shared-calc/acts/build-job.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { goodsLabel, unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';

/** What the Store lacked for a build; empty if it had everything, or nothing is built. */
export function sayTaken(before: Derived, input: ActInputs['moveJob']): string {
  const moved = moveAndTake(before, input);
  if (!moved.ok) return '';
  const { short, notTaken } = moved.value;
  return notTaken ? `Nothing taken from the Store. ${sayJobFault(notTaken)}` : sayShort(short, before);
}

/** Nobody would read more in the status line. */
const MOST_TOLD = 3;

function sayShort(short: readonly Short[], { records, display }: Derived): string {
  if (short.length === 0) return '';
  const each = short.map(({ material, amount }) => {
    const unit = unitOfGoods(material, records) ?? 'each';
    return `${goodsWords(amount, unit, display)} of ${goodsLabel(material, records)}`;
  });
  const more = each.length > MOST_TOLD ? ` and ${each.length - MOST_TOLD} more` : '';
  return `The Store had not all of it: ${each.slice(0, MOST_TOLD).join(', ')}${more} came from elsewhere.`;
}
