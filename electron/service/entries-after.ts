import type { Entry, Refusal } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Session } from './session.ts';
import { refuseBehind, refuseEdit } from './refuse.ts';

/** Every edit after a revision, in order, in the form that pages apply. */
export function entriesAfter(session: Session, revision: number): Result<readonly Entry[], Refusal> {
  const entries = session.book().entriesAfter(revision);
  if (!entries.ok) return refuseEdit(entries.fault);
  // Edits that were squashed meanwhile are no longer there one by one.
  if (entries.value.length < session.book().revision() - revision)
    return refuseBehind('The page is far behind the book.');
  return ok(entries.value.map(({ revision: made, change }) => ({ revision: made, change })));
}
