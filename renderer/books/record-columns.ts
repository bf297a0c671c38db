import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import type { Field, FieldKind } from '#shared-calc/fields/field.ts';
import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { editField, isField } from '#shared-calc/records/edit-field.ts';
import {
  entryOfField,
  optionsOf,
  parseField,
  showField,
  unitOfField,
  valueOf,
} from '#shared-calc/records/field-text.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { fieldAsTyped, typedIn } from '#shared-calc/records/typed-figure.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';
import type { BookContext } from './book-api.ts';
import type { BookColumn, BookRow } from './book-table.ts';
import { updateRecord } from './put-record.ts';

/** Widths in rem: of single fields, and of all other figures. */
export interface Widths {
  readonly figures?: number;
  readonly [key: string]: number | undefined;
}

interface ColumnParts<K extends RecordKind, Row> {
  readonly kind: K;
  readonly recordOf: (row: Row) => RecordOf<K>;
  readonly widths?: Widths;
}

/** The fields of a kind as columns of a table whose rows hold such a record, except its code and data. */
export function recordColumns<K extends RecordKind, Row extends BookRow>(
  parts: ColumnParts<K, Row>,
  context: BookContext,
): readonly BookColumn<Row>[] {
  const [, ...fields] = fieldsOf(parts.kind);
  return fields.flatMap(([key, field]) => (field.kind === 'data' ? [] : fieldColumn(parts, { key, field, context })));
}

/** Inserts columns that are not fields of the record after one of its columns. */
export function insertAfter<Row>(
  columns: readonly BookColumn<Row>[],
  key: string,
  others: readonly BookColumn<Row>[],
): readonly BookColumn<Row>[] {
  return columns.flatMap((column) => (column.key === key ? [column, ...others] : [column]));
}

interface ColumnOf {
  readonly key: string;
  readonly field: Field;
  readonly context: BookContext;
}

function fieldColumn<K extends RecordKind, Row extends BookRow>(
  { kind, recordOf, widths = {} }: ColumnParts<K, Row>,
  { key, field, context }: ColumnOf,
): BookColumn<Row> {
  const title = field.heading;
  const look = isFigure(field) ? 'figure' : 'words';
  const typed = (row: Row) => {
    const record = recordOf(row);
    if (!isField(kind, record, key)) return undefined;
    return fieldAsTyped(field, typedIn(kind, record, key, valueOf(record, key)), context);
  };
  const shown = (row: Row, say: typeof showField) => {
    const record = recordOf(row);
    if (!isField(kind, record, key)) return '';
    return typed(row)?.figure ?? say(field, valueOf(record, key), context);
  };
  return {
    key,
    title,
    unit: unitBeside(field, context.display),
    look,
    width: widths[key] ?? (look === 'figure' ? widths.figures : undefined) ?? usualWidths[field.kind],
    options: optionsOf(field, context.records),
    coded: field.kind === 'reference',
    ...(field.kind === 'day' && { days: context }),
    ...rankedBy(field, context, (row) => {
      const record = recordOf(row);
      return isField(kind, record, key) ? valueOf(record, key) : undefined;
    }),
    show: (row) => shown(row, showField),
    hasUnit: (row) => typed(row)?.whole === true,
    entry: (row) => shown(row, entryOfField),
    write: (row, text) => {
      const from = recordOf(row);
      const to = editField({ kind, record: from, key, text }, context);
      if (!to.ok) return failed(sayFieldFault(to.fault));
      return updateRecord(`${title.toLowerCase()} of ${row.id}`, kind, { from, to: to.value });
    },
  };
}

/** Figures, counts and money go by what is stored; days by the day; words by what is shown. */
function rankedBy<Row>(
  field: Field,
  context: BookContext,
  stored: (row: Row) => unknown,
): Pick<BookColumn<Row>, 'rank' | 'bound'> {
  if (field.kind !== 'day' && !isFigure(field)) return {};
  return {
    rank: (row) => {
      const value = stored(row);
      return typeof value === 'number' || typeof value === 'string' ? value : undefined;
    },
    ...(isFigure(field) && {
      bound: (text: string) => {
        const read = parseField(field, text, context);
        if (!read.ok) return failed(sayFieldFault(read.fault));
        return typeof read.value === 'number' ? ok(read.value) : failed(`${field.heading}: write a figure.`);
      },
    }),
  };
}

export function isFigure({ kind }: Field): boolean {
  return kind === 'figure' || kind === 'count' || kind === 'money';
}

/** The unit shown with a figure; empty if it needs none. */
export function unitBeside(field: Field, display: Display): string {
  const unit = unitOfField(field, display);
  return unit === 'each' ? '' : unitWords(unit, display.currency);
}

const usualWidths: Readonly<Record<FieldKind, number>> = {
  code: 7,
  words: 18,
  choice: 6.5,
  'yes no': 5,
  day: 7,
  money: 5.5,
  count: 5.5,
  figure: 5.5,
  reference: 13,
  weekdays: 8,
  season: 9,
  data: 12,
};
