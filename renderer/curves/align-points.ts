import type { CurvePoint } from './curve-spec.ts';

/** The points across, then a column for each piece of a line; `undefined` where a piece has no point. */
export type Aligned = readonly [readonly number[], ...(readonly (number | undefined)[])[]];

/** Pieces of lines over one row of points across, as the drawing takes them. A piece goes to the right. */
export function alignPoints(pieces: readonly (readonly CurvePoint[])[]): Aligned {
  const own = pieces.map((piece) => new Map(piece));
  const across = [...new Set(own.flatMap((points) => [...points.keys()]))].toSorted((one, other) => one - other);
  return [across, ...own.map((points) => across.map((at) => points.get(at)))];
}
