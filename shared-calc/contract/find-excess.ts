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
  const open: { readonly at: unknown; readonly depth: number }[] = [{ at: [data], depth: 0 }];
  for (let next = open.pop(); next; next = open.pop()) {
    const { at, depth } = next;
    if (typeof at === 'string') return { of: 'letters', found: at.length };
    if (depth > most.depth) return { of: 'depth', found: depth };
    const entries = entriesOf(at);
    if (entries.length > most.entries) return { of: 'entries', found: entries.length };
    for (const each of entries) if (isLarge(each)) open.push({ at: each, depth: depth + 1 });
  }
  return undefined;
}

function entriesOf(value: unknown): readonly unknown[] {
  if (Array.isArray(value)) return value;
  return typeof value === 'object' && value !== null ? Object.values(value) : [];
}

/** Texts that are too long, and what holds others. */
function isLarge(value: unknown): boolean {
  return typeof value === 'string' ? value.length > most.letters : typeof value === 'object' && value !== null;
}
