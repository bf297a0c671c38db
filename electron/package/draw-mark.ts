/** A picture of red, green, blue and opacity, 0 to 255, row by row. */
export interface Picture {
  readonly size: number;
  readonly bytes: Uint8Array;
}

interface Shape {
  readonly corners: readonly (readonly [x: number, y: number])[];
  readonly closed: boolean;
  readonly fill: Colour | undefined;
  readonly stroke: Colour | undefined;
  readonly strokeWidth: number;
}

type Colour = readonly [red: number, green: number, blue: number];

/** Points looked at in each direction of a pixel. */
const FINE = 4;

/**
 * Draws the program's mark in any size, so that its icons need no library: paths of straight strokes along the axes
 * (`M`, `H`, `V`, `h`, `v`, `z`), with a fill, a stroke or both. Anything else in the file is a fault.
 */
export function drawMark(svg: string, size: number): Picture {
  const [left = 0, top = 0, width = 1] = attribute(svg, 'viewBox')?.split(' ').map(Number) ?? [];
  const shapes = [...svg.matchAll(/<path [^>]*>/g)].map(([path]) => readShape(path));
  const bytes = new Uint8Array(size * size * 4);
  const pixel = width / size;
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size; column += 1) {
      const colour = mixed(shapes, left + column * pixel, top + row * pixel, pixel);
      bytes.set(colour, (row * size + column) * 4);
    }
  return { size, bytes };
}

/** The colour of one pixel, of the points within it. */
function mixed(shapes: readonly Shape[], left: number, top: number, pixel: number): readonly number[] {
  const sum = [0, 0, 0];
  let opaque = 0;
  for (let at = 0; at < FINE * FINE; at += 1) {
    const x = left + (((at % FINE) + 0.5) / FINE) * pixel;
    const y = top + ((Math.floor(at / FINE) + 0.5) / FINE) * pixel;
    const colour = shapes.reduce<Colour | undefined>((under, shape) => colourAt(shape, x, y) ?? under, undefined);
    if (!colour) continue;
    opaque += 1;
    for (const [part, value] of colour.entries()) sum[part] = (sum[part] ?? 0) + value;
  }
  return opaque === 0
    ? [0, 0, 0, 0]
    : [...sum.map((value) => Math.round(value / opaque)), (255 * opaque) / (FINE * FINE)];
}

function colourAt(shape: Shape, x: number, y: number): Colour | undefined {
  if (shape.stroke && isOnStroke(shape, x, y)) return shape.stroke;
  const [xs, ys] = [shape.corners.map(([each]) => each), shape.corners.map(([, each]) => each)];
  const isInside = x >= Math.min(...xs) && x <= Math.max(...xs) && y >= Math.min(...ys) && y <= Math.max(...ys);
  return isInside ? shape.fill : undefined;
}

/** Butt ends and mitred corners, as a path along the axes has them. */
function isOnStroke({ corners, closed, strokeWidth }: Shape, x: number, y: number): boolean {
  const half = strokeWidth / 2;
  const first = corners[0];
  const ends = closed && first ? [...corners, first] : corners;
  return ends.slice(1).some(([toX, toY], at) => {
    const [fromX, fromY] = ends[at] ?? [toX, toY];
    const beyond = (isOuter: boolean) => (isOuter && !closed ? 0 : half);
    const startsAt = beyond(at === 0);
    const endsAt = beyond(at === ends.length - 2);
    const along =
      fromY === toY
        ? { from: fromX, to: toX, is: x, across: y - fromY }
        : { from: fromY, to: toY, is: y, across: x - fromX };
    const isForward = along.to >= along.from;
    const low = isForward ? along.from - startsAt : along.to - endsAt;
    const high = isForward ? along.to + endsAt : along.from + startsAt;
    return Math.abs(along.across) <= half && along.is >= low && along.is <= high;
  });
}

function readShape(path: string): Shape {
  const drawn = attribute(path, 'd') ?? '';
  return {
    corners: readCorners(drawn),
    closed: drawn.endsWith('z'),
    fill: readColour(attribute(path, 'fill')),
    stroke: readColour(attribute(path, 'stroke')),
    strokeWidth: Number(attribute(path, 'stroke-width') ?? 1),
  };
}

function readCorners(drawn: string): Shape['corners'] {
  if (!/^M[\d. ]+(?:[HVhv]-?[\d.]+)*z?$/.test(drawn))
    throw new Error(`The mark has a path that is not drawn here: ${drawn}`);
  const corners: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, act = '', words = ''] of drawn.matchAll(/([MHVhv])([^MHVhvz]*)/g)) {
    const [one = 0, other = 0] = words.trim().split(' ').map(Number);
    const by: Readonly<Record<string, readonly [number, number]>> = {
      M: [one, other],
      H: [one, y],
      h: [x + one, y],
      V: [x, one],
      v: [x, y + one],
    };
    [x, y] = by[act] ?? [x, y];
    corners.push([x, y]);
  }
  return corners;
}

function attribute(element: string, name: string): string | undefined {
  return new RegExp(`\\s${name}="([^"]*)"`).exec(element)?.[1];
}

function readColour(words: string | undefined): Colour | undefined {
  if (words === undefined || words === 'none') return undefined;
  const [, red = '', green = '', blue = ''] = /^#(..)(..)(..)$/.exec(words) ?? [];
  return [Number.parseInt(red, 16), Number.parseInt(green, 16), Number.parseInt(blue, 16)];
}
