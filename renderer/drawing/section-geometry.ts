import type { SectionFigures } from './section-figures.ts';
import { lampRoom } from './section-shapes.ts';
import type { Lamp, LabelWanted, Point, SectionGeometry, Stroke } from './section-shapes.ts';
import { depthWords } from './depth-words.ts';
import { stackOf } from './section-stack.ts';

/** Slot between the top of the lip and the door, mm, if there is no front vent. */
const doorSlot = 6;
/** Glass thickness drawn if it is not measured, mm. */
const plainGlass = 5;
const lampWidth = 52;
/** Height of the lamps above the top, mm. */
const lampGap = 15;

/**
 * The section of a tank side on, front at the left, in mm: every outline from the column's own figures.
 * `undefined` while its depth or height is not known.
 */
export function sectionGeometry(figures: SectionFigures): SectionGeometry | undefined {
  const { overallDepth: depth = 0, insideHeight: height = 0 } = figures;
  return depth > 0 && height > 0 ? drawn(figures, depth, height) : undefined;
}

function drawn(figures: SectionFigures, depth: number, height: number): SectionGeometry {
  const stack = stackOf(figures, depth);
  const wall = figures.glass ?? plainGlass;
  const base = figures.baseGlass ?? wall;
  const dam = figures.damHeight;
  const onePane = figures.shape === 'cylinder' || dam === undefined;
  return {
    depth,
    height,
    layers: stack.layers,
    strokes: [...stack.strokes, ...tankStrokes(figures, { depth, height, wall, onePane })],
    glass: glassOutline({ depth, height, wall, base, front: onePane ? height : dam }),
    lip: onePane ? [] : lipOutline(wall, base, dam),
    lamps: lampsOf(figures.lamps ?? 0, depth, height),
    rayFoot: Math.min(height, (dam ?? 0) + 20),
    labels: [...stack.labels, ...damLabel(figures, depth)].toSorted((a, b) => a.at.y - b.at.y),
    bounds: { left: -wall, right: depth + wall, bottom: -base, top: height + lampRoom },
    over: stack.over,
  };
}

interface Walls {
  readonly depth: number;
  readonly height: number;
  readonly wall: number;
  readonly base: number;
  /** Height of the front pane. */
  readonly front: number;
}

function glassOutline({ depth, height, wall, base, front }: Walls): readonly Point[] {
  return [
    { x: -wall, y: -base },
    { x: depth + wall, y: -base },
    { x: depth + wall, y: height },
    { x: depth, y: height },
    { x: depth, y: 0 },
    { x: 0, y: 0 },
    { x: 0, y: front },
    { x: -wall, y: front },
  ];
}

function lipOutline(wall: number, base: number, dam: number): readonly Point[] {
  return [
    { x: -wall, y: -base },
    { x: 0, y: -base },
    { x: 0, y: dam },
    { x: -wall, y: dam },
  ];
}

interface Tank {
  readonly depth: number;
  readonly height: number;
  readonly wall: number;
  readonly onePane: boolean;
}

function tankStrokes(figures: SectionFigures, { depth, height, wall, onePane }: Tank): readonly Stroke[] {
  const strokes: Stroke[] = [];
  const { damHeight, coverVent } = figures;
  for (const x of edgesOf(figures, depth))
    strokes.push({
      part: 'edge',
      points: [
        { x, y: 0 },
        { x, y: height },
      ],
    });
  if (damHeight !== undefined) {
    strokes.push({
      part: 'damline',
      points: [
        { x: 0, y: damHeight },
        { x: depth, y: damHeight },
      ],
    });
    const foot = damHeight + Math.max(doorSlot, figures.frontVent ?? 0);
    const x = -wall / 2;
    if (!onePane && foot < height)
      strokes.push({
        part: 'door',
        points: [
          { x, y: foot },
          { x, y: height },
        ],
      });
  }
  if (coverVent !== undefined && coverVent < depth) {
    strokes.push({
      part: 'cover',
      points: [
        { x: coverVent, y: height + 3 },
        { x: depth, y: height + 3 },
      ],
    });
  }
  return strokes;
}

/** Where panes meet as seen from the side: the end of a bow, of the near side of a corner tank, of a hexagon's side. */
function edgesOf(figures: SectionFigures, depth: number): readonly number[] {
  const { shape, frontBow = 0, sideReturn = 0 } = figures;
  if (shape === 'bow' && frontBow > 0 && frontBow < depth) return [frontBow];
  if (shape === 'corner' && sideReturn > 0 && sideReturn < depth) return [depth - sideReturn];
  return shape === 'hexagon' ? [depth / 2] : [];
}

/** Spread evenly over the depth; narrower if they would not fit side by side. */
function lampsOf(count: number, depth: number, height: number): readonly Lamp[] {
  const whole = Math.max(0, Math.round(count));
  const width = Math.min(lampWidth, (depth / Math.max(1, whole)) * 0.8);
  return Array.from({ length: whole }, (_, index) => ({
    centre: ((index + 0.5) / whole) * depth,
    width,
    foot: height + lampGap,
  }));
}

function damLabel({ damHeight, shape, inches = false }: SectionFigures, depth: number): readonly LabelWanted[] {
  if (damHeight === undefined) return [];
  const word = shape === 'cylinder' ? 'fill line' : 'dam';
  return [
    {
      word,
      figure: depthWords(inches ? damHeight : Math.round(damHeight), { inches }),
      at: { x: depth, y: damHeight },
      tone: 'plain',
    },
  ];
}
