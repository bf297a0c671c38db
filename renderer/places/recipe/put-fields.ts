import type { LineFields as Fields } from '#shared-calc/acts/recipe-acts.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Sets fields of a line; returns a sentence if refused. */
export type PutFields = (fields: Fields) => string | undefined;

export interface LineFields {
  readonly line: Line;
  readonly put: PutFields;
}

/** An optional text; null takes it away. */
export function given(text: string): string | null {
  const tidy = text.trim();
  return tidy === '' ? null : tidy;
}

/** The label of a field's input, with its help. */
export function entryOf(key: keyof Line): { readonly label: string; readonly hint?: string } {
  const { heading = key, help } = fieldOf('line', key) ?? {};
  return { label: heading, ...(help !== undefined && { hint: help }) };
}
