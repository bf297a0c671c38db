import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { AllBenchActs } from '#renderer/bench/bench-acts.ts';
import type { BenchView, BoxPlace } from '#renderer/bench/view-model.ts';
import type { PanelActs, PanelView } from '#renderer/panel/panel-view.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { benchActs } from './bench-acts-of.ts';
import { openBenchSession, type BenchSession, type OpenedBench } from './bench-session.ts';
import type { BookStore } from './book-store.ts';
import type { EditHouse } from './house-ask.ts';
import type { Clock } from './clock.ts';
import { compareColumns, type Comparison } from './compare-columns.ts';
import { cureWorker } from './cure-worker.ts';
import { confirming } from './confirming.ts';
import { findNamed, namedLines, namedSizes } from './find-place.ts';
import { memo } from '#shared-calc/records/memo.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { LIMITS, limitOfRow, limitPanel, limitRowId } from './limit-rows.ts';
import { movedStore, type MovedCells } from './moved-store.ts';
import { flaggedIn, nextMarked, type IsMarked } from './next-marked.ts';
import { panelActs } from './panel-acts-of.ts';
import { panelOf } from './panel-of.ts';
import { isOpen, toggled } from './section-rows.ts';

/** The size bench of the page: one job, or a quote as it was issued. */
export interface BenchStore {
  readonly opened: ReadonlySignal<OpenedBench | undefined>;
  readonly display: ReadonlySignal<Display>;
  readonly view: ReadonlySignal<BenchView>;
  readonly chosen: ReadonlySignal<BoxPlace | undefined>;
  readonly panel: ReadonlySignal<PanelView | undefined>;
  /** A new object whenever the panel may have changed, so that it can be followed without computing the panel. */
  readonly panelTurn: ReadonlySignal<object>;
  /** Keys of the sizes shown; the same list while they do not change. */
  readonly sizes: ReadonlySignal<readonly string[]>;
  /** The heading of the view: the job's or quote's title. */
  readonly title: ReadonlySignal<string>;
  readonly acts: AllBenchActs;
  readonly panelActs: PanelActs;
  /** Opens a job or an issued quote on the bench; without an id, the first job that is not closed. */
  readonly open: (id: string | undefined) => void;
  /** Opens a line's section and shows the line; `false` if there is no line of this name. */
  readonly reveal: (row: string) => boolean;
  readonly findLine: (words: string) => BoxPlace | undefined;
  readonly nextFlag: (back: boolean) => BoxPlace | undefined;
  /** Cells that the last edit moved, by column. */
  readonly moved: ReadonlySignal<MovedCells>;
  /** The next of them after the chosen cell; its section is opened. */
  readonly nextMoved: (back: boolean) => BoxPlace | undefined;
  readonly compare: (one: string, other: string) => Comparison | undefined;
  readonly close: () => void;
}

export interface BenchParts {
  readonly book: BookStore;
  readonly clock: Clock;
  /** Asks to add a size; a separate view shows the choices. */
  readonly takeSize: () => void;
  /** Returns the keyboard to the grid. */
  readonly leavePanel: () => void;
  /** Selects a cell of the grid and moves the keyboard there. */
  readonly go: (place: BoxPlace) => void;
  /** Asks about an edit of the house first; left out, it is done at once. */
  readonly editHouse?: EditHouse;
  /** No view shows the bench at first. */
  readonly later?: boolean;
}

const emptyView: BenchView = {
  recipe: { title: '', aside: '' },
  rows: [],
  foot: [],
  columns: [],
  boxOf: () => undefined,
  footOf: () => ({ figure: '', flags: [], spoken: '', copied: '' }),
};

export function openBenchStore(parts: BenchParts): BenchStore {
  const { book, clock } = parts;
  const display = displayFrom(book);
  const session = openBenchSession({ book, clock, display, later: parts.later });
  const chosen = signal<BoxPlace | undefined>(undefined);
  const steps = signal<readonly string[]>([]);
  const view = computed(() => session.opened.value?.shown.view.value ?? emptyView);
  const panelTurn = turnsOf({ session, display, chosen, steps });
  const choose = (place: BoxPlace | undefined) => {
    if (place?.row === chosen.peek()?.row && place?.column === chosen.peek()?.column) return;
    steps.value = [];
    chosen.value = place;
  };
  const acts = benchActs({ book, session, choose, takeSize: parts.takeSize, editHouse: parts.editHouse });
  const moved = movedStore({ session, display, clock, tell: book.tellMoved });
  const stopConfirming = confirming({ book, clock, opened: session.opened, display });
  const reveal = (row: string) => revealIn(session.opened.peek(), row);
  const after = markedAfter(session, chosen);
  return {
    opened: session.opened,
    display,
    view,
    chosen,
    panel: computed(() => panelNow(panelTurn.value)),
    panelTurn,
    sizes: sizesIn(view),
    title: computed(() => session.opened.value?.worked.source().title ?? ''),
    acts,
    panelActs: panelActs({
      acts,
      chosen,
      steps,
      leave: parts.leavePanel,
      go: (place) => reveal(place.row) && parts.go(place),
      cures: (here) => cureWorker({ book, clock, here, job: () => session.opened.peek()?.job }),
    }),
    open: session.open,
    reveal,
    findLine: (words) => foundLine(session, words, chosen.peek(), reveal),
    nextFlag: (back) => after(back, ({ shown }) => flaggedIn(shown.scans)),
    moved: moved.cells,
    nextMoved: (back) => after(back, () => (column, row) => moved.cells.peek().get(column)?.has(row) ?? false),
    compare: (one, other) => comparison(session.opened.peek(), one, other),
    close: () => {
      stopConfirming();
      moved.close();
      session.close();
    },
  };
}

function displayFrom({ records }: Pick<BookStore, 'records'>): ReadonlySignal<Display> {
  const displayMemo = memo<Display>();
  return computed(() => displayMemo([records.value.workshop], () => displayOf(workshopOf(records.value))));
}

function sizesIn(view: ReadonlySignal<BenchView>): ReadonlySignal<readonly string[]> {
  const sizesMemo = memo<readonly string[]>();
  return computed(() => {
    const keys = view.value.columns.map((head) => head.key);
    return sizesMemo(keys, () => keys);
  });
}

/** What the panel reads; a new object with every change of it. */
function turnsOf({ session, display, chosen, steps }: Turning): ReadonlySignal<PanelTurn> {
  return computed(() => {
    const opened = session.opened.value;
    void [opened?.worked.version.value, opened?.shown.scanned.value, display.value];
    return { opened, chosen: chosen.value, steps: steps.value };
  });
}

interface Turning extends Pick<BenchStore, 'display' | 'chosen'> {
  readonly session: BenchSession;
  readonly steps: ReadonlySignal<readonly string[]>;
}

interface PanelTurn {
  readonly opened: OpenedBench | undefined;
  readonly chosen: BoxPlace | undefined;
  readonly steps: readonly string[];
}

/** The side panel follows the selected cell, or the line stepped down to, through every change of the bench. */
function panelNow({ opened, chosen, steps }: PanelTurn): PanelView | undefined {
  const column = chosen && opened?.worked.source().columns.find((each) => each.key === chosen.column);
  if (!opened || !column) return undefined;
  const limit = limitOfRow(chosen.row) && limitPanelOf(opened, chosen.row, column);
  if (limit) return limit;
  const path = [chosen.row, ...steps];
  return panelOf({
    worked: opened.worked,
    column,
    line: path.at(-1) ?? chosen.row,
    steppedFrom: path.slice(0, -1),
    faces: opened.shown.facesIn(column),
  });
}

function limitPanelOf({ job, shown }: OpenedBench, row: string, column: BenchColumn): PanelView | undefined {
  const limit = shown.limits.of(column.key).find(({ use }) => use === limitOfRow(row));
  const at = { column: column.key, called: calledOf(column), display: shown.faces().display, job };
  return limit && limitPanel(limit, at);
}

function sectionOf({ shown }: OpenedBench, row: string): string | undefined {
  const use = limitOfRow(row);
  if (use) return shown.limitUses().includes(use) ? LIMITS : undefined;
  return shown.faces().of(row)?.line.section;
}

function revealIn(opened: OpenedBench | undefined, row: string): boolean {
  const section = opened && sectionOf(opened, row);
  if (!opened || section === undefined) return false;
  const { folds, view } = opened.shown;
  const { turned, all } = folds.peek();
  const isShown = () => view.peek().rows.some((each) => each.kind === 'line' && each.id === row);
  if (!isOpen(section, folds.peek())) folds.value = { turned: toggled(turned, section), all };
  if (!isShown()) folds.value = { ...folds.peek(), all: new Set([...all, section]) };
  return true;
}

/** A line by its label in the selected size, or a size by its name at the selected line. */
function foundLine(
  session: BenchSession,
  words: string,
  chosen: BoxPlace | undefined,
  reveal: (row: string) => boolean,
): BoxPlace | undefined {
  const opened = session.opened.peek();
  if (!opened) return undefined;
  const { columns } = opened.worked.source();
  const { row = firstRow(opened), column = columns[0]?.key } = chosen ?? {};
  const place = placeIn(findNamed(namedLines(opened.shown.faces()), words)?.line, column);
  if (place && reveal(place.row)) return place;
  return placeIn(row, findNamed(namedSizes(columns), words)?.key);
}

function placeIn(row: string | undefined, column: string | undefined): BoxPlace | undefined {
  return row === undefined || column === undefined ? undefined : { row, column };
}

function firstRow(opened: OpenedBench): string | undefined {
  return opened.shown.view.peek().rows.find((each) => each.kind === 'line')?.id;
}

/** Finds the next marked cell after the chosen one, and opens its section. */
function markedAfter(session: BenchSession, chosen: ReadonlySignal<BoxPlace | undefined>) {
  return (back: boolean, isMarkedIn: (opened: OpenedBench) => IsMarked): BoxPlace | undefined => {
    const opened = session.opened.peek();
    if (!opened) return undefined;
    const source = opened.worked.source();
    const lines = [...source.lines.map((line) => line.name), ...opened.shown.limitUses().map(limitRowId)];
    const columns = source.columns.map((column) => column.key);
    const place = nextMarked({ lines, columns, isMarked: isMarkedIn(opened) }, chosen.peek(), back);
    if (place) revealIn(opened, place.row);
    return place;
  };
}

function comparison(opened: OpenedBench | undefined, one: string, other: string): Comparison | undefined {
  const columns = opened?.worked.source().columns;
  const left = columns?.find((column) => column.key === one);
  const right = columns?.find((column) => column.key === other);
  return opened && left && right ? compareColumns(opened.worked, opened.shown, left, right) : undefined;
}
