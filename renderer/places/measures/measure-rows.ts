import type { BookContext } from '#renderer/books/book-api.ts';
import type { BookColumn, BookRow, BookTable } from '#renderer/books/book-table.ts';
import { updateRecord } from '#renderer/books/put-record.ts';
import { writeCells } from '#shared-calc/acts/cell-acts.ts';
import { allOpenMeasures, openMeasuresOf, type OpenMeasure } from '#shared-calc/derive/open-measures.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { boxFigure, shownUnitWords } from '#shared-calc/quantity/figure-words.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import { showField } from '#shared-calc/records/field-text.ts';
import { fieldAsTyped, typedIn } from '#shared-calc/records/typed-figure.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';

export interface MeasureRow extends BookRow, OpenMeasure {
  /** Nothing waits for it any more. */
  readonly isGiven: boolean;
}

/**
 * The measurements that some jobs wait for, or the whole workshop where none is named. A row that is given its figure
 * stays while the table is shown, so that it can be corrected.
 */
export function measureTable(jobs: readonly string[]): BookTable<MeasureRow> {
  const shown = new Map<string, OpenMeasure>();
  return {
    label: 'Measurements missing, one a row',
    one: 'measurement',
    view: 'measures',
    firstColumn: 'figure',
    rows: (context) => {
      const open = jobs.length === 0 ? allOpenMeasures(context) : openMeasuresOf(context, jobs);
      for (const each of open) if (!shown.has(each.id)) shown.set(each.id, each);
      const now = new Map(open.map((each) => [each.id, each]));
      return [...shown.values()].map((each) => ({ ...(now.get(each.id) ?? each), isGiven: !now.has(each.id) }));
    },
    columns: (context) => [
      closedColumn({ key: 'thing', title: 'Of', width: 16, show: ({ thing }) => thing }),
      closedColumn({ key: 'line', title: 'Measurement', width: 12, show: ({ line }) => lineLabel(line) }),
      figureColumn(context),
      closedColumn({ key: 'unit', title: 'In', width: 5, show: ({ line }) => unitOrWords(line, context) }),
      waitColumn('amounts', 'Amounts'),
      waitColumn('checks', 'Checks'),
      closedColumn({ key: 'jobs', title: 'Jobs', width: 8, show: (row) => row.jobs.join(', ') }),
      quotesColumn(context),
    ],
    nameOf: ({ thing, line }) => `${thing}, ${lineLabel(line)}`,
  };
}

type Column = BookColumn<MeasureRow>;

const closed = 'This is worked from the jobs and their recipes.';

function closedColumn(parts: Pick<Column, 'key' | 'title' | 'width' | 'show'>): Column {
  return { unit: '', look: 'words', entry: parts.show, closed, ...parts };
}

/** How many amounts or checks wait. */
function waitColumn(key: 'amounts' | 'checks', title: string): Column {
  const count = (row: MeasureRow) => (row.isGiven ? 0 : row[key]);
  return { ...closedColumn({ key, title, width: 5, show: (row) => String(count(row)) }), look: 'figure', rank: count };
}

function quotesColumn({ workshop }: BookContext): Column {
  const coins = ({ isGiven, quotesCoins }: MeasureRow) => (isGiven ? undefined : quotesCoins);
  const show = (row: MeasureRow) => showCoins(coins(row), workshop);
  return {
    ...closedColumn({ key: 'quotes', title: 'Quotes so far', width: 7, show }),
    unit: workshop.currency,
    look: 'figure',
    rank: coins,
    closed: 'What the quotes that wait for it come to without it.',
  };
}

/** What may be written: the unit, or the words of a choice. */
function unitOrWords({ unit, options }: Line, { display }: BookContext): string {
  if (unit === 'yes_no') return 'yes or no';
  return unit === 'choice' ? (options ?? []).join(', ') : shownUnitWords(unit, display);
}

function figureColumn(context: BookContext): Column {
  const show = (row: MeasureRow) => figureOf(row, context);
  return {
    key: 'figure',
    title: 'Figure',
    unit: '',
    look: 'figure',
    width: 7,
    show,
    entry: show,
    write: (row, text) => (text.trim() === '' ? ok(emptyChange('')) : written(row, text, context)),
  };
}

function figureOf({ at, line }: MeasureRow, context: BookContext): string {
  if (at.kind === 'cell')
    return boxFigure(cellOf(at, line, context) ?? { value: undefined }, line.unit, context.display);
  const tank = context.records.tank.get(at.tank);
  if (!tank) return '';
  const [field, value] = [recordFields.tank[at.key], tank[at.key]];
  return fieldAsTyped(field, typedIn('tank', tank, at.key, value), context)?.figure ?? showField(field, value, context);
}

function cellOf({ job, column }: { readonly job: string; readonly column: string }, line: Line, context: BookContext) {
  const open = context.job(job);
  return open?.keys.includes(column) ? open.bench.box(column, line.name) : undefined;
}

/** In the tank book or on the bench, read as it is read there. */
function written({ at, line }: MeasureRow, text: string, context: BookContext): Result<Change, string> {
  if (at.kind === 'cell') {
    const { job, column } = at;
    const done = writeCells.run(context, { job, cells: [{ column, line: line.name, text }] });
    return done.ok ? done : failed(sayActFault(done.fault));
  }
  const from = context.records.tank.get(at.tank);
  if (!from) return failed(`${at.tank} is no longer in the tank book.`);
  const to = editField({ kind: 'tank', record: from, key: at.key, text }, context);
  if (!to.ok) return failed(sayFieldFault(to.fault));
  const label = `${recordFields.tank[at.key].heading.toLowerCase()} of ${at.tank}`;
  return updateRecord(label, 'tank', { from, to: to.value });
}
