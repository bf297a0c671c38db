import type { Day } from '#shared-calc/calendar/day.ts';

/** Steps of a prep plan, in display order. */
export const prepSteps = [
  'tank',
  'panel',
  'plants',
  'springtails',
  'media',
  'panes',
  'lamps',
  'leaves',
  'build',
] as const;
export type PrepStepName = (typeof prepSteps)[number];

/** What is ordered: the steps with goods, and the wood and cork that arrive with them. */
export type GoodsStep = 'tank' | 'plants' | 'media' | 'panes' | 'lamps' | 'hardscape';

export interface PrepStep<Name extends string = PrepStepName> {
  readonly step: Name;
  /** The day it is done, or the goods are in. */
  readonly date: Day;
  /** The last day to order; left out if nothing is ordered. */
  readonly orderBy?: Day;
}
