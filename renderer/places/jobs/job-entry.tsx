import { FieldEntry } from '#renderer/books/field-entry.tsx';
import type { JobFields } from '#shared-calc/acts/job-acts.ts';
import type { JobPart } from './job-part.ts';

/** An input for one field of a job. */
export function JobEntry({ job, context, api, field }: JobPart & { readonly field: keyof JobFields }) {
  return (
    <FieldEntry
      kind="job"
      record={job}
      field={field}
      context={context}
      put={(to) => api.doAct('writeJob', { job: job.id, fields: { [field]: to[field] ?? null } })}
    />
  );
}
