import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { JobFault } from './job-fault.ts';

/** A cell to write over, of one size by its key, or of the whole job. Without a text it follows the house again. */
export interface Writing {
  readonly column?: string;
  readonly line: string;
  readonly text: string | undefined;
}

/**
 * Reads `line=RULE` for the whole job, `T07.line=RULE` for one size, `T07#2.line=RULE` for its second column. An empty
 * text is a missing figure.
 */
export function readWriting(text: string): Result<Writing, JobFault> {
  const [, column, line, rule] = /^(?:([^.=]+)\.)?([^.=\s]+)\s*=(.*)$/s.exec(text) ?? [];
  if (line === undefined) return failed({ kind: 'no-set', text });
  return ok({ line, text: (rule ?? '').trim(), ...(column !== undefined && { column }) });
}
