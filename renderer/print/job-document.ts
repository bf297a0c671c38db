import type { Derived } from '#shared-calc/derive/derived.ts';
import { paperKinds } from '#shared-calc/papers/all-papers.ts';
import type { PaperDocument } from '#shared-calc/papers/document.ts';
import { jobPaperInput } from '#shared-calc/papers/paper-input.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayPaperFault } from '#shared-calc/words/say-paper-fault.ts';

/** A paper of a job, or why there is none. */
export function jobDocument(derived: Derived, job: string, kind: string): Result<PaperDocument, string> {
  const input = jobPaperInput(derived, job);
  const paper = paperKinds.find((each) => each.kind === kind);
  if (!input || !paper) return failed('Open a job first.');
  if (input.sheet.columns.length === 0 && paper.of !== 'job') return failed(`${job} has no size yet: take one first.`);
  const made = paper.make(input);
  return made.ok ? ok(made.value.document) : failed(sayPaperFault(made.fault, calledByLines(input.bench.input())));
}
