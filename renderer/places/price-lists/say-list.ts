import type { PlacedList, PlacedRow } from '#shared-calc/acts/place-list-rows.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { ListEffect } from '#shared-calc/derive/list-effect.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import type { Workshop } from '#shared-calc/records/records.ts';

/** `7 rows give 5 prices, 1 new pack and 1 new material; 2 are in the book already.` */
export function sayTaken({ taken, left }: PlacedList, today: Day): string {
  const there = taken.filter(({ isThere }) => isThere).length;
  const materials = new Set(taken.flatMap(({ material, label }) => (material === undefined ? [label] : []))).size;
  const packs = taken.filter(({ known, material }) => !known && material !== undefined).length;
  const prices = taken.filter(({ known, isThere }) => known && !isThere).length;
  const later = taken.filter(({ isThere, from }) => !isThere && from > today).length;
  const parts = [count(prices, 'price'), count(packs, 'new pack'), count(materials, 'new material')].filter(
    (part) => !part.startsWith('0 '),
  );
  const given = parts.join(', ').replace(/, ([^,]*)$/, ' and $1');
  const gives = taken.length === 1 ? 'gives' : 'give';
  return [
    parts.length === 0 ? 'No row gives anything new' : `${count(taken.length, 'row')} ${gives} ${given}`,
    ...(later === 0 ? [] : [`${later} ${later === 1 ? 'holds' : 'hold'} from a later day`]),
    ...(there === 0 ? [] : [`${there} in the book already`]),
    ...(left.length === 0 ? [] : [`${left.length} left`]),
  ]
    .join('; ')
    .concat('.');
}

function count(many: number, what: string): string {
  return `${many} ${what}${many === 1 ? '' : 's'}`;
}

/** What a price differs by from the one before, in per cent; `undefined` where there is none before. */
export function changeOf(placed: PlacedRow | undefined): number | undefined {
  const before = placed?.beforeCoins;
  return placed && before !== undefined && before > 0 ? ((placed.priceCoins - before) / before) * 100 : undefined;
}

/** `+4.1 %`; empty where there is no price before. */
export function sayChange(placed: PlacedRow | undefined): string {
  const percent = changeOf(placed);
  if (percent === undefined) return '';
  if (percent === 0) return 'no change';
  return `${percent > 0 ? '+' : '−'}${Math.abs(percent).toFixed(1)} %`;
}

/** `J07 Dental waiting room: at least 1,204.00 now, 2,310.50 USD with this list; 3 prices missing.` */
export function sayEffect({ job, title, from, to }: ListEffect, workshop: Workshop): string {
  const sum = ({ grossCoins, isAtLeast }: ListEffect['from']) =>
    `${isAtLeast ? 'at least ' : ''}${showCoins(grossCoins, workshop)}`;
  const money = `${sum(from)} now, ${sum(to)} ${workshop.currency}`.trimEnd();
  const missing = to.prices === 0 ? 'no price missing' : `${count(to.prices, 'price')} missing`;
  return `${job} ${title}: ${money} with this list; ${missing}.`;
}
