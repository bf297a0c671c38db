import { bagCount } from './bag-count.ts';
import { beadVolume } from './bead-volume.ts';
import { brickCount } from './brick-count.ts';
import { damRoom } from './dam-room.ts';
import { drainCapacity } from './drain-capacity.ts';
import { drainFillDays } from './drain-fill-days.ts';
import { foamCans } from './foam-cans.ts';
import { frontStripArea } from './front-strip-area.ts';
import { inoculantDose } from './inoculant-dose.ts';
import { insideSize } from './inside-size.ts';
import { layerVolume } from './layer-volume.ts';
import { leafCountPer100g } from './leaf-count-per-100g.ts';
import { leafCover } from './leaf-cover.ts';
import { leafLayersForCover } from './leaf-layers-for-cover.ts';
import { leafMassForCover } from './leaf-mass-for-cover.ts';
import { leavesForCover } from './leaves-for-cover.ts';
import { litterLife } from './litter-life.ts';
import { litterMass } from './litter-mass.ts';
import { looseNeeded } from './loose-needed.ts';
import { meshCutEntry } from './mesh-cut.ts';
import { meshRollLength } from './mesh-roll-length.ts';
import { mistDaily } from './mist-daily.ts';
import { mixPart } from './mix-part.ts';
import { mixSplitEntry } from './mix-split.ts';
import { panelRun } from './panel-run.ts';
import { panelSealantRun } from './panel-sealant-run.ts';
import { plantCount } from './plant-count.ts';
import { reservoirDays } from './reservoir-days.ts';
import { sealantTubes } from './sealant-tubes.ts';
import { slopedVolume } from './sloped-volume.ts';
import { tankFloorArea } from './tank-floor-area.ts';
import { tankFootprint } from './tank-footprint.ts';
import { tankOverallDepth } from './tank-overall-depth.ts';
import { tankOverallLength } from './tank-overall-length.ts';
import { tankPerimeter } from './tank-perimeter.ts';
import type { TradeFunction } from './trade-function.ts';
import { wettingWater } from './wetting-water.ts';

/** The functions of tank, media, leaves and water, in the order of the Function book. */
export const tradeFunctionsA: readonly TradeFunction[] = [
  tankFloorArea,
  tankPerimeter,
  tankOverallLength,
  tankOverallDepth,
  tankFootprint,
  frontStripArea,
  panelRun,
  insideSize,
  damRoom,
  layerVolume,
  slopedVolume,
  beadVolume,
  meshCutEntry,
  meshRollLength,
  looseNeeded,
  mixSplitEntry,
  mixPart,
  inoculantDose,
  panelSealantRun,
  sealantTubes,
  foamCans,
  plantCount,
  leafCover,
  leafLayersForCover,
  leavesForCover,
  leafMassForCover,
  litterMass,
  leafCountPer100g,
  litterLife,
  wettingWater,
  drainCapacity,
  mistDaily,
  drainFillDays,
  reservoirDays,
  bagCount,
  brickCount,
];
