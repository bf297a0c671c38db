import { sameList } from './memo.ts';

/** Records of a table by owner; a group is the same list as before while its records are the same. */
export type Groups<R> = ReadonlyMap<string, readonly R[]>;

const none: readonly never[] = [];

interface Grouping<R> {
  readonly keyOf: (record: R) => string;
  readonly inOrder?: (one: R, other: R) => number;
}

export function groupsOf<R>(
  records: Iterable<R>,
  { keyOf, inOrder }: Grouping<R>,
  before: Groups<R> | undefined,
): Groups<R> {
  const groups = new Map<string, readonly R[]>();
  for (const [key, group] of Map.groupBy(records, keyOf)) {
    groups.set(key, sameList(inOrder ? group.toSorted(inOrder) : group, before?.get(key)));
  }
  return groups;
}

/** One empty list for all, so that an empty group is always the same object. */
export function groupOf<R>(groups: Groups<R>, key: string): readonly R[] {
  return groups.get(key) ?? none;
}
