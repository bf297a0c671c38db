import type { SectionFigures } from './section-figures.ts';
import { depthWords } from './depth-words.ts';
import type { LabelWanted, Layer, Point, Stroke } from './section-shapes.ts';

interface Stack {
  readonly layers: readonly Layer[];
  readonly strokes: readonly Stroke[];
  readonly labels: readonly LabelWanted[];
  readonly over: number;
}

/** Heights of the layers at the front, mm above the floor, as far up as the figures are known. */
interface Levels {
  readonly drainage: number;
  readonly water: number;
  readonly capping?: { readonly foot: number; readonly top: number };
  readonly soil?: { readonly foot: number; readonly front: number; readonly back: number };
  readonly litter?: number;
}

/** The layers of a section from the floor up, each from its own figures; the first unknown figure ends the stack. */
export function stackOf(figures: SectionFigures, depth: number): Stack {
  const levels = levelsOf(figures);
  if (!levels) return { layers: [], strokes: [], labels: [], over: 0 };
  const over = overOf(figures, levels);
  return {
    layers: layersOf(figures, levels, depth, over),
    strokes: strokesOf(figures, levels, depth),
    labels: labelsOf(figures, levels, depth, over),
    over,
  };
}

function levelsOf(figures: SectionFigures): Levels | undefined {
  const { drainage, drainGap, capping, soilFront, litter } = figures;
  if (drainage === undefined) return undefined;
  const water = drainGap === undefined ? 0 : Math.max(0, drainage - drainGap);
  if (capping === undefined) return { drainage, water };
  const foot = drainage + (figures.meshThickness ?? 0);
  const top = foot + capping;
  const upTo = { drainage, water, capping: { foot, top } };
  if (soilFront === undefined) return upTo;
  const front = top + Math.max(0, soilFront);
  const back = Math.max(top, top + soilFront + (figures.soilRise ?? 0));
  const soil = { foot: top, front, back };
  return litter === undefined ? { ...upTo, soil } : { ...upTo, soil, litter };
}

/** By how many mm the front of the stack is too high: over the dam, or over the room the dam leaves. */
function overOf(figures: SectionFigures, levels: Levels): number {
  const { damHeight, soilFront } = figures;
  const top = frontTop(levels);
  const overDam = damHeight === undefined ? 0 : top - damHeight;
  return Math.max(0, overDam, soilFront === undefined ? 0 : -soilFront);
}

function layersOf(figures: SectionFigures, levels: Levels, depth: number, over: number): readonly Layer[] {
  const { drainage, water, capping, soil, litter } = levels;
  const layers: Layer[] = [
    { part: 'drainage', outline: band(depth, [0, 0], [drainage, drainage]) },
    { part: 'water', outline: band(depth, [0, 0], [water, water]) },
  ];
  if (soil) layers.push({ part: 'soil', outline: band(depth, [soil.foot, soil.foot], [soil.front, soil.back]) });
  if (capping) layers.push({ part: 'capping', outline: cappingOutline(figures, capping, depth) });
  if (soil && litter !== undefined) {
    const top: Ends = [soil.front + litter, soil.back + litter];
    layers.push({ part: 'litter', outline: band(depth, [soil.front, soil.back], top) });
  }
  if (over > 0) layers.push({ part: 'misfit', outline: misfitOutline(levels, depth, over) });
  return layers.filter((layer) => layer.part === 'misfit' || heightOf(layer.outline) > 0);
}

/** The clay edge is a triangle along the glass; if both triangles would meet, they share the depth. */
function cappingOutline(
  figures: SectionFigures,
  { foot, top }: { readonly foot: number; readonly top: number },
  depth: number,
): readonly Point[] {
  const width = Math.min(figures.beadWidth ?? 0, depth / 2);
  const height = figures.beadHeight ?? 0;
  return [
    { x: 0, y: foot },
    { x: depth, y: foot },
    { x: depth, y: top + height },
    { x: depth - width, y: top },
    { x: width, y: top },
    { x: 0, y: top + height },
  ];
}

/** The part of the stack that must go: from the surface down, as thick as the stack is too high. */
function misfitOutline(levels: Levels, depth: number, over: number): readonly Point[] {
  const flat = levels.capping?.top ?? levels.drainage;
  const front = levels.soil?.front ?? flat;
  const back = levels.soil?.back ?? flat;
  return band(depth, [Math.max(0, front - over), Math.max(0, back - over)], [front, back]);
}

function strokesOf(figures: SectionFigures, levels: Levels, depth: number): readonly Stroke[] {
  const { drainage, water } = levels;
  const strokes: Stroke[] = [];
  if (water > 0)
    strokes.push({
      part: 'waterline',
      points: [
        { x: 0, y: water },
        { x: depth, y: water },
      ],
    });
  if (drainage > 0) {
    const rim = drainage + (figures.meshUpturn ?? 0);
    const points = [
      { x: 0, y: rim },
      { x: 0, y: drainage },
      { x: depth, y: drainage },
      { x: depth, y: rim },
    ];
    strokes.push({ part: 'mesh', points });
  }
  return strokes;
}

function labelsOf(figures: SectionFigures, levels: Levels, depth: number, over: number): readonly LabelWanted[] {
  const { drainage, water, capping } = levels;
  const inside = depth - Math.min(10, depth / 4);
  const clay = capping ? capping.top - capping.foot : 0;
  const all: readonly (LabelWanted & { readonly thick: number })[] = [
    { thick: drainage, ...label('drainage', depthWords(drainage, figures), { x: inside, y: drainage / 2 }) },
    { thick: water, ...label('water', depthWords(water, figures), { x: depth, y: water }), tone: 'water' },
    { thick: clay, ...label('capping', depthWords(clay, figures), { x: inside, y: (capping?.top ?? 0) - clay / 2 }) },
    ...soilLabels(figures, levels, inside),
    {
      thick: over,
      ...label('too high', depthWords(over, figures), { x: inside, y: frontTop(levels) - over / 2 }),
      tone: 'wrong',
    },
  ];
  return all.flatMap(({ thick, ...wanted }) => (thick > 0 ? [wanted] : []));
}

/** Soil gets a label even if the layers leave it no room. */
function soilLabels(figures: SectionFigures, { soil, litter = 0 }: Levels, inside: number) {
  if (!soil) return [];
  return [
    { thick: 1, ...label('soil', soilFigure(figures), { x: inside, y: mean(soil.foot, soil.back) }) },
    { thick: litter, ...label('litter', depthWords(litter, figures), { x: inside, y: soil.back + litter / 2 }) },
  ];
}

function label(word: string, figure: string, at: Point): LabelWanted {
  return { word, figure, at, tone: 'plain' };
}

/** Height of the stack at the front, as far up as it is known. */
function frontTop({ soil, capping, drainage }: Levels): number {
  return soil?.front ?? capping?.top ?? drainage;
}

/** Front depth, and the depth at the back where the soil rises. */
function soilFigure(figures: SectionFigures): string {
  const { soilFront = 0, soilRise = 0 } = figures;
  const front = depthWords(soilFront, figures);
  return soilRise === 0 ? front : `${front}\u2013${depthWords(soilFront + soilRise, figures)}`;
}

type Ends = readonly [front: number, back: number];

function band(depth: number, foot: Ends, top: Ends): readonly Point[] {
  return [
    { x: 0, y: foot[0] },
    { x: depth, y: foot[1] },
    { x: depth, y: top[1] },
    { x: 0, y: top[0] },
  ];
}

function heightOf(outline: readonly Point[]): number {
  const ys = outline.map((point) => point.y);
  return Math.max(...ys) - Math.min(...ys);
}

function mean(low: number, high: number): number {
  return (low + high) / 2;
}
