import { failed, ok, type Result } from '#shared-calc/result.ts';

const yes = new Set(['yes', 'y', 'true', '1']);
const no = new Set(['no', 'n', 'false', '0', '']);

/** Reads yes or no; nothing is no. */
export function readYesNo(text: string): Result<boolean, string> {
  const word = text.trim().toLowerCase();
  if (yes.has(word)) return ok(true);
  return no.has(word) ? ok(false) : failed(`"${text.trim()}" is neither yes nor no.`);
}
