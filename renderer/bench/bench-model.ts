import type { CellKey, GridModel, GridRow } from '#renderer/grid/grid-model.ts';
import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { BenchMetrics } from './bench-metrics.ts';
import type { Shown } from './paint-cell.ts';
import type { BenchRow, BenchView, BoxPlace } from './view-model.ts';

/** The key of the column of names. */
export const namesKey = '';

export interface BenchModel extends GridModel<Shown> {
  readonly view: BenchView;
  readonly rowOf: (key: string) => BenchRow | undefined;
}

/** A view as a model of the grid: lines and sections are rows, sizes are columns, the sums are in the foot. */
export function benchModel(view: BenchView, helpFor: (place: BoxPlace) => RuleHelp): BenchModel {
  const rows: readonly BenchRow[] = [...view.rows, ...view.foot];
  const byKey = new Map(rows.map((row) => [rowKey(row), row]));
  const model: BenchModel = {
    view,
    rowOf: (key) => byKey.get(key),
    rows: rows.map((row) => ({ key: rowKey(row), looks: looksOf(row) })),
    pinned: view.foot.length,
    stops: stopsOf(view),
    columns: [{ key: namesKey, title: 'Lines' }, ...view.columns.map(({ key, label }) => ({ key, title: label }))],
    shownAt: ({ row: key, column }) => {
      const row = byKey.get(key);
      if (!row) return { kind: 'box', box: undefined };
      if (column === namesKey) return { kind: 'name', row };
      if (row.kind === 'foot') return { kind: 'foot', box: view.footOf(row.id, column) };
      return { kind: 'box', box: view.boxOf(row.id, column) };
    },
    rowName: (key) => nameOf(byKey.get(key)),
    copied: (at) => copiedAt(model, at),
    entryAt: (at) => {
      const box = isBox(model, at) ? view.boxOf(at.row, at.column) : undefined;
      if (!box) return undefined;
      if (box.closedBy) return { closed: box.closedBy.why };
      if (box.closed) return { closed: 'This quote is issued and stays as it is. Make a revision to change it.' };
      return { text: box.entry, label: box.spoken, help: helpFor(at) };
    },
  };
  return model;
}

/** Whether a cell belongs to a line: not a name, a section head or a sum. Its row and column then identify it. */
export function isBox({ rowOf }: BenchModel, { row, column }: CellKey): boolean {
  return column !== namesKey && rowOf(row)?.kind === 'line';
}

export function isOpenBox(model: BenchModel, at: CellKey): boolean {
  return isBox(model, at) && model.view.boxOf(at.row, at.column)?.closed === false;
}

function copiedAt({ view, rowOf }: BenchModel, { row: key, column }: CellKey): string {
  const row = rowOf(key);
  if (!row) return '';
  if (column === namesKey) return row.kind === 'section' ? row.title : row.label;
  if (row.kind === 'foot') return view.footOf(row.id, column).copied;
  // An open section shows no headline: its lines show the figure.
  if (row.kind === 'section' && row.open) return '';
  return view.boxOf(row.id, column)?.copied ?? '';
}

/** `Litter depth, mm`; a section's title alone. */
function nameOf(row: BenchRow | undefined): string {
  if (!row) return '';
  if (row.kind === 'section') return row.title;
  return row.unit === '' ? row.label : `${row.label}, ${row.unit}`;
}

/** A key that is unique among all rows: a section, a line and a sum may share a name. */
function rowKey(row: BenchRow): string {
  return row.kind === 'line' ? row.id : `${row.kind} ${row.id}`;
}

/** Section heads, and the first row of the foot. */
function stopsOf(view: BenchView): readonly number[] {
  const heads = view.rows.flatMap((row, index) => (row.kind === 'section' ? [index] : []));
  return view.foot.length > 0 ? [...heads, view.rows.length] : heads;
}

type RowLook = 'section-head' | 'open' | 'sum' | 'hours' | 'price' | 'flags';

const footLooks: Readonly<Record<string, readonly RowLook[]>> = {
  hours: ['sum', 'hours'],
  gross: ['sum', 'price'],
  flags: ['sum', 'flags'],
};

function looksOf(row: BenchRow): readonly RowLook[] {
  if (row.kind === 'line') return [];
  if (row.kind === 'section') return row.open ? ['section-head', 'open'] : ['section-head'];
  return footLooks[row.id] ?? ['sum'];
}

/** Height of a row, px. */
export function rowHeight({ looks }: GridRow, metrics: BenchMetrics): number {
  const has = (look: RowLook) => looks.includes(look);
  if (has('section-head')) return metrics.section;
  if (has('price')) return metrics.price;
  if (has('flags')) return metrics.flags;
  if (has('sum')) return has('hours') ? metrics.foot + 4 : metrics.foot;
  return metrics.line;
}
