/** Goods with what they are called. */
export interface NamedGoods {
  readonly id: string;
  readonly label: string;
}

/**
 * Finds the goods whose words a row of a list has most in common with, longer words counting more; `undefined` if none
 * fits in two fifths of its letters at least. A suggestion only: nothing is taken by it without a person's choice.
 */
export function goodsSuggester<G extends NamedGoods>(goods: Iterable<G>): (words: string) => G | undefined {
  const named = [...goods].map((each) => ({ each, own: wordsOf(each.label) }));
  // Two words are alike only if they begin alike.
  const byStart = new Map<string, Set<number>>();
  for (const [at, { own }] of named.entries())
    for (const word of own) {
      const start = word.slice(0, START);
      byStart.set(start, (byStart.get(start) ?? new Set()).add(at));
    }
  return (words) => {
    const asked = wordsOf(words);
    const candidates = new Set(asked.flatMap((word) => [...(byStart.get(word.slice(0, START)) ?? [])]));
    let best: G | undefined;
    let most = 0;
    for (const at of [...candidates].toSorted((one, other) => one - other)) {
      const { each, own } = named[at] ?? { own: [] };
      const shared = weightOf(own.filter((word) => asked.some((other) => isLike(word, other))));
      const fit = shared / Math.max(1, Math.min(weightOf(own), weightOf(asked)));
      if (fit >= 0.4 && shared > most) [best, most] = [each, shared];
    }
    return best;
  };
}

/** The letters of the shortest word that counts. */
const START = 3;

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
