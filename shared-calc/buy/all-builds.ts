/** What one line gives in one column. */
export interface BuildAmount {
  readonly line: string;
  /** For one build. */
  readonly amount: number;
  /** Counted once for a job, from the column where it is largest. */
  readonly perJob: boolean;
  readonly column: string;
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
