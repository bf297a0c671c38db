import type { Warning } from '#shared-calc/cautions/warning.ts';
import { ruleWarnings } from '#shared-calc/engine/rule-warnings.ts';
import type { Box } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** What the functions in the rule of a cell warn of; nothing where it has no value. */
export function boxWarnings(bench: Bench, { rule, value, column }: Box): readonly Warning[] {
  if (!rule || value === undefined) return [];
  return ruleWarnings(rule, (line) => bench.box(column, line).value ?? { kind: 'missing', line });
}
