/*
 * A fractional index: texts that sort in list order, so that a record inserted between two others changes no other. A
 * key is read as the digits after a point, in base 36.
 */

const DIGITS = '0123456789abcdefghijklmnopqrstuvwxyz';
const WHOLE = 4;

/** The key of the nth of a list, counted from 1, with room on both sides of it. */
export function sortKeyAt(nth: number): string {
  return `${nth.toString(36).padStart(WHOLE, '0')}i`;
}

/** A key between two others; without the one before it sorts first, without the one after it sorts last. */
export function sortKeyBetween(before: string | undefined, after: string | undefined): string {
  if (after === undefined) return sortKeyAt(parseInt((before ?? '').slice(0, WHOLE).padEnd(WHOLE, '0'), 36) + 1);
  return midpoint(before ?? '', after);
}

/** In the order of their keys, by code units. */
export function bySortKey(one: { readonly order: string }, other: { readonly order: string }): number {
  if (one.order === other.order) return 0;
  return one.order < other.order ? -1 : 1;
}

function midpoint(before: string, after: string): string {
  if (before >= after) throw new Error(`no key between ${before} and ${after}`);
  let same = 0;
  while ((before[same] ?? '0') === after[same]) same += 1;
  const low = digitOf(before, same);
  const high = same < after.length ? digitOf(after, same) : DIGITS.length;
  const head = after.slice(0, same);
  if (high - low > 1) return head + DIGITS.charAt(Math.floor((low + high) / 2));
  return head + DIGITS.charAt(low) + behind(before.slice(same + 1));
}

/** The shortest digits that sort after these. */
function behind(digits: string): string {
  const low = digitOf(digits, 0);
  if (low === DIGITS.length - 1) return DIGITS.charAt(low) + behind(digits.slice(1));
  return DIGITS.charAt(Math.ceil((low + DIGITS.length) / 2));
}

function digitOf(key: string, at: number): number {
  return at < key.length ? DIGITS.indexOf(key.charAt(at)) : 0;
}
