import { tankShapes } from '#shared-calc/fields/tank.ts';
import { showsInches } from '#shared-calc/quantity/shown-unit.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { sizeWords } from '#shared-calc/recipe/size-words.ts';
import { typedSides } from '#shared-calc/recipe/tank-figures.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { frozenHouses, frozenLines, type FrozenColumn, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { givenWords } from '#shared-calc/prepare/given-words.ts';

/** A size on a printed quote, with the figures of its drawing. */
export interface QuoteSize {
  readonly size: string;
  readonly called: string;
  readonly tank: string;
  readonly shape: string;
  /** `900 × 445 × 600 mm`, or the sentence of another shape. */
  readonly inside: string;
  /** `900 × 445 × 600 mm inside` */
  readonly says: string;
  /** Its drawing is read in inches. */
  readonly inches: boolean;
  readonly kit: string;
  readonly count: number;
  /** The title of its recipe, where it is not that of the job. */
  readonly builtAs?: string;
  readonly figures: FrozenColumn['figures'];
  /** The lines that it is worked from. */
  readonly lines: readonly Line[];
}

export function quoteSizes(body: QuoteBody): readonly QuoteSize[] {
  return body.columns.map((column) => {
    const { key, tank, count, figures } = column;
    const lines = frozenLines(body, column);
    const chosen = (use: UseName) => frozenValue(column, lineFor(lines, use));
    const recipe = frozenHouses(body)[column.house ?? 0]?.recipe;
    const says = frozenSize(column, body);
    return {
      size: key,
      called: frozenCalled(column),
      tank: tank.label,
      shape: String(chosen('tankShape') ?? tank.shape),
      inside: says.replace(/ inside$/, ''),
      says,
      inches: showsInches(displayOf(body.workshop)),
      kit: String(chosen('kit') ?? ''),
      count,
      ...(recipe && recipe.id !== body.recipe.id && { builtAs: recipe.title }),
      figures,
      lines,
    };
  });
}

/** The words for a size of a quote; quotes issued before sizes had names may have the tank's label there. */
export function frozenCalled({ key, label, tank }: FrozenColumn): string {
  return calledOf({ key, label: label === tank.label ? '' : label });
}

/** The value of a line, in its own unit; `undefined` if it was not known. */
function frozenValue(
  { figures }: Pick<FrozenColumn, 'figures'>,
  line: Line | undefined,
): number | string | boolean | undefined {
  return line && figures[line.name];
}

/** A frozen figure in a unit of its own dimension; `undefined` if it was not known or is not a figure. */
export function frozenFigure(column: FrozenColumn, line: Line | undefined, unit: string): number | undefined {
  const value = frozenValue(column, line);
  return typeof value === 'number'
    ? cleanNoise(fromBase(toBase(value, unitOf(line?.unit ?? unit)), unitOf(unit)))
    : undefined;
}

/** A frozen figure with its unit, in the workshop's units. */
export function frozenText(value: number | string | boolean, line: Line, body: QuoteBody): string {
  const base = typeof value === 'number' ? toBase(value, unitOf(line.unit)) : value;
  return givenWords(base, line.unit, displayOf(body.workshop));
}

/** The size of a quote in words, by its frozen figures; as typed where the tank's own figure was not written over. */
function frozenSize(column: FrozenColumn, body: QuoteBody): string {
  const lines = frozenLines(body, column);
  const typed = typedSides(column.tank);
  const sideOf = (use: UseName) => {
    const mm = frozenFigure(column, lineFor(lines, use), 'mm');
    if (mm === undefined) return undefined;
    return { value: toBase(mm, unitOf('mm')), typed: textFor(mm, typed.get(use)) };
  };
  const shape = frozenValue(column, lineFor(lines, 'tankShape'));
  return sizeWords(tankShapes.find((each) => each === shape) ?? column.tank.shape, sideOf, displayOf(body.workshop));
}

function textFor(mm: number, text: string | undefined): string | undefined {
  const read = text === undefined ? undefined : readFigure(text, { unit: 'mm' });
  return read?.ok && cleanNoise(fromBase(read.value.value, unitOf('mm'))) === cleanNoise(mm) ? text : undefined;
}
