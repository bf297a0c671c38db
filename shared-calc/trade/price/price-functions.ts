import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';
import { depositDueEntry } from './deposit-due.ts';
import { marginFromMarkup } from './margin-from-markup.ts';
import { markupFromMargin } from './markup-from-margin.ts';
import { priceFromMargin } from './price-from-margin.ts';
import { priceFromMarkup } from './price-from-markup.ts';
import { repeatMinutes } from './repeat-minutes.ts';
import { taskMinutesEntry } from './task-minutes.ts';
import { taxSplitEntry } from './tax-split.ts';

export const priceFunctions: readonly TradeFunction[] = [
  taskMinutesEntry,
  repeatMinutes,
  priceFromMargin,
  priceFromMarkup,
  marginFromMarkup,
  markupFromMargin,
  taxSplitEntry,
  depositDueEntry,
];
