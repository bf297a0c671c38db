import type { Tank } from '#shared-calc/records/records.ts';
import type { Measure } from './read-measure.ts';

export type TankMeasureKey =
  | 'insideLengthMm'
  | 'insideDepthMm'
  | 'insideHeightMm'
  | 'frontBowMm'
  | 'sideReturnMm'
  | 'damHeightMm'
  | 'frontVentMm'
  | 'glassMm'
  | 'baseGlassMm';

/** A measurement of a tank: how it is named, in a list and in the tank book, and what it can be. */
export interface TankMeasure extends Measure {
  readonly key: TankMeasureKey;
  readonly heading: string;
}

/** Every measurement of the tank book, in mm, in its order. */
export const tankMeasures: readonly TankMeasure[] = [
  measure('insideLengthMm', 'Inside length', 'length', { low: 50, high: 6_000 }),
  measure('insideDepthMm', 'Inside depth', 'depth', { low: 50, high: 6_000 }),
  measure('insideHeightMm', 'Inside height', 'height', { low: 50, high: 6_000 }),
  measure('frontBowMm', 'Front bow', 'bow', { low: 0, high: 2_000 }),
  measure('sideReturnMm', 'Side return', 'return', { low: 0, high: 6_000 }),
  measure('damHeightMm', 'Dam height', 'dam', { low: 0, high: 2_000 }),
  measure('frontVentMm', 'Front vent', 'front vent', { low: 0, high: 500 }),
  measure('glassMm', 'Glass', 'glass', { low: 1, high: 50 }),
  measure('baseGlassMm', 'Base glass', 'base', { low: 1, high: 50 }),
];

/** Measurements that a shape has not; in the book they stand at 0, or as deep as long. */
export function isMeasured(shape: Tank['shape'], key: TankMeasureKey): boolean {
  if (key === 'frontBowMm') return shape === 'bow';
  if (key === 'sideReturnMm') return shape === 'corner';
  return key !== 'insideDepthMm' || shape === 'rectangle' || shape === 'bow';
}

/** What cannot be of a tank as a whole, in a sentence; `undefined` where all goes together. */
export function tankMisfit(tank: Tank): string | undefined {
  const { insideLengthMm: length, insideDepthMm: depth, insideHeightMm: height } = tank;
  if (isOver(tank.damHeightMm, height))
    return `The dam is ${tank.damHeightMm} mm and the tank only ${height} mm high inside.`;
  if (isOver(tank.frontVentMm, height)) return `The front vent is as high as the tank.`;
  if (tank.shape === 'corner' && isOver(tank.sideReturnMm, length)) {
    return `The side return is ${tank.sideReturnMm} mm and the side only ${length} mm.`;
  }
  if (tank.shape === 'bow' && isOver(tank.frontBowMm, depth)) return `The bow is deeper than the tank.`;
  return undefined;
}

function isOver(one: number | undefined, other: number | undefined): boolean {
  return one !== undefined && other !== undefined && one > other;
}

function measure(
  key: TankMeasureKey,
  name: string,
  heading: string,
  bounds: { readonly low: number; readonly high: number },
): TankMeasure {
  return { key, name, heading, stored: 'mm', mayBeEmpty: true, ...bounds };
}
