import { useMemo } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { OptionsPaper } from '#renderer/print/options-paper.tsx';
import { benchSection } from '#renderer/drawing/section-of.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { optionsCsv } from '#shared-calc/papers/options-csv.ts';
import { optionsPage } from '#shared-calc/papers/options-page.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface OptionsParts {
  readonly job: Job;
  readonly context: BookContext;
}

/** The sizes of a job side by side, for its client to choose from. */
export function OptionsView({ job, context }: OptionsParts) {
  const { records, workshop, display, today } = context;
  const { options, drawings } = useMemo(() => optionsOf({ job, context }), [job, records, today, display]);
  if (options.length === 0) return <EmptyNote>{job.id} has no size yet: take some on the size bench.</EmptyNote>;
  return (
    <OptionsPaper
      title={job.title}
      client={job.client}
      recipe={records.recipe.get(job.recipe)?.title ?? job.recipe}
      on={today}
      letterhead={letterheadOf(workshop)}
      options={options}
      drawings={drawings}
      display={display}
    />
  );
}

/** The options page as a list. */
export function optionsList(parts: OptionsParts): string {
  return optionsCsv(optionsOf(parts).options, parts.context.workshop);
}

function optionsOf({ job: { id }, context: { records, today, job: jobOf } }: OptionsParts) {
  const job = jobOf(id);
  if (!job) return { options: [], drawings: [] };
  const { bench, pricing } = job;
  const options = optionsPage({ bench, pricing, records, on: today });
  const drawings = options.map(({ size, called }) => ({ size, called, figures: benchSection(bench, size) }));
  return { options, drawings };
}
