import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { sayEditFault } from '#electron/book/say-book-fault.ts';

type Refused = Extract<Result<never, Refusal>, { readonly ok: false }>;

/** Faults of an edit that may come of a page that has not seen what the book holds by now. */
const perhapsBehind: readonly string[] = [
  'changed-elsewhere',
  'ahead',
  'id-taken',
  'unknown-reference',
  'still-used',
  'there-already',
  'number-used',
] satisfies readonly EditFault['kind'][];

/** A refusal that has nothing to do with how far the page has read. */
export function refuse(says: string): Refused {
  return failed({ says, readAgain: false });
}

/** The book is at another place than the page thinks: it must read again. */
export function refuseBehind(says: string): Refused {
  return failed({ says, readAgain: true });
}

export function refuseEdit(fault: EditFault | BookFault): Refused {
  const says = sayEditFault(fault);
  return perhapsBehind.includes(fault.kind) ? refuseBehind(says) : refuse(says);
}
