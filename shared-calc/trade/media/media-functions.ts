import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { foamCans } from './foam-cans.ts';
import { inoculantDose } from './inoculant-dose.ts';
import { looseNeeded } from './loose-needed.ts';
import { mixPart } from './mix-part.ts';
import { mixSplitEntry } from './mix-split.ts';
import { panelSealantRun } from './panel-sealant-run.ts';
import { plantCount } from './plant-count.ts';
import { sealantTubes } from './sealant-tubes.ts';

export const mediaFunctions: readonly TradeFunction[] = [
  looseNeeded,
  mixSplitEntry,
  mixPart,
  inoculantDose,
  panelSealantRun,
  sealantTubes,
  foamCans,
  plantCount,
];
