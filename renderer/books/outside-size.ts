import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { shownUnit, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { insideSize } from '#shared-calc/trade/geometry/inside-size.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** Outside measurements, as typed. */
export interface OutsideTexts {
  readonly length: string;
  readonly depth: string;
  readonly height: string;
  /** The short side of a corner tank, from the wall to the cut edge. */
  readonly sideReturn: string;
  readonly glass: string;
  readonly base: string;
  readonly seam: string;
  /** What the frames take off length and depth, and off the height. */
  readonly sideFrame: string;
  readonly topFrame: string;
}

export type OutsideKey = keyof OutsideTexts;

export const nothingOutside: OutsideTexts = {
  length: '',
  depth: '',
  height: '',
  sideReturn: '',
  glass: '',
  base: '',
  seam: '0',
  sideFrame: '0',
  topFrame: '0',
};

/** One inside measurement with its working. */
export interface InsideMeasure {
  readonly key: 'insideLengthMm' | 'insideDepthMm' | 'insideHeightMm' | 'sideReturnMm';
  readonly mm: number;
  /** "Length: 912 mm less 2 panes of 6 mm = 900 mm" */
  readonly working: string;
  /** Why the measurement should be checked. */
  readonly warning: string | undefined;
}

export interface InsideSizes {
  readonly measures: readonly InsideMeasure[];
  readonly glassMm: number;
  readonly baseGlassMm: number;
}

/** The outside measurements a shape needs, with their names for that shape. */
export function outsideFields(shape: Tank['shape']): readonly (readonly [key: OutsideKey, label: string])[] {
  const sides: Readonly<Record<Tank['shape'], readonly (readonly [OutsideKey, string])[]>> = {
    rectangle: lengthAndDepth,
    bow: lengthAndDepth,
    cylinder: [['length', 'Diameter outside']],
    hexagon: [['length', 'Side outside']],
    corner: [
      ['length', 'Side outside'],
      ['sideReturn', 'Return outside'],
    ],
  };
  return [...sides[shape], ...ofEveryShape];
}

const lengthAndDepth = [
  ['length', 'Length outside'],
  ['depth', 'Depth outside'],
] as const;

const ofEveryShape = [
  ['height', 'Height outside'],
  ['glass', 'Glass'],
  ['base', 'Base, if thicker'],
  ['seam', 'Seam, each'],
  ['sideFrame', 'Frame, both sides'],
  ['topFrame', 'Frame, top and foot'],
] as const;

/** May be empty: then the base is as thick as the walls, and there is no seam and no frame. */
const mayBeEmpty: readonly OutsideKey[] = ['base', 'seam', 'sideFrame', 'topFrame'];

/** Whether everything is filled in that the inside size needs. */
export function isBegun(texts: OutsideTexts, shape: Tank['shape']): boolean {
  return outsideFields(shape).every(([key]) => mayBeEmpty.includes(key) || texts[key].trim() !== '');
}

/** The fault of each field that is filled in. */
export function outsideFaults(texts: OutsideTexts, display: Display): Readonly<Partial<Record<OutsideKey, string>>> {
  const faults: Partial<Record<OutsideKey, string>> = {};
  for (const key of outsideKeys) {
    const read = texts[key].trim() === '' ? ok(0) : readOutside(key, texts, display);
    if (!read.ok) faults[key] = read.fault;
  }
  return faults;
}

/**
 * Inside measurements from outside ones. Length and depth lose two panes and their seams, the height loses only the
 * base; frames come off as well. A hexagon is measured across its flats. A corner tank's return loses what its
 * slanting front takes. An empty base is as thick as the walls.
 */
export function insideFrom(texts: OutsideTexts, shape: Tank['shape'], display: Display): Result<InsideSizes, string> {
  const read = readAll(texts, shape, display);
  if (!read.ok) return read;
  const { glass, base, seam, topFrame, height } = read.value;
  const up: Wanted = {
    key: 'insideHeightMm',
    name: 'Height',
    outside: height,
    pane: base,
    seam,
    frame: topFrame,
    panes: 1,
  };
  const measures: InsideMeasure[] = [];
  for (const make of [...sidesOf(shape, read.value), through(up)]) {
    const measure = make(display);
    if (!measure.ok) return measure;
    measures.push(measure.value);
  }
  return ok({ measures, glassMm: glass, baseGlassMm: base });
}

type Making = (display: Display) => Result<InsideMeasure, string>;

function through(wanted: Wanted): Making {
  return (display) => insideOf(wanted, display);
}

function sidesOf(shape: Tank['shape'], outside: Outside): readonly Making[] {
  const { glass, seam, sideFrame, length, depth } = outside;
  const wall = { pane: glass, seam, frame: sideFrame, panes: 2 };
  const long = { key: 'insideLengthMm', outside: length, ...wall } as const;
  switch (shape) {
    case 'hexagon':
      return [(display) => hexagonSide({ ...long, name: 'Across the flats' }, display)];
    case 'corner':
      return [through({ ...long, name: 'Side' }), (display) => cornerReturn(outside, display)];
    case 'cylinder':
      return [through({ ...long, name: 'Diameter' })];
    default:
      return [
        through({ ...long, name: 'Length' }),
        through({ key: 'insideDepthMm', name: 'Depth', outside: depth, ...wall }),
      ];
  }
}

/** Across its flats a regular hexagon measures the square root of 3 times its side. */
function hexagonSide(wanted: Wanted, display: Display): Result<InsideMeasure, string> {
  const flats = insideOf({ ...wanted, outside: wanted.outside * Math.sqrt(3) }, display);
  if (!flats.ok) return flats;
  const mm = tenthMm(flats.value.mm / Math.sqrt(3));
  const working = `Side: ${sayMm(wanted.outside, display)} outside. ${flats.value.working}, a side of ${sayMm(mm, display)}`;
  return ok({ ...flats.value, mm, working });
}

/** The front of a corner tank is at 45 degrees: it takes the square root of 2 times what one wall takes. */
function cornerReturn(
  { sideReturn, glass, seam, sideFrame }: Outside,
  display: Display,
): Result<InsideMeasure, string> {
  const taken = tenthMm((glass + seam + sideFrame / 2) * Math.SQRT2);
  const mm = tenthMm(sideReturn - taken);
  if (mm <= 0) return failed(`Return: Glass and frame take ${taken} mm of ${sideReturn} mm; nothing is left inside.`);
  const working = `Return: ${sayMm(sideReturn, display)} less ${sayMm(taken, display)} that the slanting front takes = ${sayMm(mm, display)}`;
  return ok({ key: 'sideReturnMm', mm, working, warning: undefined });
}

/** Glass is measured to 0.1 mm, no finer. */
function tenthMm(mm: number): number {
  return Math.round(mm * 10) / 10;
}

function sayMm(mm: number, display: Display): string {
  return showWithUnit(toBase(mm, unitOf('mm')), 'mm', display);
}

/** Shapes that are as deep as they are long. */
const asDeepAsLong: readonly Tank['shape'][] = ['cylinder', 'hexagon', 'corner'];

/** The tank with its inside measurements. Every shape except a rectangle and a bow front is as deep as it is long. */
export function withInside(tank: Tank, { measures, glassMm, baseGlassMm }: InsideSizes): Tank {
  const sizes = Object.fromEntries(measures.map(({ key, mm }) => [key, mm]));
  const next = { ...tank, ...sizes, glassMm, baseGlassMm };
  return asDeepAsLong.includes(tank.shape) ? { ...next, insideDepthMm: next.insideLengthMm } : next;
}

const outsideKeys = [
  'length',
  'depth',
  'sideReturn',
  'height',
  'glass',
  'base',
  'seam',
  'sideFrame',
  'topFrame',
] as const;

const names: Readonly<Record<OutsideKey, string>> = {
  length: 'Outside length',
  depth: 'Outside depth',
  height: 'Outside height',
  sideReturn: 'Outside return',
  glass: 'Glass',
  base: 'Base',
  seam: 'Seam',
  sideFrame: 'Frame at the sides',
  topFrame: 'Frame above and below',
};

function readOutside(key: OutsideKey, texts: OutsideTexts, display: Display): Result<number | undefined, string> {
  const measure = { name: names[key], stored: 'mm', shown: shownUnit('mm', display), low: 0, high: 6_000 };
  return said(readMeasure(texts[key], measure, display));
}

type Outside = Readonly<Record<OutsideKey, number>>;

function readAll(texts: OutsideTexts, shape: Tank['shape'], display: Display): Result<Outside, string> {
  const unless = (text: string, empty: string) => (text.trim() === '' ? empty : text);
  const filled: OutsideTexts = {
    ...texts,
    base: unless(texts.base, texts.glass),
    seam: unless(texts.seam, '0'),
    sideFrame: unless(texts.sideFrame, '0'),
    topFrame: unless(texts.topFrame, '0'),
  };
  const read: Record<OutsideKey, number> = { ...noneYet };
  for (const [key] of outsideFields(shape)) {
    const value = readOutside(key, filled, display);
    if (!value.ok) return value;
    read[key] = value.value ?? 0;
  }
  return ok(read);
}

const noneYet: Outside = {
  length: 0,
  depth: 0,
  height: 0,
  sideReturn: 0,
  glass: 0,
  base: 0,
  seam: 0,
  sideFrame: 0,
  topFrame: 0,
};

interface Wanted {
  readonly key: InsideMeasure['key'];
  readonly name: string;
  readonly outside: number;
  readonly pane: number;
  readonly seam: number;
  readonly frame: number;
  readonly panes: number;
}

function insideOf(
  { key, name, outside, pane, seam, frame, panes }: Wanted,
  display: Display,
): Result<InsideMeasure, string> {
  const values = [outside, panes, pane, seam, frame];
  const mm = insideSize.compute(values);
  if (typeof mm !== 'number') return failed(`${name}: ${mm.refused}`);
  const say = (figure: number) => sayMm(figure, display);
  const seams = seam > 0 ? ` and ${panes === 1 ? 'a seam' : `${panes} seams`} of ${say(seam)}` : '';
  const frames = frame > 0 ? ` and ${say(frame)} of frame` : '';
  const taken = panes === 1 ? `the base of ${say(pane)}` : `${panes} panes of ${say(pane)}`;
  const working = `${name}: ${say(outside)} less ${taken}${seams}${frames} = ${say(mm)}`;
  return ok({ key, mm, working, warning: insideSize.warn?.(values, mm) });
}
