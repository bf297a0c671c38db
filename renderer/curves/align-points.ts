import type { CurvePoint } from './curve-spec.ts';

/** The x values, then a column for each piece of a line; `undefined` if a piece has no point there. */
export type Aligned = readonly [readonly number[], ...(readonly (number | undefined)[])[]];

/** Pieces of lines over one row of x values, as the chart library takes them. A piece runs to the right. */
export function alignPoints(pieces: readonly (readonly CurvePoint[])[]): Aligned {
  const own = pieces.map((piece) => new Map(piece));
  const across = [...new Set(own.flatMap((points) => [...points.keys()]))].toSorted((one, other) => one - other);
  return [across, ...own.map((points) => across.map((at) => points.get(at)))];
}
