import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula';
import { emitRule } from '#shared-calc/rule/emit-rule.ts';
import type { Rule } from '#shared-calc/rule/tree.ts';
import type { BoxContent, BoxValue } from './box-content.ts';
import { readCause } from './cause-text.ts';
import { registerRuleFunctions } from './formula-functions.ts';
import { openSlots } from './slots.ts';

export interface BoxWrite {
  readonly column: string;
  readonly line: string;
  readonly content: BoxContent;
}

/** Lines x sizes on one sheet of the engine: a column for each size, a row for each line, in no particular order. */
export interface Grid {
  /** Writes cells and works out everything that reads them, at once. Lines and columns are added when first named. */
  readonly write: (writes: readonly BoxWrite[]) => void;
  readonly read: (column: string, line: string) => BoxValue;
  /** Empties the cells of some lines in one column. */
  readonly removeBoxes: (column: string, lines: readonly string[]) => void;
  readonly removeLine: (line: string) => void;
  readonly removeColumn: (column: string) => void;
  readonly close: () => void;
}

const SHEET = 0;
const options = {
  licenseKey: 'gpl-v3',
  smartRounding: false,
  caseSensitive: true,
  accentSensitive: true,
  useStats: false,
  // The book has its own journal; with the engine's undo on, every write walks all earlier ones.
  undoLimit: 0,
} as const;

/** An empty grid over the engine with the trade functions in it. */
export function openGrid(): Grid {
  registerRuleFunctions();
  const engine = HyperFormula.buildFromArray([[]], options);
  const rows = openSlots();
  const columns = openSlots();
  const at = (column: string, line: string) => ({ sheet: SHEET, col: columns.of(column), row: rows.of(line) });

  const together = (write: () => void): void => {
    engine.suspendEvaluation();
    write();
    engine.resumeEvaluation();
  };
  const addressIn = (column: string) => {
    const letters = columnLetters(columns.of(column));
    return (line: string) => `${letters}${rows.of(line) + 1}`;
  };
  const put = (run: Run): void => {
    const [{ column, line }] = run;
    engine.setCellContents(at(column, line), contentsFor(run, addressIn(column)));
  };
  const empty = (boxes: readonly (readonly [column: string, line: string])[]): void => {
    together(() => {
      for (const [column, line] of boxes) engine.setCellContents(at(column, line), [[null]]);
    });
  };
  return {
    write(writes) {
      together(() => {
        runsOf(writes, rows.of).forEach(put);
      });
    },
    read(column, line) {
      const value = engine.getCellValue(at(column, line));
      if (value instanceof DetailedCellError) return problemOf(value, line, rows.named);
      if (value === null) return { known: false, problem: { why: 'missing', line } };
      return { known: true, value };
    },
    removeBoxes: (column, lines) => empty(lines.filter(rows.has).map((line) => [column, line])),
    removeLine(line) {
      if (!rows.has(line)) return;
      empty(columns.names().map((column) => [column, line]));
      rows.free(line);
    },
    removeColumn(column) {
      if (!columns.has(column)) return;
      empty(rows.names().map((line) => [column, line]));
      columns.free(column);
    },
    close: () => engine.destroy(),
  };
}

/** Cells of a size in consecutive rows: the engine writes them in one call. */
type Run = [BoxWrite, ...BoxWrite[]];

function runsOf(writes: readonly BoxWrite[], rowOf: (line: string) => number): readonly Run[] {
  const runs: Run[] = [];
  for (const write of writes) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (last?.column === write.column && rowOf(write.line) === rowOf(last.line) + 1) run?.push(write);
    else runs.push([write]);
  }
  return runs;
}

function contentsFor(run: Run, addressOf: (line: string) => string): RawCellContent[][] {
  return run.map(({ content }) => [contentFor(content, addressOf)]);
}

/** A cell's content for the engine. Only our own rules start with `=`, so no typed text is parsed as one. */
function contentFor(content: BoxContent, addressOf: (line: string) => string): RawCellContent {
  if (content.is === 'nothing') return `=LW_${content.why.toUpperCase()}()`;
  if (content.is === 'figure') return typeof content.value === 'string' ? `'${content.value}` : content.value;
  return `=${formulaOf(content.rule, addressOf)}`;
}

const templates = new WeakMap<Rule, readonly string[]>();

/** A rule as the engine's text; the part that does not depend on the column is cached by rule. */
function formulaOf(rule: Rule, addressOf: (line: string) => string): string {
  let parts = templates.get(rule);
  if (!parts) {
    parts = emitRule(rule, (name) => `\u0001${name}\u0001`).split('\u0001');
    templates.set(rule, parts);
  }
  return parts.map((part, at) => (at % 2 === 1 ? addressOf(part) : part)).join('');
}

function problemOf(error: DetailedCellError, line: string, nameOfRow: (row: number) => string | undefined): BoxValue {
  const row = /(\d+)$/.exec(error.address ?? '')?.[1];
  const first = row === undefined ? undefined : nameOfRow(Number(row) - 1);
  return { known: false, problem: { ...readCause(error.message, error.type), line: first ?? line } };
}

function columnLetters(index: number): string {
  const letter = String.fromCodePoint(65 + (index % 26));
  return index < 26 ? letter : columnLetters(Math.floor(index / 26) - 1) + letter;
}
