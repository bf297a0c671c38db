import { airPressure } from './air-pressure.ts';
import { boilingPoint } from './boiling-point.ts';
import { bothSexesChance } from './both-sexes-chance.ts';
import { comeUpTime } from './come-up-time.ts';
import { coverPaneDepth } from './cover-pane-depth.ts';
import { coverPaneLength } from './cover-pane-length.ts';
import { coverPaneEntry } from './cover-pane.ts';
import { coverPanes } from './cover-panes.ts';
import { culturesToKeepEntry } from './cultures-to-keep.ts';
import { dailyLight } from './daily-light.ts';
import { daysToCount } from './days-to-count.ts';
import { depositDueEntry } from './deposit-due.ts';
import { floorPressure } from './floor-pressure.ts';
import { flyStarts } from './fly-starts.ts';
import { flyTubs } from './fly-tubs.ts';
import { foundersNeeded } from './founders-needed.ts';
import { glassMass } from './glass-mass.ts';
import { growCount } from './grow-count.ts';
import { holdTime } from './hold-time.ts';
import { killRate } from './kill-rate.ts';
import { killTotalEntry } from './kill-total.ts';
import { lampsNeeded } from './lamps-needed.ts';
import { landedCostEntry } from './landed-cost.ts';
import { leafBatches } from './leaf-batches.ts';
import { leafTreatTimeEntry } from './leaf-treat-time.ts';
import { liftCrew } from './lift-crew.ts';
import { lightWarming } from './light-warming.ts';
import { luxToPpfd } from './lux-to-ppfd.ts';
import { marginFromMarkup } from './margin-from-markup.ts';
import { markupFromMargin } from './markup-from-margin.ts';
import { orderByEntry } from './order-by.ts';
import { priceFromMargin } from './price-from-margin.ts';
import { priceFromMarkup } from './price-from-markup.ts';
import { readyDateEntry } from './ready-date.ts';
import { repeatMinutes } from './repeat-minutes.ts';
import { seedCount } from './seed-count.ts';
import { serviceDatesEntry } from './service-dates.ts';
import { steamHold } from './steam-hold.ts';
import { steamTemp } from './steam-temp.ts';
import { taskMinutesEntry } from './task-minutes.ts';
import { taxSplitEntry } from './tax-split.ts';
import type { TradeFunction } from './trade-function.ts';
import { vapourInAir } from './vapour-in-air.ts';
import { vapourLoss } from './vapour-loss.ts';
import { workdayShiftEntry } from './workday-shift.ts';

/** Heat, cultures, air and light, mass, price and dates, in the order of a build and of the Function book. */
export const tradeFunctionsB: readonly TradeFunction[] = [
  airPressure,
  steamTemp,
  boilingPoint,
  holdTime,
  comeUpTime,
  killRate,
  killTotalEntry,
  leafTreatTimeEntry,
  leafBatches,
  steamHold,
  growCount,
  seedCount,
  daysToCount,
  bothSexesChance,
  foundersNeeded,
  culturesToKeepEntry,
  flyStarts,
  flyTubs,
  vapourInAir,
  vapourLoss,
  lightWarming,
  coverPaneEntry,
  coverPanes,
  coverPaneLength,
  coverPaneDepth,
  glassMass,
  dailyLight,
  lampsNeeded,
  luxToPpfd,
  liftCrew,
  floorPressure,
  landedCostEntry,
  taskMinutesEntry,
  repeatMinutes,
  priceFromMargin,
  priceFromMarkup,
  marginFromMarkup,
  markupFromMargin,
  taxSplitEntry,
  depositDueEntry,
  workdayShiftEntry,
  orderByEntry,
  readyDateEntry,
  serviceDatesEntry,
];
