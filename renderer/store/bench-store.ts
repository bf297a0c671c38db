import { computed, signal, type ReadonlySignal } from '@preact/signals';
import type { AllBenchActs } from '#renderer/bench/bench-acts.ts';
import type { BenchView, BoxPlace } from '#renderer/bench/view-model.ts';
import type { PanelActs, PanelView } from '#renderer/panel/panel-view.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { benchActs } from './bench-acts-of.ts';
import { benchDesk, type BenchDesk, type Laid } from './bench-desk.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { compareColumns, type Comparison } from './compare-columns.ts';
import { confirming } from './confirming.ts';
import { findNamed, namedLines, namedSizes } from './find-place.ts';
import { memo } from '#shared-calc/derive/memo.ts';
import { nextFlag } from './next-flag.ts';
import { panelActs } from './panel-acts-of.ts';
import { panelOf } from './panel-of.ts';
import { isOpen, toggled } from './section-rows.ts';

/** The size bench of the page: one job, or a quote as it was issued. */
export interface BenchStore {
  readonly laid: ReadonlySignal<Laid | undefined>;
  readonly display: ReadonlySignal<Display>;
  readonly view: ReadonlySignal<BenchView>;
  readonly chosen: ReadonlySignal<BoxPlace | undefined>;
  readonly panel: ReadonlySignal<PanelView | undefined>;
  /** Another object whenever the panel may read otherwise: it can be followed without working the panel out. */
  readonly panelTurn: ReadonlySignal<object>;
  /** The keys of the sizes that stand here; the same list as before while they do. */
  readonly sizes: ReadonlySignal<readonly string[]>;
  /** What the top of the place says: the job's or quote's title. */
  readonly title: ReadonlySignal<string>;
  readonly acts: AllBenchActs;
  readonly panelActs: PanelActs;
  /** Lays a job on the bench, or a quote as it was issued; left out, the first job that is not closed. */
  readonly lay: (id: string | undefined) => void;
  /** Opens a line's section and brings the line out; `false` where no line is called so. */
  readonly reveal: (row: string) => boolean;
  readonly findLine: (words: string) => BoxPlace | undefined;
  readonly nextFlag: (back: boolean) => BoxPlace | undefined;
  readonly compare: (one: string, other: string) => Comparison | undefined;
  readonly close: () => void;
}

export interface BenchParts {
  readonly book: BookStore;
  readonly clock: Clock;
  /** Asks for a size to be taken: a place of its own shows what there is. */
  readonly takeSize: () => void;
  /** Gives the keyboard back to the strips. */
  readonly leavePanel: () => void;
  /** Nothing on the page shows the bench at first. */
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
  const keptDisplay = memo<Display>();
  const display = computed(() =>
    keptDisplay([book.records.value.workshop], () => displayOf(workshopOf(book.records.value))),
  );
  const desk = benchDesk({ book, clock, display, later: parts.later });
  const chosen = signal<BoxPlace | undefined>(undefined);
  const steps = signal<readonly string[]>([]);
  const view = computed(() => desk.laid.value?.shown.view.value ?? emptyView);
  const panelTurn = turnsOf({ desk, display, chosen, steps });
  const panel = computed(() => panelNow(panelTurn.value));
  const choose = (place: BoxPlace | undefined) => {
    if (place?.row === chosen.peek()?.row && place?.column === chosen.peek()?.column) return;
    steps.value = [];
    chosen.value = place;
  };
  const acts = benchActs({ book, desk, choose, takeSize: parts.takeSize });
  const stopConfirming = confirming({ book, clock, laid: desk.laid, display });
  const reveal = (row: string) => revealIn(desk.laid.peek(), row);
  return {
    laid: desk.laid,
    display,
    view,
    chosen,
    panel,
    panelTurn,
    sizes: sizesIn(view),
    title: computed(() => desk.laid.value?.worked.source().title ?? ''),
    acts,
    panelActs: panelActs({ acts, chosen, steps, leave: parts.leavePanel }),
    lay: desk.lay,
    reveal,
    findLine: (words) => foundLine(desk, words, chosen.peek(), reveal),
    nextFlag: (back) => flagAfter(desk, chosen.peek(), back, reveal),
    compare: (one, other) => comparison(desk.laid.peek(), one, other),
    close: () => {
      stopConfirming();
      desk.close();
    },
  };
}

function sizesIn(view: ReadonlySignal<BenchView>): ReadonlySignal<readonly string[]> {
  const keptSizes = memo<readonly string[]>();
  return computed(() => {
    const keys = view.value.columns.map((head) => head.key);
    return keptSizes(keys, () => keys);
  });
}

/** What the panel reads, another object with every change of it. */
function turnsOf({ desk, display, chosen, steps }: Turning): ReadonlySignal<PanelTurn> {
  return computed(() => {
    const laid = desk.laid.value;
    void [laid?.worked.version.value, display.value];
    return { laid, chosen: chosen.value, steps: steps.value };
  });
}

interface Turning extends Pick<BenchStore, 'display' | 'chosen'> {
  readonly desk: BenchDesk;
  readonly steps: ReadonlySignal<readonly string[]>;
}

interface PanelTurn {
  readonly laid: Laid | undefined;
  readonly chosen: BoxPlace | undefined;
  readonly steps: readonly string[];
}

/** The slip follows the chosen box, a step down at a time, through every change of the bench. */
function panelNow({ laid, chosen, steps }: PanelTurn): PanelView | undefined {
  const column = chosen && laid?.worked.source().columns.find((each) => each.key === chosen.column);
  if (!laid || !column) return undefined;
  const path = [chosen.row, ...steps];
  return panelOf({
    worked: laid.worked,
    column,
    line: path.at(-1) ?? chosen.row,
    steppedFrom: path.slice(0, -1),
    faces: laid.shown.faces(),
  });
}

function revealIn(laid: Laid | undefined, row: string): boolean {
  const line = laid?.shown.faces().of(row)?.line;
  if (!laid || !line) return false;
  const { folds, view } = laid.shown;
  const { turned, all } = folds.peek();
  const isShown = () => view.peek().rows.some((each) => each.kind === 'line' && each.id === row);
  if (!isOpen(line.section, folds.peek())) folds.value = { turned: toggled(turned, line.section), all };
  if (!isShown()) folds.value = { ...folds.peek(), all: new Set([...all, line.section]) };
  return true;
}

/** A line by its words in the chosen size, or a size by its name at the chosen line. */
function foundLine(
  desk: BenchDesk,
  words: string,
  chosen: BoxPlace | undefined,
  reveal: (row: string) => boolean,
): BoxPlace | undefined {
  const laid = desk.laid.peek();
  if (!laid) return undefined;
  const { columns } = laid.worked.source();
  const { row = firstRow(laid), column = columns[0]?.key } = chosen ?? {};
  const place = placeIn(findNamed(namedLines(laid.shown.faces()), words)?.line, column);
  if (place && reveal(place.row)) return place;
  return placeIn(row, findNamed(namedSizes(columns), words)?.key);
}

function placeIn(row: string | undefined, column: string | undefined): BoxPlace | undefined {
  return row === undefined || column === undefined ? undefined : { row, column };
}

function firstRow(laid: Laid): string | undefined {
  return laid.shown.view.peek().rows.find((each) => each.kind === 'line')?.id;
}

function flagAfter(
  desk: BenchDesk,
  chosen: BoxPlace | undefined,
  back: boolean,
  reveal: (row: string) => boolean,
): BoxPlace | undefined {
  const laid = desk.laid.peek();
  if (!laid) return undefined;
  const source = laid.worked.source();
  const lines = source.lines.map((line) => line.name);
  const columns = source.columns.map((column) => column.key);
  const place = nextFlag({ lines, columns, scans: laid.shown.scans }, chosen, back);
  if (place) reveal(place.row);
  return place;
}

function comparison(laid: Laid | undefined, one: string, other: string): Comparison | undefined {
  const columns = laid?.worked.source().columns;
  const left = columns?.find((column) => column.key === one);
  const right = columns?.find((column) => column.key === other);
  return laid && left && right ? compareColumns(laid.worked, laid.shown.faces(), left, right) : undefined;
}
