import type { MaterialNeed } from './material-need.ts';

export const missingWhats = ['price', 'rate', 'tax', 'measure'] as const;

/** A figure that a sum waits for: without it the sum is at least what it says. */
export interface Missing {
  readonly what: (typeof missingWhats)[number];
  /** The material, the rate or margin, the tax class or the tank that it is a figure of. */
  readonly of: string;
  readonly label: string;
  /** The kind of record it is given in; left out of a price and a measure. */
  readonly kind?: 'rate' | 'margin' | 'taxClass' | 'workshop';
  /** Where a measure is written: a line of a size. */
  readonly at?: { readonly line: string; readonly column: string };
}

/** A price that nobody has asked a supplier for. */
export interface Guess {
  /** The material. */
  readonly of: string;
  readonly label: string;
}

type Priced = Pick<MaterialNeed, 'material' | 'label' | 'lacks' | 'guess'>;

export function missingPrices(needs: readonly Priced[]): readonly Missing[] {
  return needs.flatMap(({ material: of, label, lacks }) => (lacks ? [{ what: 'price', of, label }] : []));
}

export function guessedPrices(needs: readonly Priced[]): readonly Guess[] {
  return needs.flatMap(({ material: of, label, guess = false }) => (guess ? [{ of, label }] : []));
}

/** Guesses as what keeps a quote from being issued. */
export function guessesAsMissing(guesses: readonly Guess[]): readonly Missing[] {
  return guesses.map(({ of, label }) => ({ what: 'price', of, label: `${label} (a guess)` }));
}
