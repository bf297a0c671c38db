/** Figures within 1e-12 of the greater are equal: 0.1 + 0.2 is 0.3. Compared with 0 there is no tolerance. */
export function isSameFigure(left: number, right: number): boolean {
  return left === right || Math.abs(left - right) <= 1e-12 * Math.max(Math.abs(left), Math.abs(right));
}
