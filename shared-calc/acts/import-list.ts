import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { findUnit, unitOf } from '#shared-calc/quantity/unit.ts';
import { readCsv, type BadRow, type CsvFault, type CsvRow } from '#shared-calc/read/csv-rows.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { FieldFault } from '#shared-calc/records/edit-field.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

export type RowFault =
  | CsvFault
  | { readonly kind: 'strange-heading'; readonly heading: string; readonly known: readonly string[] }
  | { readonly kind: 'no-rows'; readonly many: string }
  | { readonly kind: 'twice'; readonly called: string }
  /** A new record needs a value under this heading. */
  | { readonly kind: 'not-filled-in'; readonly heading: string; readonly code?: string }
  | { readonly kind: 'bad-field'; readonly code: string; readonly fault: FieldFault }
  /** `known` are the codes of the books of materials, tanks and plants. */
  | { readonly kind: 'unknown-goods'; readonly code: string; readonly known: readonly string[] }
  | { readonly kind: 'unit-of-goods'; readonly code: string; readonly unit: string; readonly own: string }
  | {
      readonly kind: 'no-such-pack';
      readonly code: string;
      readonly amount: number;
      readonly unit: string;
      readonly packs: readonly number[];
    };

export type RefusedRow = BadRow<RowFault>;

/** A row that can be imported. */
export interface ReadRow<T> {
  /** What the person sees of it. */
  readonly taken: T;
  /** The id of the record that it writes; two rows may not write the same record. */
  readonly id: string;
  readonly called: string;
  readonly change: Pick<Change, 'added' | 'updated'>;
}

export interface ListForm<T> {
  /** The plural noun for its label: "tanks". */
  readonly many: string;
  readonly label: string;
  /** Required headings. */
  readonly needs: readonly string[];
  /** All allowed headings; a list without this field ignores unknown headings. */
  readonly known?: readonly string[];
  readonly readRow: (row: CsvRow) => Result<ReadRow<T>, RowFault>;
}

export interface ListImport<T> {
  readonly taken: readonly T[];
  readonly refused: readonly RefusedRow[];
  /** Empty while any row is refused: a list is imported whole or not at all. */
  readonly change: Change;
}

/** Reads a list from CSV text, row by row. Nothing is ever removed. */
export function importList<T>(text: string, form: ListForm<T>): ListImport<T> {
  const { rows, refused } = readCsv(text, form.needs);
  const strange = strangeHeadings(rows, form);
  const faults: RefusedRow[] = [...refused, ...strange];
  const read = new Map<string, ReadRow<T>>();
  for (const row of strange.length > 0 ? [] : rows) {
    const one = form.readRow(row);
    if (!one.ok) faults.push({ row: row.row, fault: one.fault });
    else if (read.has(one.value.id)) faults.push({ row: row.row, fault: { kind: 'twice', called: one.value.called } });
    else read.set(one.value.id, one.value);
  }
  if (rows.length === 0 && faults.length === 0) faults.push({ row: 1, fault: { kind: 'no-rows', many: form.many } });
  const all = faults.length > 0 ? [] : [...read.values()];
  return {
    taken: [...read.values()].map(({ taken }) => taken),
    refused: faults.toSorted((a, b) => a.row - b.row),
    change: {
      ...emptyChange(form.label),
      added: all.flatMap(({ change }) => change.added),
      updated: all.flatMap(({ change }) => change.updated),
    },
  };
}

function strangeHeadings<T>(rows: readonly CsvRow[], { known }: ListForm<T>): readonly RefusedRow[] {
  if (!known) return [];
  return Object.keys(rows[0]?.fields ?? {})
    .filter((heading) => !known.includes(heading))
    .map((heading) => ({ row: 1, fault: { kind: 'strange-heading', heading, known } }));
}

/** The unit of the goods; refused if no goods have the code, or if the row's unit is of another kind. */
export function unitOfRow(code: string, unit: string, records: Records): Result<string, RowFault> {
  const own = unitOfGoods(code, records);
  if (own === undefined)
    return failed({
      kind: 'unknown-goods',
      code,
      known: [...records.material.keys(), ...records.tank.keys(), ...records.plant.keys()],
    });
  const given = findUnit(unit);
  const fits = given !== undefined && sameDimension(given.dimension, unitOf(own).dimension);
  return fits ? ok(own) : failed({ kind: 'unit-of-goods', code, unit, own });
}
