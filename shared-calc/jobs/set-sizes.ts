import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records, Size } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { findJob, freeId } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { sizesOf, sizeWords } from './job-sheet.ts';
import { putRecords } from './put-records.ts';
import { checkSize, type WantedSize } from './read-sizes.ts';

/**
 * Gives a job these sizes, in this order. A size whose tank stays keeps its local values, and its recipe where none is
 * named; a removed size loses them,
 * and is refused if something has been measured of it.
 */
export function setSizes(records: Records, id: string, wanted: readonly WantedSize[]): Result<Change, JobFault> {
  const job = findJob(records, id);
  if (!job.ok) return job;
  for (const size of wanted) {
    const checked = checkSize(size, records);
    if (!checked.ok) return checked;
  }
  const next = sizesFor(records, id, wanted);
  const gone = sizesOf(records, id).filter((size) => !next.some((each) => each.id === size.id));
  const measured = gone.find((size) => [...records.actual.values()].some((actual) => actual.size === size.id));
  if (measured) return failed({ kind: 'size-measured', size: measured.id });
  const goneIds = gone.map((size) => size.id);
  const locals = [...records.localValue.values()].filter((each) => goneIds.includes(each.size ?? ''));
  const label = wanted.length === 0 ? `${id}: no size` : `${id}: sizes ${wanted.map(sizeWords).join(', ')}`;
  return ok(
    diffRecords(label, records, {
      ...records,
      size: putRecords(records.size, next, goneIds),
      localValue: putRecords(
        records.localValue,
        [],
        locals.map((each) => each.id),
      ),
    }),
  );
}

/** Records for these sizes: the k-th of a tank stays the k-th of that tank. */
function sizesFor(records: Pick<Records, 'job' | 'size'>, job: string, wanted: readonly WantedSize[]): readonly Size[] {
  const old = [...sizesOf(records, job)];
  const taken = new Map(records.size);
  const usual = records.job.get(job)?.recipe;
  return wanted.map(({ tank, count, recipe }, at) => {
    const same = old.findIndex((size) => size.tank === tank && recipe === (size.recipe ?? usual));
    const place = same < 0 ? old.findIndex((size) => size.tank === tank) : same;
    const [known] = place < 0 ? [] : old.splice(place, 1);
    const { recipe: before, ...kept } = known ?? newSize(job, tank, taken);
    const own = recipe ?? before;
    const size = { ...kept, order: at + 1, count, ...(own !== undefined && own !== usual && { recipe: own }) };
    taken.set(size.id, size);
    return size;
  });
}

function newSize(job: string, tank: string, taken: ReadonlyMap<string, Size>): Size {
  return { id: freeId(`${job}-${tank}`, taken), job, tank, order: 0, label: '', count: 1 };
}
