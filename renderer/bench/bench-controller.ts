import { signal } from '@preact/signals';
import { afterFrame } from '#renderer/frame/after-frame.ts';
import { gridController, type GridActs, type GridController } from '#renderer/grid/grid-controller.ts';
import type { CellKey, CellText } from '#renderer/grid/grid-model.ts';
import { movedOne } from '#renderer/grid/moved-one.ts';
import { single } from '#renderer/grid/selection.ts';
import type { BenchActs } from './bench-acts.ts';
import { benchLayout } from './bench-layout.ts';
import type { BenchMetrics } from './bench-metrics.ts';
import { benchMenu, sizeMenu } from './bench-menus.ts';
import { benchModel, isBox, isOpenBox, namesKey, type BenchModel } from './bench-model.ts';
import { followRoom } from './follow-room.ts';
import { benchPaint, type Shown } from './paint-cell.ts';
import type { BenchView, BoxPlace } from './view-model.ts';

export interface BenchController {
  /** Shows another view; repaints only cells that changed. */
  readonly show: (view: BenchView) => void;
  /** Selects a line's cell, scrolls it into view and focuses it. */
  readonly go: (place: BoxPlace) => void;
  /** The same without moving the focus. */
  readonly bring: (place: BoxPlace) => void;
  /** Marks the cells that the last edit moved, by column. */
  readonly markMoved: (cells: ReadonlyMap<string, ReadonlySet<string>>) => void;
  readonly destroy: () => void;
}

export interface BenchParts {
  readonly host: HTMLElement;
  readonly view: BenchView;
  readonly acts: BenchActs;
  readonly nonce: string | undefined;
  /** Runs when the available room changes, and once at the start. */
  readonly measured: (metrics: BenchMetrics) => void;
}

/** The bench's grid: one line a row, one size a column. */
export function benchController({ host, view, acts, nonce, measured }: BenchParts): BenchController {
  let model = benchModel(view, acts.helpFor);
  const heads = signal(view);
  const at = signal<string | undefined>(undefined);
  const room = followRoom(
    host,
    () => model.view,
    (metrics) => {
      grid.table.relayout();
      measured(metrics);
    },
  );
  const grid: GridController<Shown> = gridController({
    host,
    nonce,
    label: 'Size bench, one line a row, one size a column',
    model,
    layout: benchLayout({ heads, metrics: room.metrics, at, acts }),
    paint: benchPaint(acts),
    fills: 'right',
    acts: gridActs(
      acts,
      () => model,
      (column) => (at.value = column),
    ),
  });
  measured(room.metrics.peek());
  let callOff = (): void => undefined;
  return {
    show: (next) => {
      model = benchModel(next, acts.helpFor);
      grid.show(model, (moved) => {
        callOff();
        // The cards over the columns follow the cells a frame later, unless the columns have changed since.
        if (moved) heads.value = next;
        else callOff = afterFrame(() => (heads.value = next));
        room.measure();
      });
    },
    go: (place) => reach(grid, place, (cell) => grid.take(single(cell))),
    bring: (place) => reach(grid, place, grid.bring),
    markMoved: (cells) => grid.markMoved(({ row, column }) => cells.get(column)?.has(row) ?? false),
    destroy: () => {
      callOff();
      room.leave();
      grid.destroy();
    },
  };
}

function reach({ index }: GridController<Shown>, place: BoxPlace, run: GridController<Shown>['bring']): void {
  const cell = index().cellOf(place);
  if (cell) run(cell);
}

function gridActs(
  acts: BenchActs,
  model: () => BenchModel,
  choseColumn: (column: string | undefined) => void,
): GridActs {
  let before: CellKey | undefined;
  return {
    write: (texts, by) => (by === 'typed' ? acts.write(texts) : writeAll(acts, model(), texts)),
    clear: (cells) => clearAll(acts, model(), cells),
    refuse: acts.refuse,
    chosen: ({ tip }, index) => {
      const key = index.keyOf(tip);
      choseColumn(key?.column === namesKey ? undefined : key?.column);
      if (key && key.row === before?.row && key.column === before.column) return;
      before = key;
      acts.choose(key && isBox(model(), key) ? key : undefined);
    },
    menu: (at) => benchMenu(model(), acts, at),
    ordered: (columns) => {
      const moved = movedOne(
        model().columns.map(({ key }) => key),
        columns,
      );
      // The names are the first column.
      if (moved) acts.moveSize(moved.key, moved.to - 1);
    },
    heads: {
      move: (column, by) => {
        const at = model().columns.findIndex(({ key }) => key === column);
        const to = at - 1 + by;
        if (at > 0 && to >= 0 && to < model().columns.length - 1) acts.moveSize(column, to);
      },
    },
    columnMenu: (column) => sizeMenu(model().view, acts, column),
    openRow: (key, all) => {
      const row = model().rowOf(key);
      if (row?.kind !== 'section') return false;
      if (all) acts.showAll(row.id);
      else acts.fold(row.id);
      return true;
    },
  };
}

/** Writes all writable cells as one change. Names the others; skips cells that stay the same. */
function writeAll(acts: BenchActs, model: BenchModel, texts: readonly CellText[]): string | undefined {
  const boxes = texts.filter((text) => isBox(model, text));
  const open = boxes.filter((text) => isOpenBox(model, text));
  const closed = boxes.filter((text) => !open.includes(text));
  const [first] = closed;
  const why = (first && model.view.boxOf(first.row, first.column)?.closedBy?.is) ?? 'issued';
  if (first)
    acts.refuse(`${closed.length === 1 ? '1 box is' : `${closed.length} boxes are`} ${why} and cannot be written in.`);
  const changes = open.filter((text) => model.copied(text) !== text.text);
  return changes.length === 0 ? undefined : acts.write(changes);
}

function clearAll(acts: BenchActs, model: BenchModel, cells: readonly CellKey[]): void {
  const places = cells.filter((cell) => isOpenBox(model, cell));
  if (places.length > 0) acts.clear(places);
  else acts.refuse('There is nothing here that can be taken back to the house.');
}
