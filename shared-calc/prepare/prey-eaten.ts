import { calledOf, type ColumnInput } from '#shared-calc/recipe/column.ts';
import type { AnimalKind } from '#shared-calc/records/records.ts';

/** What some animals eat of one kind of prey. */
export interface PreyEaten {
  readonly aWeek: number;
  /** Whose appetite is not known yet: a kind without a figure, a size without a number of animals. */
  readonly unknown: readonly string[];
}

const WEEK = 7;

export function eatenBy(animals: number | undefined, { preyADay }: AnimalKind, called: string): PreyEaten {
  if (animals === 0) return { aWeek: 0, unknown: [] };
  if (animals === undefined || preyADay === undefined) return { aWeek: 0, unknown: [called] };
  return { aWeek: animals * preyADay * WEEK, unknown: [] };
}

export function eatenTogether(each: readonly PreyEaten[]): PreyEaten {
  return {
    aWeek: each.reduce((sum, { aWeek }) => sum + aWeek, 0),
    unknown: each.flatMap(({ unknown }) => unknown),
  };
}

/** What the animals of some sizes eat of a kind of prey, all builds together. */
export function preyEaten(columns: readonly ColumnInput[], prey: string): PreyEaten {
  return eatenTogether(
    columns.flatMap((column) => {
      const { kind, count } = column.animals ?? {};
      if (kind?.prey !== prey) return [];
      return eatenBy(count === undefined ? undefined : count * column.count, kind, calledOf(column));
    }),
  );
}
