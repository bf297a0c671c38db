/** A reading: its time, in any one unit, and its figure. */
export type Reading = readonly [when: number, figure: number];

/**
 * How long the straight lines between readings are within a band; in the unit of the times. Bounds are inclusive. Fewer
 * than two readings give 0.
 */
export function timeWithin(readings: readonly Reading[], low: number, high: number): number {
  let within = 0;
  for (const [at, from] of readings.slice(0, -1).entries()) {
    const to = readings[at + 1] ?? from;
    within += (to[0] - from[0]) * shareWithin([from[1], to[1]], low, high);
  }
  return within;
}

function shareWithin([one, other]: readonly [number, number], low: number, high: number): number {
  const least = Math.min(one, other);
  const most = Math.max(one, other);
  if (least === most) return least >= low && most <= high ? 1 : 0;
  return Math.max(0, Math.min(most, high) - Math.max(least, low)) / (most - least);
}
