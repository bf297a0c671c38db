import { FieldEntry } from '#renderer/books/field-entry.tsx';
import type { JobPart } from './job-part.ts';

/** The narrowest door, stair or lift on the tank's way in; each size is checked against it. */
export function NarrowestEntry({ job, context, api }: JobPart) {
  return (
    <FieldEntry
      kind="job"
      record={job}
      field="narrowestMm"
      context={context}
      put={({ narrowestMm = null }) => api.doAct('writeJob', { job: job.id, fields: { narrowestMm } })}
    />
  );
}
