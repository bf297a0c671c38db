/** The most that one call may bring; far above the largest list of prices, recipe or issued quote. */
export const most = {
  /** Entries of one list, or fields of one record. */
  entries: 100_000,
  letters: 5_000_000,
  /** Lists and records within one another. */
  depth: 32,
} as const;

export type Excess = { readonly of: keyof typeof most; readonly found: number };

/** What is too large in data from outside. Looks without reading it as anything, so that it costs little. */
export function findExcess(data: unknown): Excess | undefined {
  const open: { readonly at: unknown; readonly depth: number }[] = [{ at: data, depth: 1 }];
  for (let next = open.pop(); next; next = open.pop()) {
    const { at, depth } = next;
    if (typeof at === 'string' && at.length > most.letters) return { of: 'letters', found: at.length };
    if (typeof at !== 'object' || at === null) continue;
    if (depth > most.depth) return { of: 'depth', found: depth };
    const entries: readonly unknown[] = Array.isArray(at) ? at : Object.values(at);
    if (entries.length > most.entries) return { of: 'entries', found: entries.length };
    for (const each of entries) if (isLarge(each)) open.push({ at: each, depth: depth + 1 });
  }
  return undefined;
}

/** Numbers, words of truth and short texts are within every limit. */
function isLarge(value: unknown): boolean {
  return typeof value === 'string' ? value.length > most.letters : typeof value === 'object' && value !== null;
}
