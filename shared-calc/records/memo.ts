/** Works a value out again only if one of its inputs is another object than before. */
export function memo<T>(): (on: readonly unknown[], work: (before: T | undefined) => T) => T {
  let last: { readonly on: readonly unknown[]; readonly value: T } | undefined;
  return (on, work) => {
    if (last && sameList(on, last.on) === last.on) return last.value;
    const value = work(last?.value);
    last = { on, value };
    return value;
  };
}

export function memos<T>(): (key: string, on: readonly unknown[], work: (before: T | undefined) => T) => T {
  const byKey = new Map<string, ReturnType<typeof memo<T>>>();
  return (key, on, work) => {
    const one = byKey.get(key) ?? memo<T>();
    byKey.set(key, one);
    return one(on, work);
  };
}

/** Works a value out on first use. */
export function lazy<T>(work: () => T): () => T {
  let value: { readonly is: T } | undefined;
  return () => (value ??= { is: work() }).is;
}

/** The previous list if the next one has the very same items. */
export function sameList<T>(next: readonly T[], before: readonly T[] | undefined): readonly T[] {
  return before?.length === next.length && next.every((each, at) => each === before[at]) ? before : next;
}
