import { keptText } from '#shared-calc/recipe/kept-text.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { JobFault } from './job-fault.ts';
import type { Writing } from './read-writing.ts';

/** What is to be written over, as the book keeps it: figures with a point, whatever sign the workshop writes. */
export function keptWritings(
  writings: readonly Writing[],
  lines: readonly Line[],
  decimalComma: boolean,
): Result<readonly Writing[], JobFault> {
  const kept: Writing[] = [];
  for (const writing of writings) {
    const line = lines.find((each) => each.name === writing.line);
    const text = line && writing.text !== undefined ? keptText(writing.text, line, decimalComma) : ok(writing.text);
    if (!text.ok)
      return failed({ kind: 'unreadable', line: writing.line, text: writing.text ?? '', fault: text.fault });
    kept.push({ ...writing, text: text.value });
  }
  return ok(kept);
}
