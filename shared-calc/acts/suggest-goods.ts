/** Goods with what they are called. */
export interface NamedGoods {
  readonly id: string;
  readonly label: string;
}

/**
 * The goods whose words a row of a list has most in common with, longer words counting more; `undefined` if none fits
 * in two fifths of its letters at least. A suggestion only: nothing is taken by it without a person's choice.
 */
export function suggestGoods<G extends NamedGoods>(words: string, goods: Iterable<G>): G | undefined {
  const asked = wordsOf(words);
  let best: G | undefined;
  let most = 0;
  for (const each of goods) {
    const own = wordsOf(each.label);
    const shared = weightOf(own.filter((word) => asked.some((other) => isLike(word, other))));
    const fit = shared / Math.max(1, Math.min(weightOf(own), weightOf(asked)));
    if (fit >= 0.4 && shared > most) [best, most] = [each, shared];
  }
  return best;
}

function wordsOf(text: string): readonly string[] {
  return [...new Set(text.toLowerCase().match(/\p{L}{3,}/gu) ?? [])];
}

function weightOf(words: readonly string[]): number {
  return words.reduce((sum, { length }) => sum + length, 0);
}

/** One is the other with an ending: bark and barks. */
function isLike(one: string, other: string): boolean {
  const [short, long] = one.length < other.length ? [one, other] : [other, one];
  return long.startsWith(short) && long.length - short.length <= 2;
}
