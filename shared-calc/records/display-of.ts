import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Workshop } from './records.ts';

/** How this workshop shows figures. */
export function displayOf(workshop: Workshop): Display {
  return {
    ...(workshop.units && { units: workshop.units }),
    unitsShown: workshop.unitsShown,
    ...(workshop.units === 'us' && { fractions: true }),
    ...(workshop.dateOrder && { dateOrder: workshop.dateOrder }),
    currency: workshop.currency,
    moneyDecimals: workshop.coinDecimals,
    decimalComma: workshop.decimalComma,
  };
}
