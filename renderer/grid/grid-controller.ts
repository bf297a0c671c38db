import type { Onward } from '#renderer/writing/rule-keys.ts';
import { readTabText, writeTabText } from '#shared-calc/read/tab-text.ts';
import { cellEditor, type CellEditor } from './cell-editor.tsx';
import {
  columnId,
  gridIndex,
  movedSelection,
  type CellKey,
  type CellText,
  type GridIndex,
  type GridModel,
} from './grid-model.ts';
import { gridTable, type GridLayout, type GridTable } from './grid-table.ts';
import { listenOnGrid, type GridReach, type RowActs } from './listen-on-grid.ts';
import { liveCells, type CellPaint, type LiveCells } from './live-cells.ts';
import { cellMark } from './mouse-selection.ts';
import { cellsIn, fillPlan, pastePlan, type PlannedText } from './paste-plan.ts';
import {
  single,
  stepped,
  tabbed,
  within,
  type Cell,
  type Rect,
  type Selection,
  type Side,
  edgesOf,
  isSingle,
  rangesOf,
} from './selection.ts';

/** What a grid asks of its owner. */
export interface GridActs extends RowActs {
  /** Receives the editor's text; returns a sentence if it is refused. */
  readonly enter: (text: CellText) => string | undefined;
  /** Pasted or filled texts, as one edit. */
  readonly write: (texts: readonly CellText[], by: 'paste' | 'fill') => void;
  readonly clear: (cells: readonly CellKey[]) => void;
  readonly refuse: (sentence: string) => void;
  /** The selection has changed, or the selected position shows other cells. */
  readonly chosen: (selection: Selection, index: GridIndex) => void;
}

export interface GridParts<Shown> {
  readonly host: HTMLElement;
  readonly label: string;
  readonly nonce: string | undefined;
  readonly model: GridModel<Shown>;
  readonly layout: GridLayout;
  readonly paint: CellPaint<Shown>;
  /**
   * `right`: each row is filled to the right, one column from the cell at its left. `both ways`: to the right and down
   * within the selection.
   */
  readonly fills: 'right' | 'both ways';
  readonly acts: GridActs;
}

export interface GridController<Shown> extends GridReach {
  /** Selects a cell and scrolls it into view, without moving the focus. */
  readonly bring: (cell: Cell) => void;
  /** Shows another model. `painted` runs once rows and columns are set, before the focus is restored. */
  readonly show: (model: GridModel<Shown>, painted?: (moved: boolean) => void) => void;
  readonly destroy: () => void;
}

interface GridState<Shown> {
  readonly parts: GridParts<Shown>;
  model: GridModel<Shown>;
  index: GridIndex;
  selection: Selection | undefined;
  readonly cells: LiveCells<Shown>;
}

interface State<Shown> extends GridState<Shown> {
  readonly table: GridTable;
}

/** A grid with its own selection, clipboard, filling, editor and keys, over any model of rows. */
export function gridController<Shown>(parts: GridParts<Shown>): GridController<Shown> {
  const { host, acts } = parts;
  const editor = cellEditor(host.parentElement ?? host);
  const state = openState(parts);
  const { table } = state;
  const take = (selection: Selection, focus = true) => {
    select(state, selection, focus ? table.focus : undefined);
  };
  const controller: GridController<Shown> = {
    table,
    editor,
    acts,
    index: () => state.index,
    selection: () => state.selection,
    take,
    bring: (cell) => select(state, single(cell), table.bring),
    open: (cell, typed) => openCell(state, editor, { cell, typed, goOn: (next) => take(single(next)) }),
    copied: (rect) => writeTabText(rowsOf(rect).map((row) => row.map((cell) => copiedAt(state, cell)))),
    paste: (rect, text) => acts.write(keyed(state, pastePlan(readTabText(text), rect, state.index.extent)), 'paste'),
    fill: (rect, to) => fill(state, rect, to),
    clear: (rect) => acts.clear(cellsIn(rect).flatMap((cell) => state.index.keyOf(cell) ?? [])),
    show: (model, painted) => show(state, { model, painted, take }),
    remark: () => mark(state),
    destroy: () => {
      stop();
      editor.close();
      table.destroy();
    },
  };
  const stop = listenOnGrid(host, controller);
  return controller;
}

function openState<Shown>(parts: GridParts<Shown>): State<Shown> {
  const { model, paint } = parts;
  const opened: GridState<Shown> = {
    parts,
    model,
    index: gridIndex(model),
    selection: undefined,
    cells: liveCells(paint, (at) => opened.model.shownAt(at)),
  };
  const table = gridTable({
    ...parts,
    model: () => opened.model,
    draw: (cell, at) => {
      markCell(cell, opened.index.cellOf(at), chosenOf(opened.selection));
      return opened.cells.draw(cell, at);
    },
    focused: (cell) => {
      const tip = opened.selection?.tip;
      if (tip?.row !== cell.row || tip.column !== cell.column) select(opened, single(cell));
    },
  });
  return Object.assign(opened, { table });
}

/** `reach` focuses the tip before anything is marked: focusing makes the browser lay out what was drawn before. */
function select<Shown>(state: GridState<Shown>, selection: Selection, reach?: (tip: Cell) => void): void {
  const { index, parts } = state;
  state.selection = within(index.extent, selection);
  if (index.extent.rows > 0) reach?.(state.selection.tip);
  mark(state);
  parts.acts.chosen(state.selection, index);
}

function mark<Shown>({ cells, index, selection, parts }: GridState<Shown>): void {
  const chosen = chosenOf(selection);
  cells.each((cell, at) => markCell(cell, index.cellOf(at), chosen));
  markHead(parts.host, index, selection);
}

/** Marks the heading of the column that holds the selected cell. */
function markHead(host: HTMLElement, { keyOf }: GridIndex, selection: Selection | undefined): void {
  const at = selection && columnId(selection.tip.column, keyOf(selection.tip)?.column ?? '');
  for (const head of host.querySelectorAll('.ag-header-cell'))
    head.toggleAttribute('data-at', head.getAttribute('col-id') === at);
}

interface Showing<Shown> {
  readonly model: GridModel<Shown>;
  readonly painted: ((moved: boolean) => void) | undefined;
  readonly take: (selection: Selection, focus: boolean) => void;
}

/** A selection stays on its cells. If its tip is gone, it stays at the same position, so that the focus is not lost. */
function show<Shown>(state: State<Shown>, { model, painted, take }: Showing<Shown>): void {
  const { host } = state.parts;
  const before = { model: state.model, index: state.index };
  const hadKeyboard = host.contains(document.activeElement) && cellMark(document.activeElement) !== undefined;
  state.model = model;
  state.index = gridIndex(model);
  const moved = state.table.show(before.model);
  state.cells.show((at) => (state.index.cellOf(at) ? model.shownAt(at) : undefined));
  painted?.(moved);
  const { selection } = state;
  if (moved && selection) take(movedSelection(selection, before.index, state.index) ?? selection, hadKeyboard);
}

interface Opened {
  readonly cell: Cell;
  readonly typed: string | undefined;
  readonly goOn: (next: Cell) => void;
}

/** Opens the editor over a cell, or shows why the cell cannot be edited. */
function openCell<Shown>({ model, index, table, parts }: State<Shown>, editor: CellEditor, painted: Opened): void {
  const { cell, typed, goOn } = painted;
  const key = index.keyOf(cell);
  const entry = key && model.entryAt(key);
  if (!entry) return;
  if ('closed' in entry) {
    parts.acts.refuse(entry.closed);
    return;
  }
  let next = cell;
  editor.open({
    cell: () => table.elementOf(cell),
    entry: entry.text,
    ...(typed === undefined ? {} : { typed }),
    label: entry.label,
    help: entry.help,
    settle: (text, onward) => {
      const refused = text === entry.text ? undefined : parts.acts.enter({ ...key, text });
      if (refused === undefined) next = cellAfter(index, cell, onward);
      return refused;
    },
    closed: () => goOn(next),
  });
}

function cellAfter({ extent }: GridIndex, cell: Cell, onward: Onward): Cell {
  if (onward === 'stay') return cell;
  if (onward === 'up' || onward === 'down') return stepped(extent, cell, onward, false);
  return tabbed(extent, cell, onward === 'left') ?? cell;
}

function fill<Shown>(state: State<Shown>, rect: Rect, to: 'right' | 'down'): boolean {
  const { fills, acts } = state.parts;
  if (to === 'down' && fills === 'right') return false;
  const textOf = (cell: Cell) => copiedAt(state, cell);
  acts.write(keyed(state, fillPlan(rect, { to, fromBeside: fills === 'right', textOf })), 'fill');
  return true;
}

function copiedAt<Shown>({ model, index }: State<Shown>, cell: Cell): string {
  const key = index.keyOf(cell);
  return key ? model.copied(key) : '';
}

function keyed<Shown>({ index }: State<Shown>, plan: readonly PlannedText[]): readonly CellText[] {
  return plan.flatMap(({ text, ...cell }) => {
    const key = index.keyOf(cell);
    return key ? [{ ...key, text }] : [];
  });
}

function rowsOf(rect: Rect): readonly (readonly Cell[])[] {
  return cellsIn({ ...rect, right: rect.left }).map(({ row }) => cellsIn({ ...rect, top: row, bottom: row }));
}

/** Marks one drawn cell: in the selection, on the selected row, the selected cell. */
function markCell(element: HTMLElement, cell: Cell | undefined, chosen: Chosen | undefined): void {
  const { edges, inRange, onRow, isTip } = cell && chosen ? marksOf(cell, chosen) : unmarked;
  if (inRange) element.dataset['inRange'] = edges?.join(' ');
  else delete element.dataset['inRange'];
  element.toggleAttribute('data-chosen', isTip);
  element.toggleAttribute('data-here', onRow);
  const selected = String(edges !== undefined);
  if (element.ariaSelected !== selected) element.ariaSelected = selected;
}

interface CellMarks {
  readonly edges: readonly Side[] | undefined;
  readonly inRange: boolean;
  readonly onRow: boolean;
  readonly isTip: boolean;
}

const unmarked: CellMarks = { edges: undefined, inRange: false, onRow: false, isTip: false };

function marksOf(cell: Cell, { tip, ranges, many }: Chosen): CellMarks {
  const edges = edgesOf(ranges, cell);
  const onRow = cell.row === tip.row;
  return { edges, inRange: many && edges !== undefined, onRow, isTip: onRow && cell.column === tip.column };
}

/** A selection as its cells are marked. */
interface Chosen {
  readonly tip: Cell;
  readonly ranges: readonly Rect[];
  readonly many: boolean;
}

function chosenOf(selection: Selection | undefined): Chosen | undefined {
  return selection && { tip: selection.tip, ranges: rangesOf(selection), many: !isSingle(selection) };
}
