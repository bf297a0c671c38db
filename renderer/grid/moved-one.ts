/** Which one of some was moved, and to what place from 0; `undefined` if none was, or more than one. */
export function movedOne(
  before: readonly string[],
  after: readonly string[],
): { readonly key: string; readonly to: number } | undefined {
  const at = after.findIndex((key, place) => key !== before[place]);
  const candidates = at < 0 ? [] : [after[at], before[at]].filter((key) => key !== undefined);
  const without = (keys: readonly string[], key: string) => keys.filter((each) => each !== key).join('\n');
  const key = candidates.find((each) => without(before, each) === without(after, each));
  return key === undefined ? undefined : { key, to: after.indexOf(key) };
}
