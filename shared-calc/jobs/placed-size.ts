import { boxFor, figureFor, inUnit } from '#shared-calc/bench/figure-for.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import { calledOf, type ColumnInput } from '#shared-calc/recipe/column.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';

/** A figure and the worst that its guesses make of it. */
export interface Spread {
  readonly likely: number;
  readonly worst: number;
}

/** A size as it stands at its place. What is not known yet is left `undefined`. */
export interface PlacedSize {
  readonly key: string;
  readonly called: string;
  readonly count: number;
  /** Outside, mm; the height with the cover glass on. */
  readonly lengthMm: number | undefined;
  readonly depthMm: number | undefined;
  readonly heightMm: number | undefined;
  /** One tank, filled, with its drain blocked. */
  readonly massKg: Spread | undefined;
  readonly ratingKg: number | undefined;
  /** Share of the rating that is used. */
  readonly shelfShare: number;
  readonly sunM2: number | undefined;
  readonly hottestC: Spread | undefined;
  readonly ceilingC: number | undefined;
}

/** Reads a size's figures by use, in a unit. */
export interface PlacedFigures {
  readonly has: (use: UseName) => boolean;
  readonly figure: (use: UseName, unit: string) => number | undefined;
  readonly worst: (use: UseName, unit: string) => Spread | undefined;
}

export function placedSize(
  { key, label, count }: Pick<ColumnInput, 'key' | 'label' | 'count'>,
  { has, figure, worst }: PlacedFigures,
): PlacedSize {
  const heights = (['insideHeight', 'baseGlass', ...(has('coverGlass') ? (['coverGlass'] as const) : [])] as const).map(
    (use) => figure(use, 'mm'),
  );
  return {
    key,
    called: calledOf({ label, key }),
    count,
    lengthMm: figure('outsideLength', 'mm'),
    depthMm: figure('outsideDepth', 'mm'),
    heightMm: heights.reduce((sum, each) => (sum === undefined || each === undefined ? undefined : sum + each), 0),
    massKg: worst(has('worstMass') ? 'worstMass' : 'filledMass', 'kg'),
    ratingKg: figure('shelfRating', 'kg'),
    shelfShare: has('shelfShare') ? (figure('shelfShare', 'share') ?? 0) : 1,
    sunM2: figure('sunArea', 'm2'),
    hottestC: worst('hottestDay', 'degC'),
    ceilingC: figure('speciesCeiling', 'degC'),
  };
}

/** A size of a bench. */
export function placedSizeOn(bench: Bench, column: ColumnInput): PlacedSize {
  return placedSize(column, figuresOf(bench, column.key));
}

/** Every size of a bench. */
export function placedSizes(bench: Bench): readonly PlacedSize[] {
  return bench.input().columns.map((column) => placedSizeOn(bench, column));
}

function figuresOf(bench: Bench, column: string): PlacedFigures {
  return {
    has: (use) => lineFor(bench.lines(column), use) !== undefined,
    figure: (use, unit) => figureFor(bench, column, use, unit),
    worst: (use, unit) => {
      const { value, range } = boxFor(bench, column, use) ?? {};
      const likely = inUnit(value, unit);
      const most = range === 'not known' ? undefined : inUnit(range?.to ?? value, unit);
      return likely === undefined || most === undefined ? undefined : { likely, worst: most };
    },
  };
}
