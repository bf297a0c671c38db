import type { BookContext } from '#renderer/books/book-api.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { jobDocument } from '#renderer/print/job-document.ts';
import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface PaperParts {
  readonly job: Job;
  readonly context: BookContext;
  readonly kind: 'needs' | 'pick';
}

/** The needs list or the pick list of a job. */
export function JobPaper({ job, context, kind }: PaperParts) {
  const document = jobDocument(context, job.id, kind);
  if (!document.ok) return <EmptyNote>{document.fault}</EmptyNote>;
  return (
    <PaintedPaper
      document={document.value}
      letterhead={letterheadOf(context.workshop)}
      {...(kind === 'pick' && { look: 'large' })}
    />
  );
}
