import type { Day } from '#shared-calc/calendar/day.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Job, QuoteLine, Records, Size } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { findJob, freeId, nextJobId } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { sizesOf } from './job-sheet.ts';
import { jobSheet } from './job-sheets.ts';
import type { JobMade } from './new-job.ts';
import { nextActOf } from './next-act.ts';
import { putRecords } from './put-records.ts';
import { storeLocals } from './store-sheet.ts';

/**
 * A new enquiry with the sizes, local values and one-off lines of another job; each value keeps its author. Quotes,
 * deposit and dates stay with the original.
 */
export function copyJob(records: Records, id: string, { on }: { readonly on: Day }): Result<JobMade, JobFault> {
  const found = findJob(records, id);
  if (!found.ok) return found;
  const { title, client, contact, recipe, site, access, audience, animals, area, basis, note, survey } = found.value;
  const job: Job = {
    client,
    contact,
    recipe,
    site,
    access,
    audience,
    animals,
    area,
    basis,
    note,
    survey,
    id: nextJobId(records),
    title: `Copy of ${title}`,
    state: 'enquiry',
    enquiredOn: on,
    nextAct: nextActOf('enquiry'),
  };
  const sizes = copiedSizes(records, id, job.id);
  const sheet = jobSheet(records, found.value);
  const columns = sheet.columns.map((column) => ({ ...column, size: sizes.get(column.size)?.id ?? column.size }));
  const bare = {
    ...records,
    job: putRecords(records.job, [job]),
    size: putRecords(records.size, [...sizes.values()]),
    quoteLine: putRecords(records.quoteLine, copiedLines(records, { lines: sheet.oneOffs, job: job.id, sizes })),
  };
  const label = `${job.id}: copy of ${id}`;
  return ok({ job: job.id, change: diffRecords(label, records, storeLocals(bare, job.id, { ...sheet, columns })) });
}

/** By the id of the size that each is a copy of. */
function copiedSizes(records: Records, from: string, to: string): ReadonlyMap<string, Size> {
  const taken = new Map(records.size);
  const copies = new Map<string, Size>();
  for (const size of sizesOf(records, from)) {
    const copy = { ...size, id: freeId(`${to}-${size.tank}`, taken), job: to };
    taken.set(copy.id, copy);
    copies.set(size.id, copy);
  }
  return copies;
}

interface CopiedLines {
  readonly lines: readonly QuoteLine[];
  readonly job: string;
  readonly sizes: ReadonlyMap<string, Size>;
}

function copiedLines(records: Records, { lines, job, sizes }: CopiedLines): readonly QuoteLine[] {
  const taken = new Map(records.quoteLine);
  return lines.map(({ size: from = '', ...line }) => {
    const size = sizes.get(from)?.id;
    const copy = { ...line, id: freeId(`${job}-${line.group}`, taken), job, ...(size !== undefined && { size }) };
    taken.set(copy.id, copy);
    return copy;
  });
}
