/** Memoises the last result; recomputes when any dependency changes identity. */
export function memoLast<T>(): (from: readonly unknown[], make: (before: T | undefined) => T) => T {
  let last: { readonly from: readonly unknown[]; readonly made: T } | undefined;
  return (from, make) => {
    if (last && from.length === last.from.length && from.every((each, at) => each === last?.from[at])) return last.made;
    const made = make(last?.made);
    last = { from, made };
    return made;
  };
}

/** The list of before where the next one holds the very same things. */
export function sameList<T>(next: readonly T[], before: readonly T[] | undefined): readonly T[] {
  return before?.length === next.length && next.every((each, at) => each === before[at]) ? before : next;
}
