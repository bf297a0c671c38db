import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { unsureWords } from '#shared-calc/bench/check-state.ts';
import type { Box } from '#shared-calc/bench/bench-types.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { csvText, type CsvCell } from './csv-text.ts';

/** An end of the range of a cell; the figure itself if no guess moves it, nothing if its range is not known. */
function endOf({ range, value }: Box, end: 'from' | 'to'): Box['value'] {
  if (range === undefined) return value;
  return range === 'not known' ? undefined : range[end];
}

/**
 * The size bench as CSV: a row for each line, a field for each size; unrounded figures in the unit of the row. A line
 * that guesses move has two rows more, for the ends of its range.
 */
export function benchCsv(bench: Bench, lines: readonly Line[], display: Display): string {
  const columns = bench.input().columns;
  const head: CsvCell[] = ['section', 'line', 'label', 'unit', ...columns.map((column) => column.key)];
  const rows = lines.flatMap((line): CsvCell[][] => {
    const unit = shownUnit(line.unit, display);
    const boxes = columns.map((column) => bench.box(column.key, line.name));
    const figure = (value: Box['value']): CsvCell => {
      if (typeof value === 'number') return cleanNoise(fromBase(value, unitOf(unit)));
      return typeof value === 'boolean' ? (value ? 'yes' : 'no') : (value ?? '');
    };
    const row = (behind: string, valueOf: (box: Box) => Box['value']): CsvCell[] => {
      const name = [line.section, `${line.name}${behind}`, `${lineLabel(line)}${behind}`, unit];
      return [...name, ...boxes.map((box) => figure(valueOf(box)))];
    };
    const likely = row('', (box) => unsureWords(box) ?? box.value);
    if (boxes.every(({ range }) => range === undefined)) return [likely];
    return [likely, row(', from', (box) => endOf(box, 'from')), row(', to', (box) => endOf(box, 'to'))];
  });
  return csvText([head, ...rows], display);
}
