import type { z } from 'zod';

import { schemaOf } from '#shared-calc/fields/field.ts';
import { kindNames, type KindName } from '#shared-calc/fields/kind-names.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';

/*
 * The records of a book, each made of its fields in `fields/`. A bare number has its unit in the field's name
 * (`insideLengthMm`); money is whole coins (`priceCoins`); a share is 0.12 for 12 %; a day is `YYYY-MM-DD`.
 */

export const recordKinds = {
  workshop: schemaOf(recordFields.workshop),
  supplier: schemaOf(recordFields.supplier),
  tank: schemaOf(recordFields.tank),
  material: schemaOf(recordFields.material),
  plant: schemaOf(recordFields.plant),
  pack: schemaOf(recordFields.pack),
  packPrice: schemaOf(recordFields.packPrice),
  cultureKind: schemaOf(recordFields.cultureKind),
  animalKind: schemaOf(recordFields.animalKind),
  rate: schemaOf(recordFields.rate),
  taxClass: schemaOf(recordFields.taxClass),
  margin: schemaOf(recordFields.margin),
  closedDay: schemaOf(recordFields.closedDay),
  recipe: schemaOf(recordFields.recipe),
  line: schemaOf(recordFields.line),
  difference: schemaOf(recordFields.difference),
  job: schemaOf(recordFields.job),
  size: schemaOf(recordFields.size),
  localValue: schemaOf(recordFields.localValue),
  packChoice: schemaOf(recordFields.packChoice),
  issuedQuote: schemaOf(recordFields.issuedQuote),
  quoteLine: schemaOf(recordFields.quoteLine),
  treatmentBatch: schemaOf(recordFields.treatmentBatch),
  tub: schemaOf(recordFields.tub),
  order: schemaOf(recordFields.order),
  move: schemaOf(recordFields.move),
  animalBatch: schemaOf(recordFields.animalBatch),
  placement: schemaOf(recordFields.placement),
  actual: schemaOf(recordFields.actual),
  done: schemaOf(recordFields.done),
  houseChange: schemaOf(recordFields.houseChange),
  tableView: schemaOf(recordFields.tableView),
} as const satisfies Readonly<Record<KindName, z.ZodType>>;

export type RecordKind = KindName;
export type RecordOf<K extends RecordKind> = z.infer<(typeof recordKinds)[K]>;

export type Workshop = RecordOf<'workshop'>;
export type Supplier = RecordOf<'supplier'>;
export type Tank = RecordOf<'tank'>;
export type Material = RecordOf<'material'>;
export type Pack = RecordOf<'pack'>;
export type PackPrice = RecordOf<'packPrice'>;
export type Plant = RecordOf<'plant'>;
export type CultureKind = RecordOf<'cultureKind'>;
export type AnimalKind = RecordOf<'animalKind'>;
export type Rate = RecordOf<'rate'>;
export type TaxClass = RecordOf<'taxClass'>;
export type Margin = RecordOf<'margin'>;
export type Recipe = RecordOf<'recipe'>;
export type Line = RecordOf<'line'>;
export type Difference = RecordOf<'difference'>;
export type Job = RecordOf<'job'>;
export type Size = RecordOf<'size'>;
export type LocalValue = RecordOf<'localValue'>;
export type PackChoice = RecordOf<'packChoice'>;
export type IssuedQuote = RecordOf<'issuedQuote'>;
export type QuoteLine = RecordOf<'quoteLine'>;
export type TreatmentBatch = RecordOf<'treatmentBatch'>;
export type Tub = RecordOf<'tub'>;
export type Order = RecordOf<'order'>;
export type Move = RecordOf<'move'>;
export type AnimalBatch = RecordOf<'animalBatch'>;
export type Placement = RecordOf<'placement'>;
export type Actual = RecordOf<'actual'>;
export type Done = RecordOf<'done'>;
export type HouseChange = RecordOf<'houseChange'>;
export type TableView = RecordOf<'tableView'>;

/** The kinds in reference order. */
export const allKinds: readonly RecordKind[] = kindNames;

/** The result of `of` for each kind, by name. The compiler cannot check that it fits the kind; `of` must. */
export function mapKinds<T extends Readonly<Record<RecordKind, unknown>>>(of: (kind: RecordKind) => unknown): T {
  return Object.fromEntries(allKinds.map((kind) => [kind, of(kind)])) as T;
}

/** A whole book in memory: per kind, records by id. */
export type Records = { readonly [K in RecordKind]: ReadonlyMap<string, RecordOf<K>> };

export const emptyRecords: Records = mapKinds<Records>(() => new Map());
