import type { Tank } from '#shared-calc/records/records.ts';

/**
 * A tank's measurements as the texts of the recipe's tank lines. What a shape does not have is 0;
 * a hexagon, corner or cylinder is as deep as it is long. What nobody measured is left out.
 */
export function tankFigures(tank: Tank): ReadonlyMap<string, string> {
  const figures: Record<string, number | undefined> = {
    inside_length: tank.insideLengthMm,
    inside_depth: tank.insideDepthMm ?? (asDeepAsLong.has(tank.shape) ? tank.insideLengthMm : undefined),
    inside_height: tank.insideHeightMm,
    front_bow: tank.frontBowMm ?? noneUnless(tank, 'bow'),
    side_return: tank.sideReturnMm ?? noneUnless(tank, 'corner'),
    dam_height: tank.damHeightMm,
    front_vent: tank.frontVentMm,
    glass: tank.glassMm,
    base_glass: tank.baseGlassMm,
  };
  const texts = new Map([['tank_shape', tank.shape as string]]);
  for (const [name, mm] of Object.entries(figures)) texts.set(name, mm === undefined ? '' : `${mm} mm`);
  return texts;
}

const asDeepAsLong: ReadonlySet<string> = new Set(['hexagon', 'corner', 'cylinder']);

function noneUnless(tank: Tank, shape: Tank['shape']): number | undefined {
  return tank.shape === shape ? undefined : 0;
}
