import { readRule } from '#shared-calc/rule/read-rule.ts';
import { ungrouped } from '#shared-calc/rule/tree.ts';
import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { BenchView, BoxView, HeadView } from '#renderer/bench/view-model.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { benchLimits, type BenchLimits } from './bench-limits.ts';
import { benchTotals, type JobTotals } from './bench-totals.ts';
import { benchScans, type BenchScans, type LoudTotals } from './bench-scans.ts';
import type { BenchSource } from './bench-source.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { absentView, boxView, sameBoxView } from './box-view.ts';
import type { Clock } from './clock.ts';
import { footBox, footRows } from './foot-boxes.ts';
import { headView } from './head-view.ts';
import { headline } from './headlines.ts';
import { memo, sameList } from '#shared-calc/records/memo.ts';
import { facesByLines, lineFaces, type LineFace, type LineFaces } from './line-faces.ts';
import { limitUses, type PlaceUse } from '#shared-calc/jobs/place-checks.ts';
import { limitBox, limitOfRow } from './limit-rows.ts';
import { limitRows, noFolds, sectionRows, titleOfSection, type Folds } from './section-rows.ts';
import type { WorkedBench } from './worked-bench.ts';

/** What the page shows of a computed bench. */
export interface ShownBench {
  readonly view: ReadonlySignal<BenchView>;
  readonly folds: Signal<Folds>;
  readonly faces: () => LineFaces;
  /** Of the recipe of a size. */
  readonly facesIn: (column: Pick<BenchColumn, 'lines'>) => LineFaces;
  readonly scans: BenchScans;
  readonly limits: BenchLimits;
  /** The limits that any size has, in order. */
  readonly limitUses: () => readonly PlaceUse[];
  /** Increases when scans and limits that were worked in slices are done. */
  readonly scanned: ReadonlySignal<number>;
  /** Columns with cells requested since the last view. */
  readonly inSight: () => readonly string[];
}

export interface ShowParts {
  readonly worked: WorkedBench;
  readonly display: ReadonlySignal<Display>;
  readonly clock: Clock;
}

/** What a column's cells are read from; while the stamp is equal, they read the same. */
type Stamp = readonly unknown[];

interface ColumnViews {
  readonly stamp: Stamp;
  readonly boxes: Map<string, BoxView | undefined>;
  readonly before: ReadonlyMap<string, BoxView | undefined>;
}

/** A view of the bench, rebuilt with every change; cells that did not change keep their identity. */
export function showBench({ worked, display, clock }: ShowParts): ShownBench {
  const folds = signal<Folds>(noFolds);
  const scanned = signal(0);
  const limits = benchLimits(worked, display);
  const scans = benchScans({ worked, limits, clock }, () => (scanned.value += 1));
  const totalled = signal(0);
  const jobTotals = benchTotals({ worked, clock }, () => (totalled.value += 1));
  const facesMemo = memo<LineFaces>();
  const faces = () =>
    facesMemo([worked.source().lines, display.value], () => lineFaces(worked.source().lines, display.value));
  const facesOfLines = facesByLines();
  const facesIn = ({ lines }: Pick<BenchColumn, 'lines'>) => (lines ? facesOfLines(lines, display.value) : faces());
  const parts: Parts = {
    worked,
    scans,
    jobTotals,
    limits,
    faces,
    facesIn,
    rows: new Map(),
    columns: new Map(),
    heads: new Map(),
    seen: new Set(),
    seenBefore: new Set(),
  };
  const view = computed<BenchView>(() => {
    void [scanned.value, totalled.value];
    void worked.version.value;
    return viewOf(parts, folds.value);
  });
  return {
    view,
    folds,
    faces,
    facesIn,
    scans,
    limits,
    limitUses: () => usesIn(parts),
    scanned,
    inSight: () => [...new Set([...parts.seen, ...parts.seenBefore])].slice(0, MOST_IN_SIGHT),
  };
}

type Row = BenchView['rows'][number];

interface Parts {
  readonly worked: WorkedBench;
  readonly scans: BenchScans;
  readonly jobTotals: () => JobTotals | undefined;
  readonly limits: BenchLimits;
  readonly faces: () => LineFaces;
  readonly facesIn: ShownBench['facesIn'];
  rows: ReadonlyMap<string, Row>;
  readonly columns: Map<string, ColumnViews>;
  readonly heads: Map<string, { readonly stamp: Stamp; readonly column: BenchColumn; readonly head: HeadView }>;
  /** Columns with cells requested since the last view, and between the two views before that. */
  seen: Set<string>;
  seenBefore: ReadonlySet<string>;
}

/** At most this many columns can be in sight. */
const MOST_IN_SIGHT = 24;

function viewOf(parts: Parts, folds: Folds): BenchView {
  const { worked, scans } = parts;
  const source = worked.source();
  const faces = parts.faces();
  const totals = scans.totals();
  const byKey = new Map(source.columns.map((column) => [column.key, column]));
  if (parts.seen.size > 0) {
    parts.seenBefore = parts.seen;
    parts.seen = new Set();
  }
  return {
    recipe: { title: `${source.recipe.id} ${source.recipe.title}`, aside: recipeAside(source) },
    rows: rowsOf(parts, [
      ...sectionRows({ faces, totals, folds, asideOf: (face) => partsAside(face, { faces, totals, source }) }),
      ...limitRows({ uses: usesIn(parts), totals, folds }),
    ]),
    foot: footRows(faces, parts.jobTotals()),
    columns: source.columns.map((column) => headFor(parts, column)),
    boxOf: (row, key) => {
      const column = byKey.get(key);
      return column && worked.isWorked(key) ? boxFor(parts, row, column) : undefined;
    },
    footOf: (row, key) => {
      const column = byKey.get(key);
      if (!column || !worked.isWorked(key)) return { figure: '', flags: [], spoken: 'not worked yet', copied: '' };
      return footBox(row, {
        worked,
        faces: parts.facesIn(column),
        column: key,
        called: calledOf(column),
        scan: scans.of(key),
      });
    },
  };
}

/** A row that did not change keeps its identity, so that the grid does not redraw it. */
function rowsOf(parts: Parts, made: readonly Row[]): readonly Row[] {
  const rows = made.map((row) => {
    const before = parts.rows.get(row.id);
    return before && sameData(before, row) ? before : row;
  });
  parts.rows = new Map(rows.map((row) => [row.id, row]));
  return rows;
}

/** Reuses the previous cell if nothing in its column changed, or if it changed but reads the same. */
function boxFor(parts: Parts, row: string, column: BenchColumn): BoxView | undefined {
  const views = viewsOf(parts, column);
  if (views.boxes.has(row)) return views.boxes.get(row);
  const made = makeBox(parts, row, column);
  const before = views.before.get(row);
  const box = made && sameBoxView(before, made) ? before : made;
  views.boxes.set(row, box);
  return box;
}

/** The limits that any size has, in order. */
function usesIn({ worked, limits }: Parts): readonly PlaceUse[] {
  const uses = new Set(worked.source().columns.flatMap(({ key }) => limits.of(key).map(({ use }) => use)));
  return limitUses.filter((use) => uses.has(use));
}

function makeBox({ worked, limits, faces, facesIn }: Parts, row: string, column: BenchColumn): BoxView | undefined {
  const shown = facesIn(column);
  const use = limitOfRow(row);
  if (use) {
    const limit = limits.of(column.key).find((each) => each.use === use);
    return limit && limitBox(limit, calledOf(column), shown.display);
  }
  const [face, ofRow] = [shown.of(row), faces().of(row)];
  const { issued, recipe } = worked.source();
  if (!ofRow) return headline(worked.bench(), column.key, titleOfSection(row), shown);
  if (!face) return absentView(ofRow, calledOf(column), column.recipe ?? recipe.id);
  const at = { bench: worked.bench(), column: column.key, called: calledOf(column), rowUnit: ofRow.unit };
  return boxView(face, { ...at, faces: shown, issued });
}

function viewsOf(parts: Parts, column: BenchColumn): ColumnViews {
  parts.seen.add(column.key);
  const known = parts.columns.get(column.key);
  const stamp = [...stampOf(parts, column), parts.limits.of(column.key)];
  if (known && sameList(stamp, known.stamp) === known.stamp) return known;
  const before = new Map([...(known?.before ?? []), ...(known?.boxes ?? [])]);
  const next = { stamp, boxes: new Map<string, BoxView | undefined>(), before };
  parts.columns.set(column.key, next);
  return next;
}

/** Differs whenever a line's cell of the column may have changed. */
function stampOf({ worked, faces }: Parts, column: BenchColumn): Stamp {
  return [worked.revision(column.key), faces(), column.label, column.recipe];
}

function headFor(parts: Parts, column: BenchColumn): HeadView {
  const { worked, facesIn, heads } = parts;
  const known = heads.get(column.key);
  // A size out of sight shows its old head until its slice is computed.
  if (known?.column === column && worked.isBehind(column.key)) return known.head;
  const ready = worked.isWorked(column.key);
  const source = worked.source();
  const stamp = [...stampOf(parts, column), ready, source.recipe, source.recipes];
  if (known?.column === column && sameList(stamp, known.stamp) === known.stamp) return known.head;
  const made = headView(column, ready ? worked.bench() : undefined, facesIn(column), source);
  const head = known && sameData(known.head, made) ? known.head : made;
  heads.set(column.key, { stamp, column, head });
  return head;
}

function recipeAside({ issued, whole }: BenchSource): string {
  if (issued !== undefined) return `as it stood in quote ${issued}`;
  if (whole.size === 0) return '';
  return whole.size === 1 ? '1 value for the whole job' : `${whole.size} values for the whole job`;
}

interface AsideParts {
  readonly faces: LineFaces;
  readonly totals: LoudTotals;
  readonly source: BenchSource;
}

/** `3 parts` next to a part of a mix, if all sizes follow the house and have one recipe. */
function partsAside({ line }: LineFace, { faces, totals, source }: AsideParts): string {
  const parts = line.inset ? faces.of(partsNameIn(line.text)) : undefined;
  if (source.columns.some((column) => column.lines !== undefined)) return '';
  if (!parts || (totals.get(parts.line.name)?.get('local') ?? 0) > 0) return '';
  const text = source.job.get(parts.line.name) ?? parts.line.text;
  if (!/^[\d.]+$/.test(text)) return '';
  return Number(text) === 1 ? '1 part' : `${text} parts`;
}

/** The line that gives a part of a mix its parts, from `mix_part(mix_loose, coir_parts, mix_parts, blend_shrink)`. */
function partsNameIn(text: string): string {
  const rule = readRule(text);
  const call = rule.ok ? ungrouped(rule.value) : undefined;
  const parts = call?.part === 'call' && call.name === 'mix_part' ? call.args[1] : undefined;
  return parts?.part === 'name' ? parts.name : '';
}
