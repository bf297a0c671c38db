import type { Missing } from '#shared-calc/buy/missing.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';
import type { NoAmount } from './order-amounts.ts';
import { waitOf } from './waits.ts';

/**
 * The figures that cells without a value wait for, each once for a size: `T15, dam height`. A cell that has its figures
 * and yet no answer is a fault.
 */
export function missingMeasures(bench: Bench, boxes: readonly Box[]): Result<readonly Missing[], NoAmount> {
  const columns = new Map(bench.input().columns.map((column) => [column.key, column]));
  const found = new Map<string, Missing>();
  for (const box of boxes) {
    const column = columns.get(box.column);
    const wait = waitOf(bench, box.column, box.line.name);
    if (!column || !wait?.isMissing) return failed({ kind: 'no-amount-yet', box });
    const at = { line: wait.line.name, column: box.column };
    const label = `${calledOf(column)}, ${inSentence(lineLabel(wait.line))}`;
    found.set(JSON.stringify(at), { what: 'measure', of: column.tank.id, label, at });
  }
  return ok([...found.values()]);
}
