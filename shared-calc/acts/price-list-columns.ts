import { listColumns, type ListColumn, type PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export type ColumnsFault =
  /** Columns that no list can be read without are headed in no way that is known. */
  | { readonly kind: 'no-heading'; readonly lacks: readonly ListColumn[]; readonly headings: readonly string[] }
  | {
      readonly kind: 'no-such-heading';
      readonly column: ListColumn;
      readonly heading: string;
      readonly headings: readonly string[];
    }
  /** `columns` are the names by which each can be told apart. */
  | { readonly kind: 'heading-twice'; readonly heading: string; readonly columns: readonly string[] };

/** The index of each column that was found. */
export type FoundColumns = Readonly<Partial<Record<ListColumn, number>>>;

/** The headings of a list that the program writes. */
export const ownHeadings: readonly string[] = [...listColumns, 'supplier'];

export interface ColumnNames {
  /** What is said of this list. */
  readonly map?: PriceListMap | undefined;
  /** What the supplier's last list was read by. */
  readonly remembered?: PriceListMap | undefined;
}

/** How many cells of a row are headings that are said, remembered, or the program's own. */
export function knownHeadings({ map, remembered }: ColumnNames): (cells: readonly string[]) => number {
  const said = [map, remembered].flatMap((each) => listColumns.flatMap((column) => each?.columns?.[column] ?? []));
  const names = new Set([...said, ...ownHeadings].map(plain));
  return (cells) => cells.filter((cell) => names.has(plain(cell))).length;
}

/** The columns by the map, by what was remembered, by the program's own headings. */
export function findColumns(headings: readonly string[], names: ColumnNames): Result<FoundColumns, ColumnsFault> {
  const found: Partial<Record<ListColumn, number>> = {};
  for (const column of listColumns) {
    const said = names.map?.columns?.[column];
    const [heading] = said === undefined ? usualHeadings(column, headings, names) : [said];
    if (heading === undefined) continue;
    const [at, ...others] = headingsLike(heading, headings);
    if (at === undefined) return failed({ kind: 'no-such-heading', column, heading, headings });
    if (others.length > 0) return failed({ kind: 'heading-twice', heading, columns: [at, ...others].map(columnAt) });
    found[column] = at;
  }
  const lacks = lacking(found);
  return lacks.length > 0 ? failed({ kind: 'no-heading', lacks, headings }) : ok(found);
}

/** The columns that a map, the last list or the program's own headings name, as far as the list has them once. */
export function usualColumns(headings: readonly string[], names: ColumnNames): FoundColumns {
  const found: Partial<Record<ListColumn, number>> = {};
  for (const column of listColumns) {
    const [heading = names.map?.columns?.[column]] = usualHeadings(column, headings, names);
    const [at, ...others] = heading === undefined ? [] : headingsLike(heading, headings);
    if (at !== undefined && others.length === 0) found[column] = at;
  }
  return found;
}

function usualHeadings(
  column: ListColumn,
  headings: readonly string[],
  { remembered }: ColumnNames,
): readonly string[] {
  const before = remembered?.columns?.[column];
  return [...(before === undefined ? [] : [before]), column].filter((name) => headingsLike(name, headings).length > 0);
}

/** The name of a column by its place, for a list without headings or with two alike: `column 4`. */
export function columnAt(at: number): string {
  return `column ${at + 1}`;
}

function headingsLike(name: string, headings: readonly string[]): readonly number[] {
  const found = headings.flatMap((heading, at) => (plain(heading) === plain(name) ? [at] : []));
  return found.length > 0 ? found : headings.flatMap((_, at) => (columnAt(at) === plain(name) ? [at] : []));
}

function plain(heading: string): string {
  return heading.trim().replaceAll(/\s+/g, ' ').toLowerCase();
}

function lacking({ price, article, material }: FoundColumns): readonly ListColumn[] {
  const names = article === undefined && material === undefined ? (['article'] as const) : [];
  return price === undefined ? [...names, 'price'] : names;
}
