import { animalBatch, placement } from './animal-batch.ts';
import { animalKind } from './animal-kind.ts';
import { actual, issuedQuote, job, localValue, packChoice, quoteLine, size } from './job.ts';
import { treatmentBatch, tub } from './back-room.ts';
import { cultureKind } from './culture-kind.ts';
import { difference } from './difference.ts';
import { done } from './done.ts';
import { houseChange } from './house-change.ts';
import type { Field, Fields } from './field.ts';
import type { KindName } from './kind-names.ts';
import { move, order } from './ledger.ts';
import { material, pack, packPrice } from './material.ts';
import { plant } from './plant.ts';
import { closedDay, margin, rate, taxClass } from './rates.ts';
import { line, recipe } from './recipe.ts';
import { supplier } from './supplier.ts';
import { tableView } from './table-view.ts';
import { tank } from './tank.ts';
import { workshop } from './workshop.ts';

export const recordFields = {
  workshop,
  supplier,
  tank,
  material,
  plant,
  pack,
  packPrice,
  cultureKind,
  animalKind,
  rate,
  taxClass,
  margin,
  closedDay,
  recipe,
  line,
  difference,
  job,
  size,
  localValue,
  packChoice,
  issuedQuote,
  quoteLine,
  treatmentBatch,
  tub,
  order,
  move,
  animalBatch,
  placement,
  actual,
  done,
  houseChange,
  tableView,
} as const satisfies Readonly<Record<KindName, Fields>>;

/** The fields of a kind, in the order of a record. */
export function fieldsOf(kind: KindName): readonly (readonly [string, Field])[] {
  return Object.entries<Field>(recordFields[kind]);
}

export function fieldOf(kind: KindName, key: string): Field | undefined {
  return fieldsOf(kind).find(([each]) => each === key)?.[1];
}

/** The name of a field in a book's column, an entry and a label. */
export function headingOf(kind: KindName, key: string): string {
  return fieldOf(kind, key)?.heading ?? key;
}

/** The name of a field at the start of a sentence. */
export function calledOf(kind: KindName, key: string): string {
  const field = fieldOf(kind, key);
  return field?.called ?? field?.heading ?? key;
}
