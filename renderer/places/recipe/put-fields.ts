import type { LineFields as Fields } from '#shared-calc/acts/recipe-acts.ts';
import { fieldOf } from '#shared-calc/fields/record-fields.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** Sets fields of a line; the sentence says why not. */
export type PutFields = (fields: Fields) => string | undefined;

export interface LineFields {
  readonly line: Line;
  readonly put: PutFields;
}

/** A text that may be left out. */
export function given(text: string): string | undefined {
  const tidy = text.trim();
  return tidy === '' ? undefined : tidy;
}

/** What the entry of a field is called, with its help. */
export function entryOf(key: keyof Line): { readonly label: string; readonly hint?: string } {
  const { heading = key, help } = fieldOf('line', key) ?? {};
  return { label: heading, ...(help !== undefined && { hint: help }) };
}
