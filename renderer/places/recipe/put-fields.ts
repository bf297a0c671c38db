import type { LineFields as Fields } from '#shared-calc/acts/recipe-acts.ts';
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
