import { circleSegment } from './circle-segment.ts';

export const tankShapes = ['rectangle', 'bow', 'corner', 'hexagon', 'cylinder'] as const;
export type TankShape = (typeof tankShapes)[number];

/** Inside measurements in mm; those that a shape does not have are ignored. */
export interface TankSizes {
  readonly shape: TankShape;
  /** Side of a hexagon or corner tank, diameter of a cylinder. */
  readonly length: number;
  readonly depth: number;
  readonly bow: number;
  readonly side_return: number;
}

/** The properties of a floor that the sums need, in mm and mm2. */
export interface TankFloor {
  readonly area: number;
  readonly perimeter: number;
  readonly overallDepth: number;
  /** From the back to the front, the direction in which the soil falls; for a corner tank along its diagonal. */
  readonly run: number;
  /** The centre of the area along the run: 0 is the back, 1 the front. */
  readonly centroid: number;
  /** Area within `width` of the frontmost point or edge; `width` is at most the run. */
  readonly strip: (width: number) => number;
  /** Flat glass that can carry a background: the back, and one side. */
  readonly back: number;
  readonly side: number;
  /** How high on an even slope the middle of that wall is: 0 at the front, 1 at the back. */
  readonly backHeight: number;
  readonly sideHeight: number;
  /**
   * Squares of glass thickness that the corners add outside: the sum of tan(half the turning angle) over the corners.
   */
  readonly corners: number;
}

/** A bow under a millionth of a micrometre, in mm, counts as none: its radius would not be finite. */
const FLATTEST = 1e-9;

const floorOfShape: Readonly<Record<TankShape, (sizes: TankSizes) => TankFloor>> = {
  rectangle,
  bow,
  corner,
  hexagon,
  cylinder,
};

/** The floor of a tank whose measurements are already checked (`onFloor`). */
export function floorOf(sizes: TankSizes): TankFloor {
  return floorOfShape[sizes.shape](sizes);
}

function rectangle({ length, depth }: TankSizes): TankFloor {
  return {
    area: length * depth,
    perimeter: 2 * (length + depth),
    overallDepth: depth,
    run: depth,
    centroid: 1 / 2,
    strip: (width) => width * length,
    back: length,
    side: depth,
    backHeight: 1,
    sideHeight: 1 / 2,
    corners: 4,
  };
}

/** A rectangle of the side depth, with a segment of a circle in front. */
function bow(sizes: TankSizes): TankFloor {
  const { length, depth, bow: sagitta } = sizes;
  if (sagitta < FLATTEST) return rectangle(sizes);
  const radius = length ** 2 / (8 * sagitta) + sagitta / 2;
  const front = circleSegment(radius, sagitta);
  const area = length * depth + front.area;
  const slope = (2 * sagitta) / length;
  const arc = length * (1 + slope ** 2) * (Math.atan(slope) / slope);
  const fromBack = (length * depth * (depth / 2) + front.area * (depth + front.centroid)) / area;
  return {
    ...rectangle(sizes),
    area,
    perimeter: length + 2 * depth + arc,
    overallDepth: depth + sagitta,
    run: depth + sagitta,
    centroid: fromBack / (depth + sagitta),
    sideHeight: 1 - depth / 2 / (depth + sagitta),
    strip: (width) => (width < sagitta ? circleSegment(radius, width).area : front.area + (width - sagitta) * length),
  };
}

/** A square whose front corner is cut off at 45 degrees; two walls are at the back. */
function corner({ length, side_return }: TankSizes): TankFloor {
  const cut = length - side_return;
  const edge = cut * Math.SQRT2;
  const area = length ** 2 - cut ** 2 / 2;
  const run = (length - cut / 2) * Math.SQRT2;
  const alongWall = (length ** 3 / 2 - (cut ** 2 / 2) * (length - cut / 3)) / area;
  return {
    area,
    perimeter: 2 * length + 2 * side_return + edge,
    overallDepth: length,
    run,
    centroid: (alongWall * Math.SQRT2) / run,
    strip: (width) => (width < side_return * Math.SQRT1_2 ? width * (edge + width) : area - (run - width) ** 2),
    back: 2 * length,
    side: side_return,
    backHeight: 1 - ((length / 2) * Math.SQRT1_2) / run,
    sideHeight: 1 - ((length + side_return / 2) * Math.SQRT1_2) / run,
    corners: 3 + 2 * Math.tan(Math.PI / 8),
  };
}

/** Six equal sides, one of them to the front. */
function hexagon({ length }: TankSizes): TankFloor {
  const root3 = Math.sqrt(3);
  const area = (3 / 2) * root3 * length ** 2;
  const run = length * root3;
  const slopes = (width: number) => width * (length + width / root3);
  return {
    area,
    perimeter: 6 * length,
    overallDepth: run,
    run,
    centroid: 1 / 2,
    strip: (width) => (width < run / 2 ? slopes(width) : area - slopes(run - width)),
    back: length,
    side: length,
    backHeight: 1,
    sideHeight: 3 / 4,
    corners: 6 * Math.tan(Math.PI / 6),
  };
}

function cylinder({ length: diameter }: TankSizes): TankFloor {
  return {
    area: (Math.PI / 4) * diameter ** 2,
    perimeter: Math.PI * diameter,
    overallDepth: diameter,
    run: diameter,
    centroid: 1 / 2,
    strip: (width) => circleSegment(diameter / 2, width).area,
    back: 0,
    side: 0,
    backHeight: 1,
    sideHeight: 1 / 2,
    corners: Math.PI,
  };
}
