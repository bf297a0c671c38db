import type { DecimalSign } from '#shared-calc/quantity/read-number.ts';

/** What is wrong with a text that a person typed; `name` is the quantity, as a sentence begins with it. */
export type EntryFault = { readonly name: string } & (
  | { readonly kind: 'empty'; readonly wants: 'figure' | 'word' | 'day' }
  | { readonly kind: 'not-a-figure'; readonly text: string }
  | { readonly kind: 'unknown-unit'; readonly unit: string }
  /** Two readings are possible; each is given in a form that has only one. */
  | { readonly kind: 'two-readings'; readonly text: string; readonly readings: readonly string[] }
  | { readonly kind: 'other-sign'; readonly text: string; readonly sign: DecimalSign; readonly like: string }
  | { readonly kind: 'other-kind'; readonly text: string; readonly unit: string }
  | { readonly kind: 'not-whole'; readonly value: number; readonly unit: string }
  | { readonly kind: 'too-low'; readonly value: number; readonly low: number; readonly unit: string }
  | { readonly kind: 'too-high'; readonly value: number; readonly high: number; readonly unit: string }
  | { readonly kind: 'not-money'; readonly text: string }
  | { readonly kind: 'below-zero'; readonly text: string }
  | { readonly kind: 'too-much-money'; readonly text: string }
  | { readonly kind: 'part-of-coin'; readonly text: string }
  | { readonly kind: 'not-a-day'; readonly text: string; readonly like?: string }
  | { readonly kind: 'no-such-day'; readonly text: string }
  /** `options` are the allowed words. */
  | { readonly kind: 'unknown-word'; readonly text: string; readonly options: readonly string[] }
  /** `says` is the required form, from the description of its field. */
  | { readonly kind: 'other-form'; readonly says: string }
  | { readonly kind: 'not-a-weekday'; readonly text: string }
  | { readonly kind: 'neither-yes-nor-no'; readonly text: string }
);
