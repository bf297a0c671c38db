import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { Tank } from './records.ts';

/** Every measurement of a tank, in mm, in the order of its fields. */
export const tankMeasures: readonly string[] = fieldsOf('tank').flatMap(([key, { unit }]) =>
  unit === 'mm' ? key : [],
);

/** Whether a shape has this measurement; the book stores 0 for others, and the length for a missing depth. */
export function isMeasured(shape: Tank['shape'], key: string): boolean {
  if (key === 'frontBowMm') return shape === 'bow';
  if (key === 'sideReturnMm') return shape === 'corner';
  return key !== 'insideDepthMm' || shape === 'rectangle' || shape === 'bow';
}

/** The tank with its unused measurements set for its shape. */
export function asShaped(tank: Tank): Tank {
  const { shape } = tank;
  return {
    ...tank,
    ...(!isMeasured(shape, 'insideDepthMm') && { insideDepthMm: tank.insideLengthMm }),
    ...(!isMeasured(shape, 'frontBowMm') && { frontBowMm: 0 }),
    ...(!isMeasured(shape, 'sideReturnMm') && { sideReturnMm: 0 }),
  };
}
