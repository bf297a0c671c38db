import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Workshop } from './records.ts';

/** How this workshop shows figures. */
export function displayOf(workshop: Workshop): Display {
  return {
    unitsShown: workshop.unitsShown,
    currency: workshop.currency,
    moneyDecimals: workshop.coinDecimals,
    decimalComma: workshop.decimalComma,
  };
}
