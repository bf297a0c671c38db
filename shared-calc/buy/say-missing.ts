import type { Guess, Missing } from './missing.ts';

const names: Readonly<Record<Missing['what'], readonly [one: string, several: string]>> = {
  price: ['price', 'prices'],
  rate: ['rate', 'rates'],
  tax: ['tax', 'taxes'],
  measure: ['measure', 'measures'],
};

/** `7 prices and 1 measure missing`; empty if nothing is. */
export function countMissing(missing: readonly Pick<Missing, 'what'>[]): string {
  const counts = [...Map.groupBy(missing, ({ what }) => what)].map(([what, same]) =>
    countWords(same.length, names[what]),
  );
  return counts.length === 0 ? '' : `${joined(counts)} missing`;
}

/** `3 prices are guesses`; empty if none is. */
export function countGuesses({ length }: readonly Guess[]): string {
  if (length === 0) return '';
  return length === 1 ? '1 price is a guess' : `${length} prices are guesses`;
}

/** Each by its name: `Not known yet: price of Cork panel; T15, dam height.` */
export function listMissing(missing: readonly Missing[]): string {
  return `Not known yet: ${missing.map(sayMissingFigure).join('; ')}.`;
}

/** `price of Cork panel`; `rate of Builder`; `T15, dam height` */
export function sayMissingFigure({ what, kind, label }: Missing): string {
  if (what === 'price') return `price of ${label}`;
  return kind === 'rate' ? `rate of ${label}` : label;
}

function countWords(count: number, [one, several]: readonly [string, string]): string {
  return `${count} ${count === 1 ? one : several}`;
}

function joined(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
