import type { TankSizes } from '#shared-calc/trade/geometry/tank-floor.ts';

/** A corner of an outline in mm: `y` runs from the back, 0, to the front. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

const CHORDS = 6000;

/** The floor as a polygon, curves as short chords: an independent way to every figure of a floor. */
export function outlineOf(sizes: TankSizes): readonly Point[] {
  const { shape, length, depth } = sizes;
  switch (shape) {
    case 'rectangle':
      return [
        { x: 0, y: 0 },
        { x: length, y: 0 },
        { x: length, y: depth },
        { x: 0, y: depth },
      ];
    case 'bow':
      return [{ x: -length / 2, y: 0 }, ...bowFront(sizes), { x: length / 2, y: 0 }];
    case 'corner':
      return cornerOutline(sizes);
    case 'hexagon':
      return arc(length, { x: 0, y: (length * Math.sqrt(3)) / 2 }, [Math.PI / 6, 2 * Math.PI + Math.PI / 6], 6).slice(
        1,
      );
    case 'cylinder':
      return arc(length / 2, { x: 0, y: length / 2 }, [0, 2 * Math.PI], CHORDS).slice(1);
  }
}

/** Area and centre of a polygon by its corners (shoelace). */
export function measureOutline(points: readonly Point[]): { area: number; centreY: number; around: number } {
  let twice = 0;
  let moment = 0;
  let around = 0;
  points.forEach((point, at) => {
    const next = points[(at + 1) % points.length] ?? point;
    const cross = point.x * next.y - next.x * point.y;
    twice += cross;
    moment += cross * (point.y + next.y);
    around += Math.hypot(next.x - point.x, next.y - point.y);
  });
  return { area: Math.abs(twice / 2), centreY: moment / (3 * twice), around };
}

/** The part of a polygon in front of a line. */
export function cutBehind(points: readonly Point[], line: number): readonly Point[] {
  return points.flatMap((point, at) => {
    const next = points[(at + 1) % points.length] ?? point;
    const inside = point.y >= line ? [point] : [];
    if (point.y >= line === next.y >= line) return inside;
    const share = (line - point.y) / (next.y - point.y);
    return [...inside, { x: point.x + share * (next.x - point.x), y: line }];
  });
}

function bowFront({ length, depth, bow }: TankSizes): readonly Point[] {
  if (bow === 0) {
    return [
      { x: -length / 2, y: depth },
      { x: length / 2, y: depth },
    ];
  }
  const radius = ((length / 2) ** 2 + bow ** 2) / (2 * bow);
  const half = Math.acos(Math.max(-1, (radius - bow) / radius));
  return arc(radius, { x: 0, y: depth + bow - radius }, [-half, half], CHORDS);
}

function cornerOutline({ length, side_return: side }: TankSizes): readonly Point[] {
  const along: readonly (readonly [number, number])[] = [
    [0, 0],
    [length, 0],
    [length, side],
    [side, length],
    [0, length],
  ];
  return along.map(([u, v]) => ({ x: (u - v) / Math.SQRT2, y: (u + v) / Math.SQRT2 }));
}

/** Points of an arc; angle 0 points to the front. */
function arc(radius: number, centre: Point, [from, to]: readonly [number, number], chords: number): readonly Point[] {
  return Array.from({ length: chords + 1 }, (_, at) => {
    const angle = from + ((to - from) * at) / chords;
    return { x: centre.x + radius * Math.sin(angle), y: centre.y + radius * Math.cos(angle) };
  });
}
