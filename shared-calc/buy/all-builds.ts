/** What one line gives in one column. */
export interface BuildAmount {
  readonly line: string;
  /** For one build. */
  readonly amount: number;
  /** Counted once for a job, from the column where it is largest. */
  readonly perJob: boolean;
  readonly column: string;
  /** The first column of the order with the same tank and the same cells, if it is another one. */
  readonly like?: string;
  /** How many builds of the column. */
  readonly count: number;
}

/** The amounts of one job, each for all builds of its column; a per-job amount counts once, the first of equal ones. */
export function allBuilds<T extends BuildAmount>(amounts: readonly T[]): readonly T[] {
  const largest = new Map<string, T>();
  for (const each of amounts) {
    const before = largest.get(each.line);
    if (each.perJob && (!before || each.amount > before.amount)) largest.set(each.line, each);
  }
  return amounts
    .filter((each) => !each.perJob || largest.get(each.line) === each)
    .map((each) => ({ ...each, amount: each.perJob ? each.amount : each.amount * each.count }));
}

/**
 * As `allBuilds`, with like columns taken together before anything is rounded: two columns of one tank come to what one
 * column of two comes to.
 */
export function pooledBuilds<T extends BuildAmount>(amounts: readonly T[]): readonly T[] {
  const pools = new Map<string, T>();
  for (const each of amounts) {
    const key = `${each.line} ${each.like ?? each.column}`;
    const pool = pools.get(key);
    pools.set(key, pool ? { ...pool, count: pool.count + each.count } : each);
  }
  return allBuilds([...pools.values()]);
}
