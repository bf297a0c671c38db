import type { Field } from '#shared-calc/fields/field.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import type { KindName } from '#shared-calc/fields/kind-names.ts';
import { asTyped, type AsTyped } from '#shared-calc/quantity/as-typed.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import { plainFigureText, type ReadFigure } from '#shared-calc/quantity/figure-reading.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { unitOfField, type FieldContext } from './field-text.ts';

export type TypedTexts = Readonly<Record<string, string>>;

/** The text of a figure as it was typed; `undefined` if none is kept, or the figure has been changed since. */
export function typedText(
  typed: TypedTexts | undefined,
  key: string,
  field: Field,
  value: unknown,
): string | undefined {
  const text = typed?.[key];
  const { unit } = field;
  if (text === undefined || unit === undefined || typeof value !== 'number') return undefined;
  const read = readFigure(text, { unit });
  const isSame = read.ok && cleanNoise(fromBase(read.value.value, unitOf(unit))) === cleanNoise(value);
  return isSame ? text : undefined;
}

/** The same for a field of a record. */
export function typedIn(kind: KindName, record: object, key: string, value: unknown): string | undefined {
  const field = fieldOf(kind, key);
  return field && typedText(typedTexts(record), key, field, value);
}

/** The kept texts of a record. */
export function typedTexts(record: object): TypedTexts | undefined {
  const typed = 'typed' in record ? record.typed : undefined;
  return isTexts(typed) ? typed : undefined;
}

function isTexts(typed: unknown): typed is TypedTexts {
  return typeof typed === 'object' && typed !== null;
}

/**
 * The text to keep of a figure that was typed, with a point for the decimals and its unit: a bare number has the one
 * that was shown. `undefined` if the stored figure says as much.
 */
export function textToKeep(field: Field, text: string, display: Display): string | undefined {
  const { unit, kind } = field;
  if (kind !== 'figure' || unit === undefined || ['number', 'share', 'each'].includes(unit)) return undefined;
  const shown = unitOfField(field, display);
  const decimalComma = display.decimalComma ?? false;
  const read = readFigure(text.trim(), { unit: shown, decimalComma });
  if (!read.ok || saysNoMore(text, read.value, { unit, shown })) return undefined;
  const plain = plainFigureText(text.trim(), read.value.written, decimalComma);
  return read.value.written === 'bare' ? `${plain} ${unitWords(shown, '')}` : plain;
}

/** A plain figure in the unit that it is stored and shown in. */
function saysNoMore(
  text: string,
  { written, unit }: ReadFigure,
  of: { readonly unit: string; readonly shown: string },
): boolean {
  return of.shown === of.unit && unit.symbol === of.unit && written !== 'in parts' && !text.includes('/');
}

/** The kept texts with one of them changed; left out if none is left. */
export function withTyped(
  typed: TypedTexts | undefined,
  key: string,
  text: string | undefined,
): TypedTexts | undefined {
  const { [key]: _, ...others } = typed ?? {};
  const texts = text === undefined ? others : { ...others, [key]: text };
  return Object.keys(texts).length === 0 ? undefined : texts;
}

/** A kept text as it is shown beside the unit of its field; `undefined` if there is none, or it says no more. */
export function fieldAsTyped(field: Field, text: string | undefined, { display }: FieldContext): AsTyped | undefined {
  if (text === undefined) return undefined;
  return asTyped(text, field.unit ?? 'number', unitOfField(field, display), display);
}
