import type { LayerPart, Point } from './section-shapes.ts';

/** Marks of one thickness; each lies at a point, or reaches along a line. */
export interface GrainMarks {
  readonly look: 'pellet' | 'pelletInside' | 'grain' | 'fleck' | 'crumb' | 'hatch';
  /** A path of strokes in the drawing's own coordinates, mm, y downward. */
  readonly path: string;
}

interface Tile {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly (Pick<GrainMarks, 'look'> & { readonly strokes: readonly (readonly number[])[] })[];
}

/* Each stroke is x, y and, where it has a length, how far it goes in x and y; in mm. */
const pellets = [
  [8.5, 7.5],
  [25.5, 7.5],
  [0, 22.5],
  [17, 22.5],
];
const tiles: Readonly<Record<'pellets' | 'grains' | 'crumbs' | 'misfit', Tile>> = {
  pellets: {
    width: 34,
    height: 30,
    marks: [
      { look: 'pellet', strokes: pellets },
      { look: 'pelletInside', strokes: pellets },
    ],
  },
  grains: {
    width: 22,
    height: 14,
    marks: [
      {
        look: 'grain',
        strokes: [
          [4, 4],
          [13, 9],
          [19, 3],
        ],
      },
    ],
  },
  crumbs: {
    width: 84,
    height: 62,
    marks: [
      {
        look: 'fleck',
        strokes: [
          [6, 15, 12, 4],
          [52, 9, 12, -3],
          [30, 43, 15, 2],
          [66, 47, 11, -5],
        ],
      },
      {
        look: 'crumb',
        strokes: [
          [34, 14],
          [74, 24],
          [14, 44],
          [56, 28],
          [40, 57],
        ],
      },
    ],
  },
  misfit: { width: 18, height: 18, marks: [{ look: 'hatch', strokes: [[0, 18, 18, -18]] }] },
};

export type GrainName = keyof typeof tiles;

export const grainOf: Readonly<Partial<Record<LayerPart, GrainName>>> = {
  drainage: 'pellets',
  capping: 'grains',
  soil: 'crumbs',
  misfit: 'misfit',
};

/** At most this many tiles a layer: a larger layer has a coarser grain, so that no drawing makes a heavy file. */
const MOST_TILES = 120;

/**
 * The grain of a layer as strokes over its outline's box. A pattern would be sent to a printer as a picture of every
 * tile, some megabytes for a quote.
 */
export function paperGrain(outline: readonly Point[], name: GrainName): readonly GrainMarks[] {
  const { width, height, marks } = tiles[name];
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => -y)];
  const box = { left: Math.min(...xs), top: Math.min(...ys) };
  const size = { x: Math.max(...xs) - box.left, y: Math.max(...ys) - box.top };
  if (!(size.x > 0 && size.y > 0)) return [];
  const count = (grow: number) => Math.ceil(size.x / (width * grow) + 1) * Math.ceil(size.y / (height * grow) + 1);
  let grow = 1;
  while (count(grow) > MOST_TILES) grow *= 1.2;
  const corners: Point[] = [];
  // From the pattern's own origin, so that neighbouring layers of one grain run on.
  const from = (start: number, step: number) => Math.floor(start / step) * step;
  for (let x = from(box.left, width * grow); x < box.left + size.x; x += width * grow)
    for (let y = from(box.top, height * grow); y < box.top + size.y; y += height * grow) corners.push({ x, y });
  return marks.map(({ look, strokes }) => ({
    look,
    path: corners
      .flatMap(({ x, y }) =>
        strokes.map(([dx = 0, dy = 0, along = 0.01, down = 0]) => {
          const at = `M${round(x + dx * grow)} ${round(y + dy * grow)}`;
          return `${at}l${round(along === 0.01 ? along : along * grow, 2)} ${round(down * grow)}`;
        }),
      )
      .join(''),
  }));
}

function round(mm: number, places = 1): number {
  return Number(mm.toFixed(places)) + 0;
}
