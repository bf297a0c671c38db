import { keysOf } from '#shared-calc/fields/keys-of.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { Line, Tank } from '#shared-calc/records/records.ts';

/**
 * A tank's measurements as the texts of a recipe's tank lines, by the use of the line. A measurement that a shape does
 * not have is 0; a hexagon, corner or cylinder is as deep as it is long. Unmeasured ones are left out.
 */
export function tankFigures(tank: Tank): ReadonlyMap<UseName, string> {
  const figures = {
    insideLength: tank.insideLengthMm,
    insideDepth: tank.insideDepthMm ?? (asDeepAsLong.has(tank.shape) ? tank.insideLengthMm : undefined),
    insideHeight: tank.insideHeightMm,
    frontBow: tank.frontBowMm ?? noneUnless(tank, 'bow'),
    sideReturn: tank.sideReturnMm ?? noneUnless(tank, 'corner'),
    damHeight: tank.damHeightMm,
    frontVent: tank.frontVentMm,
    glass: tank.glassMm,
    baseGlass: tank.baseGlassMm,
  } satisfies Partial<Record<UseName, number | undefined>>;
  const texts = new Map<UseName, string>([['tankShape', tank.shape]]);
  for (const use of keysOf(figures)) {
    texts.set(use, figures[use] === undefined ? '' : `${figures[use]} mm`);
  }
  return texts;
}

const asDeepAsLong: ReadonlySet<string> = new Set(['hexagon', 'corner', 'cylinder']);

function noneUnless(tank: Tank, shape: Tank['shape']): number | undefined {
  return tank.shape === shape ? undefined : 0;
}

const fields: Readonly<Partial<Record<UseName, keyof Tank>>> = {
  insideLength: 'insideLengthMm',
  insideDepth: 'insideDepthMm',
  insideHeight: 'insideHeightMm',
  frontBow: 'frontBowMm',
  sideReturn: 'sideReturnMm',
  damHeight: 'damHeightMm',
  frontVent: 'frontVentMm',
  glass: 'glassMm',
  baseGlass: 'baseGlassMm',
};

/** The field of the tank book in which a line of a tank is measured; none for any other line. */
export function tankFieldOf({ role, use }: Pick<Line, 'role' | 'use'>): keyof Tank | undefined {
  return role === 'tank' && use ? fields[use] : undefined;
}
