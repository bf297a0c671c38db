import type { NoAmount } from '#shared-calc/bench/order-amounts.ts';
import type { UseName } from '#shared-calc/fields/uses.ts';
import type { PrepStepName } from './prep-steps.ts';

/** Why an order has no prep plan: facts. */
export type PlanFault =
  | NoAmount
  | { readonly kind: 'no-sizes'; readonly job: string }
  /** The recipe has no line for a wait that the order needs. */
  | { readonly kind: 'not-given'; readonly use: UseName }
  | { readonly kind: 'no-culture'; readonly culture: string }
  /** The supplier comes only on weekdays on which the workshop is closed. */
  | { readonly kind: 'never-delivered'; readonly what: PrepStepName }
  /** A wait of the recipe over a hundred years. */
  | { readonly kind: 'too-long'; readonly line: string; readonly days: number }
  | { readonly kind: 'below-zero'; readonly line: string; readonly days: number }
  /** A date past the year 9999, or before the year 1: for example closed days that never end. */
  | { readonly kind: 'off-calendar' }
  /** A sentence of the trade functions. */
  | { readonly kind: 'refused'; readonly says: string };
