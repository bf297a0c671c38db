import {
  figuresBetween,
  recipeDiff,
  tankDiff,
  type Figure,
  type LineDifference,
  type RecipeSide,
} from '#shared-calc/derive/recipe-diff.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { limitedTanks } from '#shared-calc/recipe/limited-tanks.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { houseTextOf } from '#shared-calc/recipe/range-text.ts';
import { showWithUnit } from '#shared-calc/quantity/shown-unit.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { jsonValue } from './json-figure.ts';
import { textTable } from './text-table.ts';

/** Two recipes, or two states of one, with the tanks that they are compared on. */
export interface Compared {
  readonly left: RecipeSide;
  readonly right: RecipeSide;
  readonly tanks: readonly string[];
}

/** What differs, as `--json` gives it. */
export function diffJson(compared: Compared): Record<string, unknown> {
  const lines = recipeDiff(compared.left, compared.right);
  const figures = figuresOf(compared);
  const own = new Set(lines.map(({ line }) => line));
  return {
    lines: lines.map((each) => ({
      line: each.line,
      change: each.change,
      left: textOf(each.left),
      right: textOf(each.right),
      fields: each.keys,
      figures: figures.of(each.line, true),
    })),
    follows: figures.moved.filter((line) => !own.has(line)).map((line) => ({ line, figures: figures.of(line, false) })),
  };
}

function textOf(line: Line | undefined): string | null {
  return line ? houseTextOf(line) : null;
}

interface Figures {
  /** Lines that come to something else on one of the tanks. */
  readonly moved: readonly string[];
  readonly of: (line: string, always: boolean) => Record<string, readonly [Plain, Plain]>;
}

type Plain = number | string | boolean | null;

function figuresOf({ left, right, tanks }: Compared): Figures {
  const units = new Map(
    [left, right].flatMap((side) => linesOf(side.records, side.recipe).map((line) => [line.name, line.unit])),
  );
  const pairs = tanks.map((tank) => [tank, figuresBetween(left, right, tank)] as const);
  const plain = (value: Figure, line: string): Plain =>
    value === undefined ? null : jsonValue(value, units.get(line) ?? 'number');
  return {
    moved: [
      ...new Set(pairs.flatMap(([, figures]) => [...figures].flatMap(([line, { moved }]) => (moved ? line : [])))),
    ],
    of: (line, always) =>
      Object.fromEntries(
        pairs.flatMap(([tank, figures]) => {
          const pair = figures.get(line);
          return pair && (always || pair.moved)
            ? [[tank, [plain(pair.from, line), plain(pair.to, line)]] as const]
            : [];
        }),
      ),
  };
}

/** The tanks asked for, or those that either recipe has something for alone. */
function tanksOf({ left, right, tanks }: Compared): readonly string[] {
  if (tanks.length > 0) return tanks;
  return [...new Set([left, right].flatMap(({ records, recipe }) => limitedTanks(records, recipe)))].toSorted();
}

/** What differs, line by line, as a table. What differs on a tank alone, or otherwise there, follows. */
export function diffTable(compared: Compared, { display }: Pick<Derived, 'display'>): string {
  const { left: one, right: other } = compared;
  const limited = tanksOf(compared).map((tank) => ({ on: `, on ${tank}`, lines: tankDiff(one, other, tank) }));
  const rows = [{ on: '', lines: recipeDiff(one, other) }, ...limited].flatMap(({ on, lines }) =>
    lines.map((each) => ({ ...each, on })),
  );
  if (rows.length === 0) return 'No line differs.';
  const pairs = compared.tanks.map((tank) => figuresBetween(compared.left, compared.right, tank));
  const shown = ({ line, left, right }: LineDifference) =>
    pairs.map((figures) => {
      const pair = figures.get(line);
      const unit = (right ?? left)?.unit ?? 'number';
      const said = (value: Figure) => (value === undefined ? '-' : showWithUnit(value, unit, display));
      return pair ? `${said(pair.from)} -> ${said(pair.to)}` : '';
    });
  return textTable(
    ['line', 'change', compared.left.recipe, compared.right.recipe, ...compared.tanks],
    rows.map((each) => {
      const of = each.right ?? each.left;
      const [from, to] = [textOf(each.left) ?? '-', textOf(each.right) ?? '-'];
      const told = from === to && each.change === 'changed' ? ` (${each.keys.join(', ')})` : '';
      return [`${of ? lineLabel(of) : each.line}${each.on}`, each.change, from, `${to}${told}`, ...shown(each)];
    }),
  );
}
