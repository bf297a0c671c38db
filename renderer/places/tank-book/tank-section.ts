import type { SectionFigures } from '#renderer/drawing/section-figures.ts';
import type { Tank } from '#shared-calc/records/records.ts';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';
import { tankOverallDepth } from '#shared-calc/trade/geometry/tank-overall-depth.ts';

/** An empty tank, to be drawn to scale. */
export function tankSection(tank: Tank): SectionFigures {
  const nothing = {
    drainage: undefined,
    drainGap: undefined,
    meshThickness: undefined,
    meshUpturn: undefined,
    capping: undefined,
    beadWidth: undefined,
    beadHeight: undefined,
    soilFront: undefined,
    soilRise: undefined,
    litter: undefined,
    coverVent: undefined,
    lamps: undefined,
  };
  return {
    ...nothing,
    shape: tank.shape,
    overallDepth: overallDepth(tank),
    insideHeight: tank.insideHeightMm,
    damHeight: tank.damHeightMm,
    glass: tank.glassMm,
    baseGlass: tank.baseGlassMm,
    frontBow: tank.frontBowMm,
    sideReturn: tank.sideReturnMm,
    frontVent: tank.frontVentMm,
  };
}

function overallDepth(tank: Tank): number | undefined {
  const sizes = sizesOf(tank);
  const depth = sizes && tankOverallDepth.compute(sizes.slice(0, 4));
  return typeof depth === 'number' ? depth : undefined;
}

/** Inside floor in m2; `undefined` while it is not measured. */
export function floorArea(tank: Tank): number | undefined {
  const sizes = sizesOf(tank);
  const area = sizes && tankFloorArea.compute(sizes);
  return typeof area === 'number' ? area : undefined;
}

/** Shape, length, depth, bow and return, as the trade functions take them. */
function sizesOf(tank: Tank): readonly (number | string)[] | undefined {
  const { shape, insideLengthMm: length, frontBowMm: bow = 0, sideReturnMm: side = 0 } = tank;
  const depth = tank.insideDepthMm ?? (shape === 'rectangle' || shape === 'bow' ? undefined : length);
  return length === undefined || depth === undefined ? undefined : [shape, length, depth, bow, side];
}
