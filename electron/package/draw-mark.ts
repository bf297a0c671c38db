/** A picture of red, green, blue and opacity, 0 to 255, row by row. */
export interface Picture {
  readonly size: number;
  readonly bytes: Uint8Array;
}

interface Shape {
  readonly fill: Colour | undefined;
  readonly stroke: Colour | undefined;
  readonly inside: Box;
  /** Where its stroke lies: a bar for each straight piece. */
  readonly bars: readonly Box[];
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
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

function colourAt({ fill, stroke, inside, bars }: Shape, x: number, y: number): Colour | undefined {
  if (stroke && bars.some((bar) => isIn(bar, x, y))) return stroke;
  return isIn(inside, x, y) ? fill : undefined;
}

function isIn({ left, right, top, bottom }: Box, x: number, y: number): boolean {
  return x >= left && x <= right && y >= top && y <= bottom;
}

function readShape(path: string): Shape {
  const drawn = attribute(path, 'd') ?? '';
  const corners = readCorners(drawn);
  return {
    fill: readColour(attribute(path, 'fill')),
    stroke: readColour(attribute(path, 'stroke')),
    inside: around(corners),
    bars: barsOf(corners, drawn.endsWith('z'), Number(attribute(path, 'stroke-width') ?? 1) / 2),
  };
}

type Corner = readonly [x: number, y: number];

function around(corners: readonly Corner[]): Box {
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Butt ends and mitred corners, as a path along the axes has them; `half` is half the width of the stroke. */
function barsOf(corners: readonly Corner[], closed: boolean, half: number): readonly Box[] {
  const ends = closed ? [...corners, ...corners.slice(0, 1)] : corners;
  return ends.slice(1).map((to, at) => {
    const from = ends[at] ?? to;
    const before = closed || at > 0 ? half : 0;
    const behind = closed || at < ends.length - 2 ? half : 0;
    const { left, right, top, bottom } = around([from, to]);
    const isForward = to[0] >= from[0] && to[1] >= from[1];
    const [low, high] = isForward ? [before, behind] : [behind, before];
    return from[1] === to[1]
      ? { left: left - low, right: right + high, top: top - half, bottom: bottom + half }
      : { left: left - half, right: right + half, top: top - low, bottom: bottom + high };
  });
}

function readCorners(drawn: string): readonly Corner[] {
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
