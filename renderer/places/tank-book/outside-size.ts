import { readMeasure } from '#shared-calc/papers/read-measure.ts';
import { shownUnit, showWithUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';
import { toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { insideSize } from '#shared-calc/trade/inside-size.ts';

/** What is measured on the outside, as it is written. */
export interface OutsideTexts {
  readonly length: string;
  readonly depth: string;
  readonly height: string;
  readonly glass: string;
  readonly base: string;
  readonly seam: string;
  /** What the frames take of length and depth, and of the height. */
  readonly sideFrame: string;
  readonly topFrame: string;
}

export type OutsideKey = keyof OutsideTexts;

export const nothingOutside: OutsideTexts = {
  length: '',
  depth: '',
  height: '',
  glass: '',
  base: '',
  seam: '0',
  sideFrame: '0',
  topFrame: '0',
};

/** One inside measurement with how it came about. */
export interface InsideMeasure {
  readonly key: 'insideLengthMm' | 'insideDepthMm' | 'insideHeightMm';
  readonly mm: number;
  /** "Length: 912 mm less 2 panes of 6 mm = 900 mm" */
  readonly working: string;
  /** Where it should be looked at twice. */
  readonly warning: string | undefined;
}

export interface InsideSizes {
  readonly measures: readonly InsideMeasure[];
  readonly glassMm: number;
  readonly baseGlassMm: number;
}

/** Shapes whose sides run through whole panes; a hexagon's or a corner's inside sides do not follow from outside alone. */
export function canBeMeasuredOutside(shape: Tank['shape']): boolean {
  return shape === 'rectangle' || shape === 'bow' || shape === 'cylinder';
}

/** What is wrong with each field that is filled in. */
export function outsideFaults(texts: OutsideTexts, display: Display): Readonly<Partial<Record<OutsideKey, string>>> {
  const faults: Partial<Record<OutsideKey, string>> = {};
  for (const key of outsideKeys) {
    const read = texts[key].trim() === '' ? ok(0) : readOutside(key, texts, display);
    if (!read.ok) faults[key] = read.fault;
  }
  return faults;
}

/**
 * Inside measurements from outside ones: length and depth go through two panes and their seams, the height through
 * the base alone; frames come off besides. A base left empty is as thick as the walls.
 */
export function insideFrom(texts: OutsideTexts, shape: Tank['shape'], display: Display): Result<InsideSizes, string> {
  const read = readAll(texts, display);
  if (!read.ok) return read;
  const { glass, base, seam, sideFrame, topFrame } = read.value;
  const wall = { pane: glass, seam, frame: sideFrame, panes: 2 };
  const wanted: readonly Wanted[] = [
    { key: 'insideLengthMm', name: shape === 'cylinder' ? 'Diameter' : 'Length', outside: read.value.length, ...wall },
    ...(shape === 'cylinder'
      ? []
      : [{ key: 'insideDepthMm' as const, name: 'Depth', outside: read.value.depth, ...wall }]),
    { key: 'insideHeightMm', name: 'Height', outside: read.value.height, pane: base, seam, frame: topFrame, panes: 1 },
  ];
  const measures: InsideMeasure[] = [];
  for (const each of wanted) {
    const measure = insideOf(each, display);
    if (!measure.ok) return measure;
    measures.push(measure.value);
  }
  return ok({ measures, glassMm: glass, baseGlassMm: base });
}

/** The tank with its inside measurements; a cylinder is as deep as it is long. */
export function withInside(tank: Tank, { measures, glassMm, baseGlassMm }: InsideSizes): Tank {
  const sizes = Object.fromEntries(measures.map(({ key, mm }) => [key, mm]));
  const next = { ...tank, ...sizes, glassMm, baseGlassMm };
  return tank.shape === 'cylinder' ? { ...next, insideDepthMm: next.insideLengthMm } : next;
}

const outsideKeys = ['length', 'depth', 'height', 'glass', 'base', 'seam', 'sideFrame', 'topFrame'] as const;

const names: Readonly<Record<OutsideKey, string>> = {
  length: 'Outside length',
  depth: 'Outside depth',
  height: 'Outside height',
  glass: 'Glass',
  base: 'Base',
  seam: 'Seam',
  sideFrame: 'Frame at the sides',
  topFrame: 'Frame above and below',
};

function readOutside(key: OutsideKey, texts: OutsideTexts, display: Display): Result<number | undefined, string> {
  const measure = { name: names[key], stored: 'mm', shown: shownUnit('mm', display), low: 0, high: 6_000 };
  return readMeasure(texts[key], measure, display);
}

type Outside = Readonly<Record<OutsideKey, number>>;

function readAll(texts: OutsideTexts, display: Display): Result<Outside, string> {
  const filled = { ...texts, base: texts.base.trim() === '' ? texts.glass : texts.base };
  const read: Record<OutsideKey, number> = { ...noneYet };
  for (const key of outsideKeys) {
    const isLeftOut = key === 'depth' && texts.depth.trim() === '';
    const value = isLeftOut ? ok(0) : readOutside(key, filled, display);
    if (!value.ok) return value;
    read[key] = value.value ?? 0;
  }
  return ok(read);
}

const noneYet: Outside = { length: 0, depth: 0, height: 0, glass: 0, base: 0, seam: 0, sideFrame: 0, topFrame: 0 };

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
  const say = (figure: number) => showWithUnit(toBase(figure, unitOf('mm')), 'mm', display);
  const seams = seam > 0 ? ` and ${panes === 1 ? 'a seam' : `${panes} seams`} of ${say(seam)}` : '';
  const frames = frame > 0 ? ` and ${say(frame)} of frame` : '';
  const through = panes === 1 ? `the base of ${say(pane)}` : `${panes} panes of ${say(pane)}`;
  const working = `${name}: ${say(outside)} less ${through}${seams}${frames} = ${say(mm)}`;
  return ok({ key, mm, working, warning: insideSize.warn?.(values, mm) });
}
