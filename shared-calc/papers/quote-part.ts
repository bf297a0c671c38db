import type { Guess, Missing } from '#shared-calc/buy/missing.ts';
import type { KnownSums } from '#shared-calc/bench/order-sums.ts';
import { countGuesses, countMissing, sayMissingFigure } from '#shared-calc/buy/say-missing.ts';

/** What the sums of a quote wait for, and which of their prices are guesses. */
export type QuotePart = Pick<KnownSums, 'missing' | 'guesses'>;

export const WHOLE: QuotePart = { missing: [], guesses: [] };

/** Its sums are at least what they say. */
export function isPart(part: Pick<QuotePart, 'missing'> | undefined): boolean {
  return part !== undefined && part.missing.length > 0;
}

/** The margin of a line of a quote; none while it is not given. */
export function marginIn(
  { missing }: Pick<QuotePart, 'missing'>,
  { group, margin }: { readonly group: string; readonly margin: number },
): number | undefined {
  return missing.some(({ kind, of }) => kind === 'margin' && of === group) ? undefined : margin;
}

/** `at least 604.20`, where anything is missing. */
export function atLeast(figure: string, part: Pick<QuotePart, 'missing'> | undefined): string {
  return isPart(part) ? `at least ${figure}` : figure;
}

/** The name of a sum: `Price, at least`. */
export function sumLabel(label: string, part: Pick<QuotePart, 'missing'> | undefined): string {
  return isPart(part) ? `${label}, at least` : label;
}

/** `7 prices missing; 1 price is a guess`; empty if it is whole. */
export function sayPart({ missing, guesses }: QuotePart): string {
  return [countMissing(missing), countGuesses(guesses)].filter((words) => words !== '').join('; ');
}

/** The same where there is little room: `7 prices missing`, `18 missing`, `3 guesses`. */
export function sayPartShort({ missing, guesses }: QuotePart): string {
  if (missing.length === 0) return guesses.length < 2 ? countGuesses(guesses) : `${guesses.length} guesses`;
  return missing.every(({ what }) => what === missing[0]?.what) ? countMissing(missing) : `${missing.length} missing`;
}

/** Whether a tax is not given, so that what is known of it is not even a part. */
export function isTaxMissing({ missing }: Pick<QuotePart, 'missing'>): boolean {
  return missing.some(({ what }) => what === 'tax');
}

/** A row for each figure that is missing or a guess. */
export function sayEachLack(part: QuotePart | undefined): readonly string[] {
  if (!part) return [];
  return [
    ...part.missing.map((each) => `not known yet: ${sayMissingFigure(each)}`),
    ...part.guesses.map(({ label }) => `a guess: price of ${label}`),
  ];
}

/** What `--json` says beside such sums; nothing beside whole ones. */
export function partData({ missing, guesses }: QuotePart): {
  readonly atLeast?: true;
  readonly missing?: readonly Omit<Missing, 'at'>[];
  readonly guesses?: readonly Guess[];
} {
  return {
    ...(missing.length > 0 && { atLeast: true, missing: missing.map(missingData) }),
    ...(guesses.length > 0 && { guesses }),
  };
}

export function missingData({ what, of, label }: Missing): Omit<Missing, 'at'> {
  return { what, of, label };
}
