import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Desk } from './desk.ts';
import { entriesAfter } from './entries-after.ts';
import { refuseBehind } from './refuse.ts';

/** The sentence for a page that still shows a book which has been put away. */
export const otherBook = 'Another book has been opened meanwhile.';

export function readBook(desk: Desk): Result<Output<'book.read'>, Refusal> {
  const records = toRecordLists(desk.book().records());
  return ok({ info: desk.info().value, records });
}

export function readSince(
  desk: Desk,
  { opening, revision }: Input<'book.since'>,
): Result<Output<'book.since'>, Refusal> {
  if (!desk.isLying(opening)) return refuseBehind(otherBook);
  const entries = entriesAfter(desk, revision);
  return entries.ok ? ok({ info: desk.info().value, entries: [...entries.value] }) : entries;
}
