import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { sayEditFault } from '#electron/book/say-book-fault.ts';

type Refused = Extract<Result<never, Refusal>, { readonly ok: false }>;

/** Faults of an edit that can occur because the page is behind the book. */
const perhapsBehind: readonly string[] = [
  'changed-elsewhere',
  'ahead',
  'id-taken',
  'unknown-reference',
  'still-used',
  'there-already',
  'number-used',
] satisfies readonly EditFault['kind'][];

/** A refusal that does not depend on the page's revision. */
export function refuse(says: string): Refused {
  return failed({ says, readAgain: false });
}

/** The book is at another revision than the page assumes: the page must read again. */
export function refuseBehind(says: string): Refused {
  return failed({ says, readAgain: true });
}

export function refuseEdit(fault: EditFault | BookFault): Refused {
  const says = sayEditFault(fault);
  return perhapsBehind.includes(fault.kind) ? refuseBehind(says) : refuse(says);
}
