import type { Point } from './section-shapes.ts';

export interface Leaf {
  readonly at: Point;
  /** Half its length, mm. */
  readonly half: number;
  /** Degrees, clockwise. */
  readonly turn: number;
  readonly pale: boolean;
}

/** Along the surface between leaves of one row, mm, for litter 30 mm deep. */
const step = 23;

/**
 * Leaves in a band of litter between two points of the soil's surface, always the same ones:
 * two rows in two shades, smaller if the litter is thin, so that the drawing stays to scale.
 */
export function litterLeaves(front: Point, back: Point, litter: number): readonly Leaf[] {
  const scale = Math.min(1.6, litter / 30);
  const reach = back.x - front.x;
  const count = Math.floor(reach / (step * scale));
  if (scale <= 0 || !Number.isFinite(count)) return [];
  return [false, true].flatMap((pale) =>
    Array.from({ length: Math.min(count, 200) }, (_, index) =>
      leafAt({ front, back, litter, scale, count, index, pale }),
    ),
  );
}

interface Spot {
  readonly front: Point;
  readonly back: Point;
  readonly litter: number;
  readonly scale: number;
  readonly count: number;
  readonly index: number;
  readonly pale: boolean;
}

function leafAt({ front, back, litter, scale, count, index, pale }: Spot): Leaf {
  const seed = index * 2 + (pale ? 1 : 0);
  const half = (23 + 8 * scatter(seed)) * scale;
  const reach = back.x - front.x;
  const along = Math.min(
    Math.max(((index + 0.5) / count) * reach + (scatter(seed + 0.5) - 0.5) * 10, half * 0.9),
    reach - half * 0.9,
  );
  const lift = ((index % 2 === 0 ? 0.2 : 0.68) + (pale ? 0.05 : 0) + 0.3 * (scatter(seed + 0.25) - 0.5)) * litter;
  const surface = front.y + (along / reach) * (back.y - front.y);
  return { at: { x: front.x + along, y: surface + lift }, half, turn: 48 * scatter(seed + 0.75) - 24, pale };
}

/** A number from 0 to 1 that looks random and is always the same for one seed. */
function scatter(seed: number): number {
  const wave = Math.sin(seed * 127.1 + 11.7) * 43_758.5453;
  return wave - Math.floor(wave);
}
