import type { Onward } from '#renderer/writing/rule-keys.ts';
import { below, openContextMenu, type MenuPoint } from '#renderer/kit/context-menu.tsx';
import { cellEditor, type CellEditor } from './cell-editor.tsx';
import { clipOf, putOnClipboard, type Clip } from './clip.ts';
import {
  columnId,
  gridIndex,
  movedSelection,
  type CellKey,
  type CellText,
  type GridIndex,
  type GridModel,
} from './grid-model.ts';
import { canFill, cellsMenu, type GridMenu } from './grid-menu.ts';
import { gridTable, type GridLayout, type GridTable } from './grid-table.ts';
import { focusHead, type HeadActs } from './listen-on-heads.ts';
import { listenOnGrid, type GridReach, type RowActs } from './listen-on-grid.ts';
import { chosenOf, markCell, markHeads, markMovedCell } from './mark-cells.ts';
import { liveCells, type CellPaint, type LiveCells } from './live-cells.ts';
import { cellMark } from './mouse-selection.ts';
import { cellsOfRanges, fillPlan, pastePlan, sayLeft, type PlannedText } from './paste-plan.ts';
import {
  rangeAround,
  single,
  stepped,
  tabbed,
  within,
  type Cell,
  type Rect,
  type Selection,
  rangesOf,
} from './selection.ts';

/** `typed`: into one cell. `typed over`: into every cell of a range. */
export type WrittenBy = 'typed' | 'typed over' | 'paste' | 'fill';

/** What a grid asks of its owner. */
export interface GridActs extends RowActs {
  /** Typed, pasted or filled texts, as one edit; returns a sentence if it is refused, and then nothing is written. */
  readonly write: (texts: readonly CellText[], by: WrittenBy) => string | undefined;
  readonly clear: (cells: readonly CellKey[]) => void;
  readonly refuse: (sentence: string) => void;
  /** The acts of a cell's own thing, beside those of every grid. */
  readonly menu: (at: CellKey) => GridMenu;
  /** The acts of a column, by its key. */
  readonly columnMenu?: (column: string) => GridMenu | undefined;
  /** What is done at the heads of columns; absent if they stay as they are. */
  readonly heads?: HeadActs;
  /** Columns were drawn to another order; absent if they stay in theirs. */
  readonly ordered?: (columns: readonly string[]) => void;
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
  /** Marks the cells that the last edit moved, those that are drawn later too. */
  readonly markMoved: (isMoved: (at: CellKey) => boolean) => void;
  readonly destroy: () => void;
}

interface GridState<Shown> {
  readonly parts: GridParts<Shown>;
  model: GridModel<Shown>;
  index: GridIndex;
  selection: Selection | undefined;
  isMoved: (at: CellKey) => boolean;
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
    open: (cell, typed) => openCell(state, editor, { cell, typed, goOn: take }),
    copied: (ranges, withNames) => copied(state, ranges, withNames),
    paste: (ranges, block) => paste(state, ranges, block),
    fill: (ranges, to) => fill(state, ranges, to),
    clear: (ranges) => acts.clear(cellsOfRanges(ranges).flatMap((cell) => state.index.keyOf(cell) ?? [])),
    copy: (withNames) => {
      const clip = state.selection && copied(state, rangesOf(state.selection), withNames);
      if (clip) void putOnClipboard(clip, acts.refuse);
    },
    menu: (at) => openMenu(state, controller, at),
    columnKey: (id) => state.model.columns.find(({ key }, index) => columnId(index, key) === id)?.key,
    columnAt: (column) => state.model.columns.findIndex(({ key }) => key === column),
    columnMenu: (id, at) => {
      const column = controller.columnKey(id);
      const menu = column === undefined ? undefined : acts.columnMenu?.(column);
      if (!menu || menu.acts.length === 0) return false;
      openContextMenu({ ...menu, at, back: () => backToTip(state) });
      return true;
    },
    show: (model, painted) => show(state, { model, painted, take }),
    heads: acts.heads,
    focusHead: (column) => acts.heads !== undefined && focusHead(host, state.model, column),
    leave: table.leave,
    remark: () => mark(state),
    markMoved: (isMoved) => markMoved(state, isMoved),
    destroy: () => {
      stop();
      editor.close();
      table.destroy();
    },
  };
  const stop = listenOnGrid(host, controller);
  return controller;
}

/** Opens the acts of the selected cells. */
function openMenu<Shown>(state: State<Shown>, controller: GridController<Shown>, at?: MenuPoint): boolean {
  const { selection, index, model, table, parts } = state;
  const key = selection && index.keyOf(selection.tip);
  if (!key) return false;
  const ranges = rangesOf(selection);
  const entry = model.entryAt(key);
  const can = canFill(ranges, parts.fills === 'right');
  const menu = cellsMenu({
    own: parts.acts.menu(key),
    write: entry && !('closed' in entry) ? () => controller.open(selection.tip) : undefined,
    copy: controller.copy,
    same: {
      ...(can.right && { right: () => void controller.fill(ranges, 'right') }),
      ...(can.below && { below: () => void controller.fill(ranges, 'down') }),
    },
  });
  const element = table.elementOf(selection.tip);
  const point = at ?? (element ? below(element) : { x: 0, y: 0 });
  openContextMenu({ ...menu, at: point, back: () => backToTip(state) });
  return true;
}

function backToTip<Shown>({ selection, table }: State<Shown>): void {
  if (selection) table.focus(selection.tip);
}

function openState<Shown>(parts: GridParts<Shown>): State<Shown> {
  const { model, paint } = parts;
  const opened: GridState<Shown> = {
    parts,
    model,
    index: gridIndex(model),
    selection: undefined,
    isMoved: () => false,
    cells: liveCells(paint, (at) => opened.model.shownAt(at)),
  };
  const { acts } = parts;
  const table = gridTable({
    ...parts,
    ...(acts.heads?.width && { widened: acts.heads.width }),
    ...(acts.ordered && { ordered: acts.ordered }),
    model: () => opened.model,
    entered: () => enterGrid(opened, () => table.focus),
    draw: (cell, at) => {
      markCell(cell, opened.index.cellOf(at), chosenOf(opened.selection));
      markMovedCell(cell, opened.isMoved(at));
      return opened.cells.draw(cell, at);
    },
    focused: (cell) => {
      const tip = opened.selection?.tip;
      if (tip?.row !== cell.row || tip.column !== cell.column) select(opened, single(cell));
    },
  });
  return Object.assign(opened, { table });
}

/** Tab comes to the chosen cell, or to the first. */
function enterGrid<Shown>(state: GridState<Shown>, focus: () => (tip: Cell) => void): boolean {
  const { extent } = state.index;
  const first = single({ row: 0, column: Math.min(1, extent.columns - 1) });
  if (extent.rows > 0) select(state, state.selection ?? first, focus());
  return extent.rows > 0;
}

/** `reach` focuses the tip before anything is marked: focusing makes the browser lay out what was drawn before. */
function select<Shown>(state: GridState<Shown>, selection: Selection, reach?: (tip: Cell) => void): void {
  const { index, parts } = state;
  state.selection = within(index.extent, selection);
  if (index.extent.rows > 0) reach?.(state.selection.tip);
  mark(state);
  parts.acts.chosen(state.selection, index);
}

function mark<Shown>({ cells, index, model, selection, parts }: GridState<Shown>): void {
  const chosen = chosenOf(selection);
  cells.each((cell, at) => markCell(cell, index.cellOf(at), chosen));
  markHeads(parts.host, model.columns, selection);
}

function markMoved<Shown>(state: GridState<Shown>, isMoved: (at: CellKey) => boolean): void {
  state.isMoved = isMoved;
  state.cells.each((cell, at) => markMovedCell(cell, isMoved(at)));
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
  readonly goOn: (next: Selection) => void;
}

/** Opens the editor over a cell, or shows why the cell cannot be edited. Over a range, its text goes into all cells. */
function openCell<Shown>(state: State<Shown>, editor: CellEditor, { cell, typed, goOn }: Opened): void {
  const { model, index, table, parts } = state;
  const key = index.keyOf(cell);
  const entry = key && model.entryAt(key);
  if (!entry) return;
  if ('closed' in entry) {
    parts.acts.refuse(entry.closed);
    return;
  }
  const over = rangeAround(state.selection, cell);
  const cells = over ? cellsOfRanges(rangesOf(over)) : [cell];
  const write = (text: string) => {
    if (text === entry.text && (!over || typed === undefined)) return undefined;
    const texts = keyed(
      state,
      cells.map((each) => ({ ...each, text })),
    );
    return parts.acts.write(texts, over ? 'typed over' : 'typed');
  };
  let next = over ?? single(cell);
  editor.open({
    cell: () => table.elementOf(cell),
    entry: entry.text,
    ...(typed === undefined ? {} : { typed }),
    label: over ? `${entry.label}, and ${cells.length - 1} more` : entry.label,
    help: entry.help,
    settle: (text, onward) => {
      const refused = write(text);
      if (refused === undefined && !over) next = single(cellAfter(index, cell, onward));
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

function fill<Shown>(state: State<Shown>, ranges: readonly Rect[], to: 'right' | 'down'): boolean {
  const { fills, acts } = state.parts;
  if (to === 'down' && fills === 'right') return false;
  const textOf = (cell: Cell) => copiedAt(state, cell);
  const plan = ranges.flatMap((rect) => fillPlan(rect, { to, fromBeside: fills === 'right', textOf }));
  sayIfAny(acts, [acts.write(keyed(state, plan), 'fill')]);
  return true;
}

/** One text goes into every range; a block goes into the last one, from its first cell. */
function paste<Shown>(state: State<Shown>, ranges: readonly Rect[], block: readonly (readonly string[])[]): void {
  const { acts } = state.parts;
  const isOne = block.length === 1 && block[0]?.length === 1;
  const plans = (isOne ? ranges : ranges.slice(-1)).map((rect) => pastePlan(block, rect, state.index.extent));
  const texts = keyed(
    state,
    plans.flatMap((plan) => plan.texts),
  );
  const left = plans.at(-1)?.left;
  sayIfAny(acts, [acts.write(texts, 'paste'), left && sayLeft(left)]);
}

function copied<Shown>(
  { model, index, parts }: State<Shown>,
  ranges: readonly Rect[],
  withNames: boolean,
): Clip | undefined {
  const clip = clipOf({ model, index, ranges, withNames });
  if (!clip) parts.acts.refuse('Ranges are copied together where they have the same rows or the same columns.');
  return clip;
}

function sayIfAny({ refuse }: GridActs, says: readonly (string | undefined)[]): void {
  const words = says.filter((each) => each !== undefined).join(' ');
  if (words !== '') refuse(words);
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
