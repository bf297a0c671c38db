import type { BookContext } from '#renderer/books/book-api.ts';
import type { BookColumn, BookTable } from '#renderer/books/book-table.ts';
import { packRecords, pieceOf, priceColumns, type PieceRow } from '#renderer/books/piece-price.ts';
import { insertAfter, recordColumns } from '#renderer/books/record-columns.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { addRecords, removeRecords } from '#renderer/books/put-record.ts';
import { byCode, codeColumn, recordsOf } from '#renderer/books/record-table.ts';
import { mayGo } from '#renderer/books/uses-of.ts';
import type { Records, Tank } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import { added } from '#shared-calc/records/change.ts';

/** A tank with its current price. */
export interface TankRow extends PieceRow {
  readonly tank: Tank;
}

export const tankTable: BookTable<TankRow> = {
  label: 'Tank book, one tank a row',
  one: 'tank',
  view: 'tank',
  rows: (context) =>
    recordsOf(context.records, 'tank')
      .toSorted(byCode)
      .map((tank) => ({ id: tank.id, tank, ...pieceOf(tank.id, context) })),
  columns: tankColumns,
  nameOf: ({ id, tank }) => `${id} ${tank.label}`.trim(),
  add: (context) => {
    const id = freeCode(context);
    const tank = freshRecord('tank', id, { frontBowMm: 0, sideReturnMm: 0, frontVentMm: 0 });
    return { id, change: addRecords(`new tank ${id}`, [added('tank', tank)]) };
  },
  copy: (context, row) => {
    const id = freeCode(context);
    return { id, change: addRecords(`${id}, a copy of ${row.id}`, [added('tank', { ...row.tank, id })]) };
  },
  remove: ({ records }, rows) => removeTanks(records, rows),
};

/** Tanks and materials share the price book, so a code must be free in both. */
function freeCode({ records }: BookContext): string {
  return nextCode('T', [...records.tank.keys(), ...records.material.keys()]);
}

function removeTanks(records: Records, rows: readonly TankRow[]): ReturnType<NonNullable<typeof tankTable.remove>> {
  const may = mayGo(
    'tank',
    rows.map(({ id }) => id),
    records,
  );
  if (!may.ok) return may;
  const gone = rows.flatMap(({ id, tank }) => [...packRecords(records, id), added('tank', tank)]);
  return ok(removeRecords(`${rows.map(({ id }) => id).join(', ')} removed`, gone));
}

function tankColumns(context: BookContext): readonly BookColumn<TankRow>[] {
  const columns = recordColumns<'tank', TankRow>(
    { kind: 'tank', recordOf: ({ tank }) => tank, widths: { figures: 4.25, label: 14.5 } },
    context,
  );
  return [codeColumn(3.5), ...insertAfter(columns, 'supplier', priceColumns(context))];
}
