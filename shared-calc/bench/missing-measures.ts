import type { Missing } from '#shared-calc/buy/missing.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { inSentence, lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';
import { waitOf } from './waits.ts';

/** The lines that cells without a value wait for, each once for a size: `T15, dam height`. */
export function missingMeasures(bench: Bench, boxes: readonly Box[]): readonly Missing[] {
  const columns = new Map(bench.input().columns.map((column) => [column.key, column]));
  const found = new Map<string, Missing>();
  for (const { column: key, line: own } of boxes) {
    const column = columns.get(key);
    if (!column) continue;
    const { line = own, isMissing = true, what = '' } = waitOf(bench, key, own.name) ?? {};
    const at = { line: line.name, column: key };
    const label = `${calledOf(column)}, ${isMissing ? inSentence(lineLabel(line)) : what}`;
    found.set(JSON.stringify(at), { what: 'measure', of: column.tank.id, label, at });
  }
  return [...found.values()];
}
