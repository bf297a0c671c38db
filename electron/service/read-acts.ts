import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import { toRecordLists } from '#shared-calc/contract/record-lists.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Session } from './session.ts';
import { entriesAfter } from './entries-after.ts';
import { refuseBehind } from './refuse.ts';

/** The sentence for a page that still shows a book that is no longer open. */
export const otherBook = 'Another book has been opened meanwhile.';

export function readBook(session: Session): Result<Output<'book.read'>, Refusal> {
  const records = toRecordLists(session.book().records());
  return ok({ info: session.info().value, records });
}

export function readSince(
  session: Session,
  { opening, revision }: Input<'book.since'>,
): Result<Output<'book.since'>, Refusal> {
  if (!session.isCurrent(opening)) return refuseBehind(otherBook);
  const entries = entriesAfter(session, revision);
  return entries.ok ? ok({ info: session.info().value, entries: [...entries.value] }) : entries;
}
