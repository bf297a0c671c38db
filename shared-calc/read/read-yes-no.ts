import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

const yes = new Set(['yes', 'y', 'true', '1']);
const no = new Set(['no', 'n', 'false', '0', '']);

/** Parses yes or no; empty is no. */
export function readYesNo(text: string, name: string): Result<boolean, EntryFault> {
  const word = text.trim().toLowerCase();
  if (yes.has(word)) return ok(true);
  return no.has(word) ? ok(false) : failed({ kind: 'neither-yes-nor-no', name, text: text.trim() });
}
