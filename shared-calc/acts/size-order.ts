import { z } from 'zod';
import { sizesOf } from '#shared-calc/jobs/job-sheet.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findColumn, jobCells } from './job-cells.ts';

const MoveSize = z.strictObject({
  job: z.string(),
  column: z.string().describe('The size by its key: T07, or T07#2.'),
  to: z
    .int()
    .min(0)
    .max(10_000)
    .describe('Its place among the sizes, from 0 at the left; past the last it is the last.'),
});

/** Moves a size among the sizes of its job: on the bench, and on every paper that lists them. */
export const moveSize = act<z.infer<typeof MoveSize>>({
  name: 'moveSize',
  says: 'Moves a size to another place among the sizes of its job.',
  input: MoveSize,
  run: (derived, { job, column, to }) => {
    const cells = jobCells(derived, job);
    if (!cells.ok) return cells;
    const found = findColumn(cells.value, column);
    if (!found.ok) return found;
    const { records } = derived;
    const size = records.size.get(found.value.size);
    if (!size) return failed({ kind: 'no-record', record: { kind: 'size', id: found.value.size } });
    const others = sizesOf(records, job).filter(({ id }) => id !== size.id);
    const order = orderAt(
      others.map((each) => each.order),
      to,
    );
    const isThere = sizesOf(records, job)[Math.min(to, others.length)]?.id === size.id;
    const moved = isThere ? records.size : putRecords(records.size, [{ ...size, order }]);
    return ok(diffRecords(`${column} moved`, records, { ...records, size: moved }));
  },
});

/** A number that sorts at that place among ascending ones. */
function orderAt(others: readonly number[], to: number): number {
  const before = others[to - 1] ?? others.at(-1);
  const after = others[to];
  if (after === undefined) return (before ?? 0) + 1;
  return to === 0 || before === undefined ? after - 1 : (before + after) / 2;
}
