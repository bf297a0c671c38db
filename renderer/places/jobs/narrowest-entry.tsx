import { FieldEntry } from '#renderer/books/field-entry.tsx';
import type { JobPart } from './job-part.ts';

/** The narrowest door, stair or lift that the tank is carried through; it is held against each size. */
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
