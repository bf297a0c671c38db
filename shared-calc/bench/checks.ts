import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { CheckResult } from './bench-types.ts';
import type { Bench } from './open-bench.ts';

/** Every check of a size, in the recipe's order; the braces of its sentence are filled with the size's own figures. */
export function checksOf(bench: Bench, column: string, display: Display): readonly CheckResult[] {
  return bench
    .input()
    .lines.filter((line) => line.role === 'check')
    .map((line) => {
      const { value } = bench.box(column, line.name);
      return {
        line,
        level: line.level ?? 'watch',
        holds: typeof value === 'boolean' ? value : undefined,
        says: fillSentence(line.says ?? '', bench, column, display),
        decides: line.decides ?? '',
      };
    });
}

function fillSentence(says: string, bench: Bench, column: string, display: Display): string {
  const known = new Set(bench.input().lines.map((line) => line.name));
  return says.replaceAll(/\{(\w+)\}/g, (braces, name: string) => {
    if (!known.has(name)) return braces;
    const { value, line } = bench.box(column, name);
    return value === undefined ? `(${name} not known yet)` : showWithUnit(value, line.unit, display);
  });
}
