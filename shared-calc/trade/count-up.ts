/** Rounds a count up to the whole, after removing binary noise of 1e-9: 3.0000000001 is 3. */
export function countUp(figure: number): number {
  return Math.ceil(figure - 1e-9) + 0;
}

/** Rounds a count down to the whole, after removing binary noise of 1e-9: 2.9999999999 is 3. */
export function countDown(figure: number): number {
  return Math.floor(figure + 1e-9) + 0;
}
