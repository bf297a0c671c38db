import type { Warning } from '#shared-calc/cautions/warning.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import { houseSource } from '#shared-calc/bench/rests-on.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { sayBoxCause } from '#shared-calc/words/say-box-cause.ts';

/** A value in a stated unit for programs: not rounded, except that binary noise is removed. */
export function jsonValue(value: number | string | boolean, unit: string): number | string | boolean {
  return typeof value === 'number' ? cleanNoise(fromBase(value, unitOf(unit))) : value;
}

function jsonRange({ range, line }: Box): Record<string, unknown> {
  if (range === undefined) return {};
  if (range === 'not known') return { from: null, to: null, fromBy: null, toBy: null };
  const { from, to, fromBy, toBy } = range;
  return { from: jsonValue(from, line.unit), to: jsonValue(to, line.unit), fromBy, toBy };
}

/** Where the house has the figure from; left out where it does not say. */
function jsonSource(box: Box): Record<string, unknown> {
  const { source, sourceNote = '' } = houseSource(box);
  return source === undefined ? {} : { source: { from: source, note: sourceNote } };
}

/** A cell as `bench --json` gives it. */
export function jsonBox(box: Box, warnings: readonly Warning[]): Record<string, unknown> {
  const { line, state, flags, text: rule } = box;
  const common = { unit: line.unit, state, flags, rule, ...jsonSource(box), warnings };
  if (box.value !== undefined) return { value: jsonValue(box.value, box.line.unit), ...jsonRange(box), ...common };
  return { value: null, ...common, ...(box.cause && { fault: sayBoxCause(box.cause, box.line.name) }) };
}
