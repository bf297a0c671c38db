import type { NoAmount } from '#shared-calc/bench/order-amounts.ts';
import { nounOf, type UseName } from '#shared-calc/fields/uses.ts';
import type { PrepStepName } from './prep-steps.ts';

/** Why an order has no prep plan: facts. */
export type PlanFault =
  | NoAmount
  /** The recipe has no line for a wait that the order asks for. */
  | { readonly kind: 'not-given'; readonly use: UseName }
  | { readonly kind: 'no-culture'; readonly culture: string }
  /** The supplier comes only on weekdays on which the workshop is closed. */
  | { readonly kind: 'never-delivered'; readonly what: PrepStepName | 'hardscape' }
  /** A wait of the recipe that is more than a hundred years. */
  | { readonly kind: 'too-long'; readonly line: string; readonly days: number }
  | { readonly kind: 'below-zero'; readonly line: string; readonly days: number }
  /** A date past the year 9999, or before the year 1: closed days that never end. */
  | { readonly kind: 'off-calendar' }
  /** A sentence of the trade functions. */
  | { readonly kind: 'refused'; readonly says: string };

/** Those faults that are not a box's, as one sentence. */
export function sayPlanFault(fault: Exclude<PlanFault, NoAmount>): string {
  switch (fault.kind) {
    case 'not-given':
      return `No ${nounOf(fault.use)} is given in this recipe.`;
    case 'no-culture':
      return `No culture kind called ${fault.culture} in the culture book: springtails have no date.`;
    case 'never-delivered':
      return `The ${fault.what} of this order can never arrive: their supplier delivers only on days that are closed.`;
    case 'too-long':
      return `${fault.line} of ${fault.days} days is more than a hundred years.`;
    case 'below-zero':
      return `${fault.line} of ${fault.days} days: a wait cannot be below zero.`;
    case 'off-calendar':
      return 'The dates run off the calendar: look at the closed days and at the handover.';
    case 'refused':
      return fault.says;
  }
}
