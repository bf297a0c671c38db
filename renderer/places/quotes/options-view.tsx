import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { jobDocument } from '#renderer/print/job-document.ts';
import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { DrawnSizes, type DrawnSize } from '#renderer/print/size-drawings.tsx';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { benchSection } from '#renderer/drawing/section-of.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { optionsCsv } from '#shared-calc/papers/options-csv.ts';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import { showsInches } from '#shared-calc/quantity/shown-unit.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface OptionsParts {
  readonly job: Job;
  readonly context: BookContext;
}

/** The sizes of a job side by side, for its client to choose from. */
export function OptionsView({ job, context }: OptionsParts) {
  const document = useMemo(() => jobDocument(context, job.id, 'options'), [job, context]);
  if (!document.ok) return <EmptyNote>{document.fault}</EmptyNote>;
  return (
    <PaintedPaper
      document={document.value}
      letterhead={letterheadOf(context.workshop)}
      picture={<DrawnSizes sizes={drawingsOf(context, job.id)} />}
    />
  );
}

function drawingsOf({ job: jobOf, display }: BookContext, id: string): readonly DrawnSize[] {
  const job = jobOf(id);
  if (!job) return [];
  const { bench } = job;
  return bench.input().columns.map(({ key, label }) => ({
    size: key,
    called: calledOf({ key, label }),
    figures: { ...benchSection(bench, key), inches: showsInches(display) },
  }));
}

/** The options page as a list. */
export function optionsList({ job: { id }, context }: OptionsParts): string {
  const { records, workshop, today: on } = context;
  const job = context.job(id);
  return optionsCsv(job ? optionsPage({ bench: job.bench, pricing: job.pricing, records, on }) : [], workshop);
}
