import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { airChangesByFall } from './air-changes-by-fall.ts';
import { airChangesByWater } from './air-changes-by-water.ts';
import { airExchange } from './air-exchange.ts';
import { coverGlassLeast } from './cover-glass-least.ts';
import { dampPassage } from './damp-passage.ts';
import { steadyHumidity } from './steady-humidity.ts';
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
  airExchange,
  dampPassage,
  steadyHumidity,
  airChangesByWater,
  airChangesByFall,
  lightWarming,
  coverPaneEntry,
  coverPanes,
  coverPaneLength,
  coverPaneDepth,
  coverGlassLeast,
  dailyLight,
  lampsNeeded,
  luxToPpfd,
];
