/** "basic, full or show". */
export function listOr(words: readonly string[]): string {
  return listed(words, 'or');
}

/** "keeper, vet and owner". */
export function listAnd(words: readonly string[]): string {
  return listed(words, 'and');
}

function listed(words: readonly string[], last: 'and' | 'or'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
