import { boxWarnings } from '#shared-calc/bench/box-warnings.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Sourced } from '#shared-calc/fields/source.ts';
import { sourceOf } from '#shared-calc/bench/rests-on.ts';
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

/** Where house or animal kind have the figure from; left out where they do not say. */
function jsonSource({ source, sourceNote = '' }: Sourced): Record<string, unknown> {
  return source === undefined ? {} : { source: { from: source, note: sourceNote } };
}

/** A cell as `bench --json` gives it. */
export function jsonBox(bench: Bench, box: Box): Record<string, unknown> {
  const common = {
    unit: box.line.unit,
    state: box.state,
    flags: box.flags,
    rule: box.text,
    ...jsonSource(sourceOf(bench, box)),
    warnings: boxWarnings(bench, box),
  };
  if (box.value !== undefined) return { value: jsonValue(box.value, box.line.unit), ...jsonRange(box), ...common };
  return { value: null, ...common, ...(box.cause && { fault: sayBoxCause(box.cause, box.line.name) }) };
}
