export interface CircleSegment {
  readonly area: number;
  /** From the chord to the centre of the area. */
  readonly centroid: number;
}

/**
 * The part of a circle that a straight cut takes off at this height from the edge, up to the whole circle. Area = R^2/2
 * (theta - sin theta); its moment about the circle's centre is chord^3/12. Flat segments use their series, as the
 * difference would lose digits.
 */
export function circleSegment(radius: number, height: number): CircleSegment {
  const half = Math.sqrt(Math.max(0, height * (2 * radius - height)));
  if (height <= half / 100) return flatSegment(half, height);
  const angle = 4 * Math.atan2(height, half);
  const area = (radius ** 2 / 2) * (angle - Math.sin(angle));
  return { area, centroid: (2 * half) ** 3 / 12 / area - (radius - height) };
}

/** Within 1e-13 of the area up to a height of a hundredth of the half chord. */
function flatSegment(half: number, height: number): CircleSegment {
  const square = height === 0 ? 0 : (height / half) ** 2;
  return {
    area: (4 / 3) * half * height * (1 + square / 5 - square ** 2 / 35),
    centroid: 0.4 * height * (1 + (3 / 35) * square),
  };
}
