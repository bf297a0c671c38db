import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { csvText, type CsvCell } from './csv-text.ts';

/** The size bench as CSV: a row for each line, a field for each size; unrounded figures in the unit of the row. */
export function benchCsv(bench: Bench, lines: readonly Line[], display: Display): string {
  const columns = bench.input().columns;
  const head: CsvCell[] = ['section', 'line', 'label', 'unit', ...columns.map((column) => column.key)];
  const rows = lines.map((line): CsvCell[] => {
    const unit = shownUnit(line.unit, display);
    const cells = columns.map((column): CsvCell => {
      const { value } = bench.box(column.key, line.name);
      if (typeof value === 'number') return cleanNoise(fromBase(value, unitOf(unit)));
      return typeof value === 'boolean' ? (value ? 'yes' : 'no') : (value ?? '');
    });
    return [line.section, line.name, lineLabel(line), unit, ...cells];
  });
  return csvText([head, ...rows], display);
}
