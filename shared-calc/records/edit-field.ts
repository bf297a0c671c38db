import { fieldOf, fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { Field } from '#shared-calc/fields/field.ts';
import type { EntryFault } from '#shared-calc/read/entry-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { FieldIssue } from './book-fault.ts';
import { added, type Added } from './change.ts';
import { parseField, valueOf, type FieldContext } from './field-text.ts';
import { misfitOf, notOfShape, type Misfit } from './misfit.ts';
import type { Material, Rate, RecordKind, RecordOf } from './records.ts';
import { parseRecord } from './references.ts';
import { withoutUndefined } from './without-undefined.ts';
import { asShaped, isMeasured } from './tank-shape.ts';
import { textToKeep, typedTexts, withTyped, type TypedTexts } from './typed-figure.ts';

/** Why a text is refused for a field of a record. */
export type FieldFault =
  | EntryFault
  | Misfit
  /** The record would not be valid in a book. */
  | { readonly kind: 'not-kept'; readonly issues: readonly FieldIssue[] };

/** A text for one field of a record. */
export interface FieldEntry<K extends RecordKind> {
  readonly kind: K;
  readonly record: RecordOf<K>;
  readonly key: string;
  readonly text: string;
}

/** The record with a text set in one of its fields, and with the fields that depend on it. */
export function editField<K extends RecordKind>(
  { kind, record, key, text }: FieldEntry<K>,
  context: FieldContext,
): Result<RecordOf<K>, FieldFault> {
  const closed = closedFor(added(kind, record), key);
  if (closed) return failed(closed);
  const to = putField({ kind, record, key, text }, context);
  if (!to.ok) return to;
  const isSame = valueOf(record, key) === valueOf(to.value, key);
  const settled = keep(kind, isSame ? to.value : settledWith(added(kind, to.value), key));
  if (!settled.ok) return settled;
  const wrong = misfitOf(added(kind, settled.value), context.records);
  return wrong ? failed(wrong) : settled;
}

/** The record with a text set in one of its fields, and nothing more. */
export function putField<K extends RecordKind>(
  { kind, record, key, text }: FieldEntry<K>,
  context: FieldContext,
): Result<RecordOf<K>, FieldFault> {
  const field = fieldOf(kind, key);
  const value = field ? parseField(field, text, context) : ok(undefined);
  if (!value.ok || !field) return value.ok ? keep(kind, { ...record, [key]: value.value }) : value;
  return keep(
    kind,
    withoutUndefined({ ...record, [key]: value.value, ...keptText(kind, record, { key, field, text }, context) }),
  );
}

/** The text of a figure is kept where the kind has room for it; an emptied figure has none. */
function keptText<K extends RecordKind>(
  kind: K,
  record: RecordOf<K>,
  { key, field, text }: { readonly key: string; readonly field: Field; readonly text: string },
  { display }: FieldContext,
): { readonly typed?: TypedTexts | undefined } {
  if (!fieldOf(kind, 'typed')) return {};
  return { typed: withTyped(typedTexts(record), key, textToKeep(field, text, display)) };
}

function keep<K extends RecordKind>(kind: K, record: object): Result<RecordOf<K>, FieldFault> {
  const read = parseRecord(kind, record);
  return read.ok ? read : failed({ kind: 'not-kept', issues: read.fault });
}

/** Whether a record has this field at all: a cylinder has no bow. */
export function isField<K extends RecordKind>(kind: K, record: RecordOf<K>, key: string): boolean {
  return closedFor(added(kind, record), key) === undefined;
}

function closedFor({ kind, record }: Added, key: string): Misfit | undefined {
  return kind === 'tank' && !isMeasured(record.shape, key) ? notOfShape(record.shape, key) : undefined;
}

/**
 * The fields that depend on the edited one: another shape or length changes the measurements that follow from it; a
 * first day past the last day moves the last day; another figure is not from where the one before it was.
 */
function settledWith({ kind, record }: Added, key: string): object {
  if (kind === 'tank' && (key === 'shape' || key === 'insideLengthMm')) return asShaped(record);
  if ((kind === 'rate' || kind === 'material') && hasFigures[kind].includes(key)) return withoutSource(record);
  if (kind === 'closedDay' && key === 'from' && record.from > record.to) return { ...record, to: record.from };
  return record;
}

/** The fields whose figures a source is of; what is said of a material stands in its note. */
const hasFigures = { rate: ['coins', 'per'], material: ['unit', 'note'] };

function withoutSource({ source: _source, sourceNote: _sourceNote, ...record }: Rate | Material): object {
  return record;
}

/** A new record of a kind: each required field has its initial value. */
export function freshRecord<K extends RecordKind>(kind: K, id: string, over: Partial<RecordOf<K>> = {}): RecordOf<K> {
  const needed = fieldsOf(kind).filter(([, { mayBeEmpty }]) => !mayBeEmpty);
  const fresh = Object.fromEntries(needed.map(([key, field]) => [key, freshValue(field)]));
  const read = parseRecord(kind, { ...fresh, id, ...over });
  if (!read.ok) throw new Error(`a new ${kind} cannot be made: ${JSON.stringify(read.fault)}`);
  return read.value;
}

const plainValues: Readonly<Partial<Record<Field['kind'], unknown>>> = {
  words: '',
  'yes no': false,
  money: 0,
  count: 0,
  figure: 0,
  weekdays: [],
};

function freshValue({ fresh, options, kind }: Field): unknown {
  return fresh ?? options?.[0]?.value ?? plainValues[kind];
}
