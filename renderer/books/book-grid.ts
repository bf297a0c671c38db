import { boxEditor, type BoxEditor } from '#renderer/bench/box-editor.tsx';
import { clipboardEvents, inField } from '#renderer/bench/clipboard-events.ts';
import { cellMark, mouseRange } from '#renderer/bench/mouse-range.ts';
import { holds, isSingle, kept, rectOf, single, type Range, type Spot } from '#renderer/bench/range.ts';
import { bookKey } from './book-keys.ts';
import { extentOf, rowsIn, spotOf, type BookLayout } from './book-layout.ts';
import { bookSheet, type BookSheet } from './book-sheet.ts';
import type { BookRow } from './book-table.ts';
import { copyFields, emptyFields, fillDown, fillRight, pasteFields } from './book-writing.ts';
import { openField, type BookGridActs } from './open-field.ts';
import { namesOf, rangeOf } from './range-names.ts';
import type { BoxText } from './write-boxes.ts';

export interface BookGrid<Row extends BookRow> {
  readonly show: (layout: BookLayout<Row>) => void;
  /** Chooses a field, brings it into sight and gives it the keyboard; `false` where there is no such row. */
  readonly go: (row: string, column?: string) => boolean;
  /** The same, and opens it. */
  readonly write: (row: string, column?: string) => void;
  readonly destroy: () => void;
}

export interface BookGridParts<Row extends BookRow> {
  readonly host: HTMLElement;
  readonly nonce: string | undefined;
  readonly layout: BookLayout<Row>;
  readonly acts: BookGridActs;
}

interface Now<Row extends BookRow> {
  layout: BookLayout<Row>;
  range: Range | undefined;
}

/** What the grid is about. */
interface Desk<Row extends BookRow> {
  readonly now: Now<Row>;
  readonly host: HTMLElement;
  readonly acts: BookGridActs;
  readonly editor: BoxEditor;
  readonly sheet: BookSheet;
}

type Focus = 'with the keyboard' | 'where it is';

/** A book's grid: one record a row, one field a column; ranges, clipboard and keys as on the bench. */
export function bookGrid<Row extends BookRow>({ host, nonce, layout, acts }: BookGridParts<Row>): BookGrid<Row> {
  const now: Now<Row> = { layout, range: undefined };
  const sheet = bookSheet<Row>({
    host,
    nonce,
    layout: () => now.layout,
    mark: (cell, row, column) => markCell(cell, spotAt(now.layout, row, column), now.range),
    focused: (spot) => {
      const tip = now.range?.tip;
      if (tip?.row !== spot.row || tip.column !== spot.column) take(desk, single(spot), 'where it is');
    },
  });
  const desk: Desk<Row> = { now, host, acts, sheet, editor: boxEditor(host.parentElement ?? host) };
  const stop = listen(desk);
  return {
    show: (next) => show(desk, next),
    go: (row, column) => go(desk, row, column) !== undefined,
    write: (row, column) => {
      const spot = go(desk, row, column);
      if (spot) open(desk, spot);
    },
    destroy: () => {
      stop();
      desk.editor.close();
      sheet.destroy();
    },
  };
}

function take<Row extends BookRow>(desk: Desk<Row>, next: Range, focus: Focus = 'with the keyboard'): void {
  const { now, sheet, acts } = desk;
  const { layout } = now;
  const range = kept(extentOf(layout), next);
  const { tip } = range;
  now.range = range;
  markAll(desk);
  const [tipRow] = rowsIn(layout, single(tip));
  acts.choose(tipRow === undefined ? [] : [tipRow, ...rowsIn(layout, range).filter((id) => id !== tipRow)]);
  if (focus === 'with the keyboard' && layout.rows.length > 0) sheet.focus(tip);
}

function markAll<Row extends BookRow>({ sheet, now }: Desk<Row>): void {
  sheet.each((cell, row, column) => markCell(cell, spotAt(now.layout, row, column), now.range));
}

function go<Row extends BookRow>(desk: Desk<Row>, row: string, column?: string): Spot | undefined {
  const spot = spotOf(desk.now.layout, row, column);
  if (spot) take(desk, single(spot));
  return spot;
}

function open<Row extends BookRow>(desk: Desk<Row>, spot: Spot, typed?: string): void {
  const { editor, acts, sheet } = desk;
  const { layout } = desk.now;
  openField({
    layout,
    spot,
    typed,
    editor,
    acts,
    cell: () => sheet.cellAt(spot),
    goOn: (next) => take(desk, single(next)),
  });
}

function write<Row extends BookRow>({ acts }: Desk<Row>, texts: readonly BoxText[]): void {
  const refused = texts.length === 0 ? undefined : acts.write(texts);
  if (refused !== undefined) acts.refuse(refused);
}

function show<Row extends BookRow>(desk: Desk<Row>, next: BookLayout<Row>): void {
  const { host, editor, now } = desk;
  const { range } = now;
  const names = range && namesOf(now.layout, range);
  const hadKeys = host.contains(document.activeElement) && !editor.isOpen();
  now.layout = next;
  desk.sheet.show();
  const moved = (names && rangeOf(next, names)) ?? range;
  if (next.rows.length === 0) desk.acts.choose([]);
  else if (moved) take(desk, moved, hadKeys ? 'with the keyboard' : 'where it is');
}

/** Keys, mouse and clipboard; answers how to stop. */
function listen<Row extends BookRow>(desk: Desk<Row>): () => void {
  const { host, sheet, editor, now } = desk;
  const onKey = (event: KeyboardEvent) => pressed(desk, event);
  host.addEventListener('keydown', onKey, { capture: true });
  const pointed = mouseRange(host, {
    press: (spot, extend) => {
      const start = extend ? now.range?.anchor : undefined;
      take(desk, { anchor: start ?? spot, tip: spot }, extend ? 'with the keyboard' : 'where it is');
    },
    draw: (spot) => now.range && take(desk, { anchor: now.range.anchor, tip: spot }),
    open: (spot) => open(desk, spot),
    spotOf: sheet.spotOf,
  });
  const clipped = clipboardEvents(host, {
    copied: () => now.range && copyFields(now.layout, now.range),
    clear: () => now.range && write(desk, emptyFields(now.layout, now.range)),
    paste: (text) => now.range && write(desk, pasteFields(now.layout, now.range, text)),
  });
  sheet.scrolled(() => {
    editor.follow();
    markAll(desk);
  });
  return () => {
    host.removeEventListener('keydown', onKey, { capture: true });
    pointed();
    clipped();
  };
}

function pressed<Row extends BookRow>(desk: Desk<Row>, event: KeyboardEvent): void {
  const { acts } = desk;
  const { range, layout } = desk.now;
  if (!range || inField(event.target) || !cellMark(event.target)) return;
  const key = bookKey(event, range, extentOf(layout));
  if (!key) return;
  event.preventDefault();
  event.stopPropagation();
  if (key.is === 'take') take(desk, key.range);
  else if (key.is === 'write') open(desk, range.tip, key.typed);
  else if (key.is === 'add' || key.is === 'remove') acts[key.is]();
  else write(desk, writtenBy[key.is](layout, range));
}

const writtenBy = { clear: emptyFields, 'fill right': fillRight, 'fill down': fillDown } as const;

function markCell(cell: HTMLElement, spot: Spot | undefined, range: Range | undefined): void {
  const inside = range !== undefined && spot !== undefined && holds(rectOf(range), spot);
  const isTip = spot !== undefined && range?.tip.row === spot.row && range.tip.column === spot.column;
  cell.classList.toggle('in-range', inside && !isSingle(range));
  cell.classList.toggle('chosen', isTip);
  cell.classList.toggle('here', spot !== undefined && range?.tip.row === spot.row);
  cell.setAttribute('aria-selected', String(inside));
}

function spotAt<Row extends BookRow>({ rows }: BookLayout<Row>, id: string, column: number): Spot | undefined {
  const row = rows.findIndex((each) => each.id === id);
  return row < 0 ? undefined : { row, column };
}
