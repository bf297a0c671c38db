import type { Entry, Refusal } from '#shared-calc/contract/channels.ts';
import { ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import type { Desk } from './desk.ts';
import { refuseEdit } from './refuse.ts';

/** Every edit after a revision, in order, as pages take it in. */
export function entriesAfter(desk: Desk, revision: number): Result<readonly Entry[], Refusal> {
  const entries = desk.book().entriesAfter(revision);
  if (!entries.ok) return refuseEdit(entries.fault);
  return ok(entries.value.map(({ revision: made, change }) => ({ revision: made, change })));
}
