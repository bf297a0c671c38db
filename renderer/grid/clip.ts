import { harmless } from '#shared-calc/papers/csv-text.ts';
import { readHtmlTable, writeHtmlTable, type HtmlRow } from '#shared-calc/read/html-table.ts';
import { readTabText, writeTabText } from '#shared-calc/read/tab-text.ts';
import type { CellKey, GridIndex, GridModel } from './grid-model.ts';
import type { Cell, Rect } from './selection.ts';

/** What lies on the clipboard: the same cells as tab-separated text and as a table with names and units. */
export interface Clip {
  readonly text: string;
  readonly html: string;
}

export interface ClipParts {
  readonly model: Pick<GridModel<unknown>, 'columns' | 'copied' | 'rowName'>;
  readonly index: Pick<GridIndex, 'keyOf'>;
  readonly ranges: readonly Rect[];
  /** The text has the names of rows and columns, too; as HTML they are always there. */
  readonly withNames: boolean;
}

/** The ranges as copied; `undefined` if they do not lie side by side or below each other. */
export function clipOf(parts: ClipParts): Clip | undefined {
  const block = blockOf(parts.ranges);
  if (!block) return undefined;
  const named = namedRows(parts, block);
  const bare = block.map((row) => row.map((cell) => textAt(parts, cell)));
  const text = parts.withNames ? named.map((row) => row.map((cell) => cell.text)) : bare;
  return { text: writeTabText(text), html: writeHtmlTable(named) };
}

/** One block of several ranges: those of the same rows side by side, those of the same columns below each other. */
export function blockOf(ranges: readonly Rect[]): readonly (readonly Cell[])[] | undefined {
  const [first, ...others] = ranges;
  if (!first) return undefined;
  const sameRows = others.every(({ top, bottom }) => top === first.top && bottom === first.bottom);
  const sameColumns = others.every(({ left, right }) => left === first.left && right === first.right);
  if (!sameRows && !sameColumns) return undefined;
  const rows = sortedRun(ranges.map(({ top, bottom }) => [top, bottom]));
  const columns = sortedRun(ranges.map(({ left, right }) => [left, right]));
  return rows.map((row) => columns.map((column) => ({ row, column })));
}

function sortedRun(runs: readonly (readonly [number, number])[]): readonly number[] {
  const all = runs.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, at) => from + at));
  return [...new Set(all)].toSorted((one, other) => one - other);
}

function namedRows(parts: ClipParts, block: readonly (readonly Cell[])[]): readonly HtmlRow[] {
  const { model, index } = parts;
  const heads = (block[0] ?? []).map(({ column }) => model.columns[column]?.title ?? '');
  const holdsNames = block[0]?.[0]?.column === 0;
  const head = (text: string) => ({ text: harmless(text), head: true });
  const nameOf = ([cell]: readonly Cell[]) => {
    const key = cell && index.keyOf(cell);
    return key ? model.rowName(key.row) : '';
  };
  return [
    (holdsNames ? heads : ['', ...heads]).map(head),
    ...block.map((row) => {
      const cells = row.map((cell) => ({ text: tableText(textAt(parts, cell)), head: cell.column === 0 }));
      return holdsNames ? cells : [head(nameOf(row)), ...cells];
    }),
  ];
}

/** A negative figure stays a figure; words that a program would run are made words. */
function tableText(text: string): string {
  return /^-?[\d.,\s]+$/.test(text) ? text : harmless(text);
}

function textAt({ model, index }: ClipParts, cell: Cell): string {
  const key: CellKey | undefined = index.keyOf(cell);
  return key ? model.copied(key) : '';
}

/** Puts it on the clipboard without the browser's own copying. */
export async function putOnClipboard({ text, html }: Clip, refuse: (sentence: string) => void): Promise<void> {
  const as = (type: string, words: string) => new Blob([words], { type });
  const item = new ClipboardItem({ 'text/plain': as('text/plain', text), 'text/html': as('text/html', html) });
  await navigator.clipboard.write([item]).catch(() => refuse('The browser does not let this page copy.'));
}

/** What was on the clipboard as rows of texts. A table counts where there is no text beside it. */
export function readClip({ text, html }: Clip): readonly (readonly string[])[] | undefined {
  return text === '' ? readHtmlTable(html) : readTabText(text);
}
