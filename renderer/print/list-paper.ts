import type { DrawnSize } from './size-drawings.tsx';

/** A grid as a list on paper, under the title of its place: what it shows, for sheets that may be narrower than it. */
export interface ListPaper {
  readonly letterhead: readonly string[];
  /** Under the title: what it is of, and what the marks mean. */
  readonly notes: readonly string[];
  /** Repeated at the left of every sheet. */
  readonly names: readonly ListColumn[];
  readonly columns: readonly ListColumn[];
  readonly groups: readonly ListGroup[];
  /** The drawings over the columns of a sheet. */
  readonly drawn?: (columns: readonly string[]) => readonly DrawnSize[];
}

export interface ListColumn {
  readonly key: string;
  readonly head: string;
  /** Small, under the head. */
  readonly under?: readonly string[];
  readonly figure: boolean;
}

export interface ListGroup {
  readonly key: string;
  /** A group without a heading stands apart from the one before it. */
  readonly head?: string;
  readonly rows: readonly ListRow[];
}

export interface ListRow {
  readonly key: string;
  readonly strong?: boolean;
  readonly cellOf: (column: string) => ListCell;
}

export interface ListCell {
  readonly text: string;
  /** Beside it, in small type: a state, a name. */
  readonly aside?: string;
  /** Written by hand; a worked figure is not. */
  readonly given?: boolean;
}

export interface ListSheets {
  readonly sideways: boolean;
  readonly sheets: readonly (readonly ListColumn[])[];
}

/** Widths inside the margins that both A4 and Letter have, mm. */
const UPRIGHT = 178;
const SIDEWAYS = 247;
/** About the width of a letter, mm, and the room between two columns. */
const LETTER = 1.3;
const BETWEEN = 4.5;
/** A longer text runs over several lines, mm. */
const WIDEST = 38;

/** Which columns stand on which sheet: all on one, upright or sideways, or evenly on several sideways. */
export function sheetsOfList(paper: ListPaper): ListSheets {
  const { names, columns } = paper;
  const widthOf = widths(paper);
  const sum = (some: readonly ListColumn[]) => some.reduce((mm, column) => mm + widthOf(column), 0);
  const left = sum(names);
  const all = sum(columns);
  if (left + all <= UPRIGHT) return { sideways: false, sheets: [columns] };
  const room = Math.max(SIDEWAYS - left, WIDEST + BETWEEN);
  const even = all / Math.ceil(all / room);
  const sheets: ListColumn[][] = [];
  let taken = Infinity;
  for (const column of columns) {
    const width = widthOf(column);
    const isFull = taken + width > room || taken + width / 2 > even;
    if (isFull) sheets.push([]);
    taken = isFull ? width : taken + width;
    sheets.at(-1)?.push(column);
  }
  return { sideways: true, sheets };
}

/** The width that a column wants, mm: of its longest text, or of its longest word where texts are long. */
function widths({ groups }: ListPaper): (column: ListColumn) => number {
  const rows = groups.flatMap((group) => group.rows);
  return ({ key, head, under = [] }) => {
    const cells = rows.map((row) => row.cellOf(key));
    const texts = [...cells.map(({ text, aside = '' }) => `${text} ${aside}`.trim()), ...under];
    const longest = Math.max(0, ...texts.map((text) => text.length)) * LETTER;
    const word = Math.max(0, ...[head, ...texts].flatMap((text) => text.split(/\s/).map(({ length }) => length)));
    return Math.max(Math.min(longest, WIDEST), word * LETTER) + BETWEEN;
  };
}
