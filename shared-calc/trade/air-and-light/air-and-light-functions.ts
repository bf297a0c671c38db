import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { coverPaneDepth } from './cover-pane-depth.ts';
import { coverPaneLength } from './cover-pane-length.ts';
import { coverPaneEntry } from './cover-pane.ts';
import { coverPanes } from './cover-panes.ts';
import { dailyLight } from './daily-light.ts';
import { lampsNeeded } from './lamps-needed.ts';
import { lightWarming } from './light-warming.ts';
import { luxToPpfd } from './lux-to-ppfd.ts';
import { vapourInAir } from './vapour-in-air.ts';
import { vapourLoss } from './vapour-loss.ts';

export const airAndLightFunctions: readonly TradeFunction[] = [
  vapourInAir,
  vapourLoss,
  lightWarming,
  coverPaneEntry,
  coverPanes,
  coverPaneLength,
  coverPaneDepth,
  dailyLight,
  lampsNeeded,
  luxToPpfd,
];
