import { useMemo } from 'preact/hooks';
import { Checkbox } from '#renderer/kit/checkbox.tsx';
import { Table } from '#renderer/kit/table.tsx';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { figuresBetween, recipeDiff, type FigurePair, type LineDifference } from '#shared-calc/derive/recipe-diff.ts';
import { headingOf } from '#shared-calc/fields/record-fields.ts';
import { showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import type { LineMark } from '#shared-calc/recipe/family-marks.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { houseTextOf } from '#shared-calc/recipe/range-text.ts';
import { entryText } from '#shared-calc/recipe/typed-text.ts';
import { withHeld } from '#shared-calc/recipe/whole-recipe.ts';
import type { Line, Recipe } from '#shared-calc/records/records.ts';

interface TableParts {
  readonly derived: Derived;
  readonly recipe: Recipe;
  readonly other: string;
  readonly tank: string;
  /** What can be taken or sent up. */
  readonly marks: readonly LineMark[];
  /** What differs for some tanks alone. */
  readonly limited: readonly LineMark[];
  readonly chosen: ReadonlySet<string>;
  readonly turn: (line: string, on: boolean) => void;
}

interface Row extends LineDifference {
  readonly mark: LineMark | undefined;
}

/** The lines that differ between two recipes, with what each comes to on a tank; those of the parent are chosen here. */
export function DifferenceTable({ derived, recipe, other, tank, marks, limited, chosen, turn }: TableParts) {
  const { records, display } = derived;
  const sides = [
    { records, recipe: other },
    { records, recipe: recipe.id },
  ] as const;
  const rows = useMemo(
    () => rowsOf(recipeDiff(...sides), { marks, limited }),
    [records, other, recipe.id, marks, limited],
  );
  const figures = useMemo(() => figuresBetween(...sides, tank), [records, other, recipe.id, tank]);
  const free = new Set([...marks, ...(other === recipe.parent ? limited : [])].map(({ name }) => name));
  const nameOf = (row: Row) =>
    free.has(row.line) ? (
      <Checkbox label={labelOf(row)} on={chosen.has(row.line)} turn={(on) => turn(row.line, on)} />
    ) : (
      labelOf(row)
    );
  return (
    <Table<Row>
      label="Lines that differ"
      rows={rows}
      empty={`No line differs from ${other}.`}
      keyOf={({ line, mark }) => `${line} ${mark?.tanks?.join(' ') ?? ''}`}
      columns={[
        { head: 'Line', names: true, cell: nameOf },
        { head: other, cell: ({ left }) => textOf(left, display) },
        { head: recipe.id, cell: (row) => `${textOf(row.right, display)}${toldOf(row)}` },
        { head: `On ${tank}`, figure: true, cell: (row) => figureOf(row, figures.get(row.line), { tank, display }) },
        { head: 'Since', cell: ({ mark }) => sinceOf(mark, other) },
      ]}
    />
  );
}

/** What differs for some tanks stands under what differs for all. */
function rowsOf(
  differences: readonly LineDifference[],
  { marks, limited }: Pick<TableParts, 'marks' | 'limited'>,
): readonly Row[] {
  const markOf = new Map(marks.map((mark) => [mark.name, mark]));
  const whole = differences.map((row): Row => ({ ...row, mark: markOf.get(row.line) }));
  const known = new Set(whole.map(({ line }) => line));
  const under = Map.groupBy(limited.flatMap(limitedRow), ({ line }) => line);
  const alone = [...under].flatMap(([line, rows]) => (known.has(line) ? [] : rows));
  return [...whole.flatMap((row) => [row, ...(under.get(row.line) ?? [])]), ...alone];
}

function limitedRow(mark: LineMark): readonly Row[] {
  const { parent, name: line } = mark;
  if (!parent || !mark.mark) return [];
  return [{ line, change: 'changed', left: parent, right: withHeld(parent, mark.mark.fields), keys: [], mark }];
}

interface OnTank {
  readonly tank: string;
  readonly display: Display;
}

/** A row for some tanks has no figure on another one. */
function figureOf({ left, right, mark }: Row, pair: FigurePair | undefined, { tank, display }: OnTank): string {
  const unit = (right ?? left)?.unit ?? 'number';
  const said = (value: FigurePair['from']) => (value === undefined ? '-' : showWithUnit(value, unit, display));
  if (!pair || mark?.tanks?.includes(tank) === false) return '';
  return pair.moved ? `${said(pair.from)} → ${said(pair.to)}` : said(pair.to);
}

function textOf(line: Line | undefined, display: Display): string {
  if (!line) return 'not there';
  const text = entryText(houseTextOf(line), display);
  return text === '' ? 'no figure' : text;
}

function labelOf({ left, right, line, mark }: Row): string {
  const of = right ?? left;
  const tanks = mark?.tanks ? `, on ${mark.tanks.join(', ')}` : '';
  return `${of ? lineLabel(of) : line}${tanks}`;
}

/** What differs beside the figure: `, note`. */
function toldOf({ keys, left, right }: LineDifference): string {
  if (keys.length === 0 || left?.text !== right?.text) return '';
  return ` (${keys.map((key) => headingOf('line', key).toLowerCase()).join(', ')})`;
}

function sinceOf(mark: LineMark | undefined, parent: string): string {
  if (!mark || mark.moved.length === 0) return '';
  const was = mark.moved.includes('text') ? mark.mark?.was.text : undefined;
  const of = mark.tanks ? 'other tanks' : parent;
  return typeof was === 'string' && was !== '' ? `${of} had ${was}` : `${of} changed`;
}
