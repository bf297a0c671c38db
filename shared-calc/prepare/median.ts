/** The middle figure, or the mean of the two in the middle; `undefined` for an empty list. */
export function median(figures: readonly number[]): number | undefined {
  const sorted = figures.toSorted((one, other) => one - other);
  const middle = sorted.slice(Math.ceil(sorted.length / 2) - 1, Math.floor(sorted.length / 2) + 1);
  return sorted.length === 0 ? undefined : middle.reduce((sum, each) => sum + each, 0) / middle.length;
}
