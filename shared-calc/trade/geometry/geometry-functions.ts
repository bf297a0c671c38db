import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { beadVolume } from './bead-volume.ts';
import { damRoom } from './dam-room.ts';
import { frontStripArea } from './front-strip-area.ts';
import { insideSize } from './inside-size.ts';
import { layerVolume } from './layer-volume.ts';
import { meshCutEntry } from './mesh-cut.ts';
import { meshRollLength } from './mesh-roll-length.ts';
import { panelDisplacement } from './panel-displacement.ts';
import { panelRun } from './panel-run.ts';
import { slopeRun } from './slope-run.ts';
import { slopedVolume } from './sloped-volume.ts';
import { tankFloorArea } from './tank-floor-area.ts';
import { tankFootprint } from './tank-footprint.ts';
import { tankOverallDepth } from './tank-overall-depth.ts';
import { tankOverallLength } from './tank-overall-length.ts';
import { tankPerimeter } from './tank-perimeter.ts';

export const geometryFunctions: readonly TradeFunction[] = [
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
  slopeRun,
  panelDisplacement,
  beadVolume,
  meshCutEntry,
  meshRollLength,
];
